package reseat.internal.files;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.internal.files.Scalars.ScalarType;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Duration;
import reseat.model.Kind;
import reseat.text.QuoteText;

/** The registered kinds, and which of them the device uses. */
final class KindTable {

    private static final Map<Kind.Scope, String> SECTIONS =
            Map.of(
                    Kind.Scope.PART,
                    "parts",
                    Kind.Scope.JOINT,
                    "joints",
                    Kind.Scope.MANIPULATION,
                    "manipulations");

    private final Map<Kind.Scope, Node.Fields> registered = new EnumMap<>(Kind.Scope.class);
    private final Map<Kind.Scope, Map<String, Entry>> used = new EnumMap<>(Kind.Scope.class);
    private final String deviceFile;
    private final Uses uses;

    /**
     * A kind with properties that only the reader needs.
     *
     * @param slack whether joints of it are slack unless a device says otherwise
     * @param gives whether joints of it give unless a device says otherwise
     * @param way the manipulation that releases a joint or moves a part of it, if it names one
     */
    record Entry(Kind kind, boolean slack, boolean gives, Optional<String> way) {}

    /**
     * Reads the kinds of a device tree.
     *
     * @param device the tree with its defaults
     * @param stated the kinds that the device file itself states; they count as used
     * @param deviceFile name of the device file: times in it are the device's, others the family's
     * @param uses reads what a kind consumes
     */
    KindTable(Look device, Look stated, String deviceFile, Uses uses) {
        this.deviceFile = deviceFile;
        this.uses = uses;
        for (Kind.Scope scope : Kind.Scope.values()) {
            String section = Objects.requireNonNull(SECTIONS.get(scope));
            registered.put(scope, device.look("kinds").look(section).fields());
            used.put(scope, new LinkedHashMap<>());
            stated.look("kinds")
                    .each(
                            section,
                            (id, look) -> {
                                if (registered(scope, id)) {
                                    use(scope, id);
                                }
                            });
        }
    }

    /** Reads lists of consumables with their quantities. */
    interface Uses {
        List<ConsumableUse> read(Look look, String key);
    }

    /** Returns the reader of what is consumed, by the consumables that there are. */
    static Uses uses(Map<String, Consumable> consumables, Problems problems) {
        return (look, key) -> {
            List<ConsumableUse> all = new ArrayList<>();
            for (Look use : look.looks(key)) {
                Consumable of = consumables.get(use.text("of", ""));
                if (of != null) {
                    String unit = use.text("unit", of.unit());
                    if (!unit.equals(of.unit())) {
                        problems.error(
                                use.at("unit"),
                                "unit: "
                                        + of.id()
                                        + " is counted in "
                                        + QuoteText.of(of.unit())
                                        + ", not in "
                                        + QuoteText.of(unit));
                    }
                    use.number("quantity", ScalarType.QUANTITY)
                            .ifPresent(
                                    quantity ->
                                            all.add(new ConsumableUse(of.id(), quantity, unit)));
                }
            }
            return all;
        };
    }

    private Entry entry(String id, Kind.Scope scope, Look look) {
        Kind kind =
                new Kind(
                        id,
                        scope,
                        look.text("title", id),
                        look.text("verb", ""),
                        look.text("restoreVerb", ""),
                        constant(Kind.Role.values(), look, "role"),
                        look.text("tool"),
                        look.text("posture"),
                        time(look, "time"),
                        time(look, "restoreTime"),
                        look.texts("hazards"),
                        look.texts("handling"),
                        uses.read(look, "consumes"),
                        look.text("restore", ""),
                        look.flag("irreversible", false),
                        look.flag("keepHold", false),
                        look.flag("magnetic", false),
                        look.flag("captive", false),
                        look.number("dwell", ScalarType.DWELL).map(Number::longValue).orElse(0L),
                        look.count("ratedCycles"),
                        look.statedTexts("needs"),
                        look.flag("forceful", false),
                        look.flag("laid", false),
                        look.flag("flammable", false),
                        look.flag("storesCharge", false),
                        heat(look),
                        look.text("source", ""));
        return new Entry(
                kind, look.flag("slack", false), look.flag("gives", false), look.text("way"));
    }

    private static Optional<Kind.Heat> heat(Look look) {
        if (!look.has("heat")) {
            return Optional.empty();
        }
        Look heat = look.look("heat");
        return Optional.of(
                new Kind.Heat(
                        heat.text("source", ""),
                        heat.count("celsius").orElse(0),
                        heat.ms("time", "ms").orElse(0)));
    }

    private Optional<Duration> time(Look look, String key) {
        boolean own = look.at(key).file().equals(deviceFile);
        Duration.Basis place = own ? Duration.Basis.DEVICE : Duration.Basis.FAMILY;
        Optional<Duration.Basis> told = constant(Duration.Basis.values(), look, key + "Basis");
        return look.time(key, place)
                .map(time -> new Duration(time.ms(), told.orElse(time.basis()), time.text()));
    }

    private static <E extends Enum<E>> Optional<E> constant(E[] values, Look look, String key) {
        return look.text(key).flatMap(text -> constant(values, text));
    }

    /** Returns the constant for a word of the format. */
    static <E extends Enum<E>> Optional<E> constant(E[] values, String word) {
        for (E value : values) {
            if (value.name().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    /**
     * Returns a kind and counts it as used; a device uses few of them, so they are created here. An
     * unregistered one is plain, without defaults.
     */
    Entry use(Kind.Scope scope, String id) {
        Map<String, Entry> before = Objects.requireNonNull(used.get(scope));
        Entry known = before.get(id);
        if (known == null) {
            Node.Fields all = Objects.requireNonNull(registered.get(scope));
            known = registered(scope, id) ? entry(id, scope, look(all, id)) : plain(scope, id);
            before.put(id, known);
        }
        return known;
    }

    private static Look look(Node.Fields kinds, String id) {
        Node.Entry entry = Objects.requireNonNull(kinds.entries().get(id));
        return new Look(entry.value(), entry.keyAt());
    }

    /** Whether a kind is registered; for one that is not, a single problem is reported. */
    boolean registered(Kind.Scope scope, String id) {
        return Objects.requireNonNull(registered.get(scope)).get(id) != null;
    }

    private static Entry plain(Kind.Scope scope, String id) {
        return new Entry(Kind.plain(scope, id), false, false, Optional.empty());
    }

    /**
     * Returns the kinds that were used, in the order of the registry; unregistered ones come last.
     */
    List<Kind> used() {
        List<Kind> all = new ArrayList<>();
        for (Kind.Scope scope : Kind.Scope.values()) {
            Map<String, Entry> some = new LinkedHashMap<>(Objects.requireNonNull(used.get(scope)));
            Node.Fields order = Objects.requireNonNull(registered.get(scope));
            for (String id : order.entries().keySet()) {
                Entry entry = registered(scope, id) ? some.remove(id) : null;
                if (entry != null) {
                    all.add(entry.kind());
                }
            }
            some.values().forEach(entry -> all.add(entry.kind()));
        }
        return all;
    }
}
