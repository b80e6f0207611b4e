package reseat.internal.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import reseat.model.Origin;
import reseat.spi.DeviceFamily;
import reseat.text.QuoteText;

/** Merges built-in data, family and device, in rising order of precedence. */
final class Layers {

    private static final List<String> WITH_DEFAULTS =
            List.of("supplies", "prepare", "tools", "setup", "kinds", "hazards", "consumables");

    /** The last data of each family, by id; unchanged data is not read again. */
    private static final Map<String, Given> GIVEN = new ConcurrentHashMap<>();

    private final List<DeviceFamily> families;
    private final Origin whole;
    private final Problems problems;

    Layers(List<DeviceFamily> families, Origin whole, Problems problems) {
        this.families = families;
        this.whole = whole;
        this.problems = problems;
    }

    /**
     * The data of a family, and the result of reading it.
     *
     * @param data the bytes from the family
     * @param defaults the built-in data merged with them
     */
    private record Given(ByteBuffer data, Defaults defaults) {}

    /** Returns the defaults of a device; reports a family that is missing or invalid. */
    Defaults defaults(Node.Fields stated) {
        String id = stated.text("family");
        if (id == null) {
            return BuiltIn.defaults();
        }
        Optional<DeviceFamily> family =
                families.stream().filter(each -> each.id().equals(id)).findFirst();
        if (family.isEmpty()) {
            problems.error(
                    new Look(stated, whole).at("family"),
                    "family: there is no device family "
                            + QuoteText.of(id)
                            + "."
                            + Words.hint(
                                    id,
                                    families.stream().map(DeviceFamily::id).toList(),
                                    "device families"));
            return BuiltIn.defaults();
        }
        return defaults(id, family.get());
    }

    private Defaults defaults(String id, DeviceFamily family) {
        String name = "family " + id;
        byte[] data = data(name, family).orElse(null);
        if (data == null) {
            return BuiltIn.defaults();
        }
        Given before = GIVEN.get(id);
        if (before != null && before.data.equals(ByteBuffer.wrap(data))) {
            return before.defaults;
        }
        long already = problems.count();
        Node tree = Trees.parse(name, data, problems).orElse(null);
        if (!(tree instanceof Node.Fields fields)) {
            return BuiltIn.defaults();
        }
        unknownDefaults(fields);
        Node.Fields over = (Node.Fields) MergePatch.apply(BuiltIn.tree(), fields);
        if (problems.count() > already) {
            return Defaults.unchecked(over);
        }
        Defaults defaults = Defaults.of(over);
        GIVEN.put(id, new Given(ByteBuffer.wrap(data), defaults));
        return defaults;
    }

    /** Returns the bytes of a family's data; reports why there are none. */
    Optional<byte[]> data(String name, DeviceFamily family) {
        try (InputStream in = family.openDefaults()) {
            return Optional.of(in.readNBytes(Sources.MAX_BYTES));
        } catch (IOException | RuntimeException | LinkageError | StackOverflowError e) {
            // third-party code: whatever it throws is reported as a problem of its data
            problems.error(
                    new Origin(name, 0, 0),
                    "the data of this family cannot be read: " + e.getMessage());
            return Optional.empty();
        }
    }

    private void unknownDefaults(Node.Fields family) {
        family.entries()
                .forEach(
                        (key, entry) -> {
                            if (!Format.DEFAULTS.keys().containsKey(key)) {
                                problems.error(
                                        entry.keyAt(),
                                        "defaults: unknown key "
                                                + QuoteText.of(key)
                                                + "."
                                                + Words.hint(
                                                        key,
                                                        Format.DEFAULTS.keys().keySet(),
                                                        "keys"));
                            }
                        });
    }

    /** Returns a device tree completed from its defaults. */
    static Node.Fields over(Defaults defaults, Node.Fields stated) {
        Map<String, Node.Entry> layered = new LinkedHashMap<>(stated.entries());
        for (String key : WITH_DEFAULTS) {
            Node below = defaults.tree().get(key);
            Node.Entry own = stated.entries().get(key);
            if (below != null) {
                Node merged =
                        own == null || own.value().isNull()
                                ? below
                                : MergePatch.apply(below, own.value());
                layered.put(key, new Node.Entry(own == null ? below.at() : own.keyAt(), merged));
            }
        }
        return new Node.Fields(stated.at(), layered);
    }
}
