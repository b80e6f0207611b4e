package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.files.RegisteredId;
import reseat.internal.files.Scalars.WrongValue;
import reseat.model.Duration;
import reseat.model.Origin;
import reseat.spi.DeviceFamily;

/** Lists the ids of the built-in data and of families; see {@code RegisteredId}. */
public final class Registered {

    private static final List<String> TIMES = List.of("time", "restoreTime", "dwell");

    /** Where the ids are, and what they are. */
    private enum Section {
        PARTS("kind of part", "kinds", "parts"),
        JOINTS("kind of joint", "kinds", "joints"),
        MANIPULATIONS("kind of manipulation", "kinds", "manipulations"),
        TOOLS("tool", "tools"),
        POSTURES("posture", "setup", "posture"),
        HAZARDS("hazard", "hazards"),
        CONSUMABLES("consumable", "consumables"),
        SUPPLIES("supply", "supplies"),
        PREPARES("prepare act", "prepare");

        private final String what;

        @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of words
        private final List<String> path;

        Section(String what, String... path) {
            this.what = what;
            this.path = List.of(path);
        }
    }

    private Registered() {}

    /** Returns all ids. */
    public static List<RegisteredId> all(List<DeviceFamily> families) {
        List<RegisteredId> all = new ArrayList<>();
        Node.Fields builtIn = BuiltIn.tree();
        for (Section section : Section.values()) {
            ids(all, section, builtIn, builtIn, BuiltIn.NAME);
        }
        for (DeviceFamily family : families) {
            String name = "family " + family.id();
            Node.Fields own = own(family, name);
            Node.Fields merged = (Node.Fields) MergePatch.apply(builtIn, own);
            for (Section section : Section.values()) {
                ids(all, section, own, merged, name);
            }
        }
        return List.copyOf(all);
    }

    private static Node.Fields own(DeviceFamily family, String name) {
        Problems problems = new Problems(name);
        Layers layers = new Layers(List.of(family), new Origin(name, 0, 0), problems);
        return layers.data(name, family)
                .flatMap(data -> Trees.parse(name, data, problems))
                .filter(Node.Fields.class::isInstance)
                .map(Node.Fields.class::cast)
                .orElseGet(() -> new Node.Fields(new Origin(name, 0, 0), Map.of()));
    }

    private static void ids(
            List<RegisteredId> all,
            Section section,
            Node.Fields own,
            Node.Fields merged,
            String from) {
        Optional<Node.Fields> stated = at(own, section);
        Optional<Node.Fields> whole = at(merged, section);
        if (stated.isEmpty() || whole.isEmpty()) {
            return;
        }
        for (String id : stated.get().entries().keySet()) {
            if (whole.get().get(id) instanceof Node.Fields facts) {
                all.add(new RegisteredId(section.what, id, from, facts(facts)));
            }
        }
    }

    private static Optional<Node.Fields> at(Node.Fields tree, Section section) {
        Node.Fields at = tree;
        for (String key : section.path) {
            at = at == null ? null : at.fields(key);
        }
        return Optional.ofNullable(at);
    }

    private static Map<String, Object> facts(Node.Fields fields) {
        Map<String, Object> facts = new LinkedHashMap<>();
        fields.entries()
                .forEach(
                        (key, entry) -> {
                            facts.put(key, plain(entry.value()));
                            if (TIMES.contains(key) && entry.value() instanceof Node.Scalar time) {
                                time(facts, key, time);
                            }
                        });
        return facts;
    }

    private static void time(Map<String, Object> facts, String key, Node.Scalar scalar) {
        try {
            Duration time = Scalars.duration(scalar, Duration.Basis.FAMILY);
            facts.put(key + "Ms", time.ms());
            facts.putIfAbsent(key + "Basis", time.basis().name().toLowerCase(Locale.ROOT));
        } catch (WrongValue e) {
            // reported where a device of this family is read
            facts.remove(key + "Ms");
        }
    }

    private static Object plain(Node node) {
        if (node instanceof Node.Fields fields) {
            return facts(fields);
        }
        if (node instanceof Node.Items items) {
            return items.items().stream().map(Registered::plain).toList();
        }
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }
}
