package reseat.internal.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The allowed structure of a value in a device file. One tree of shapes ({@link Format}) is the
 * only description of the format: the reader validates against it and the JSON Schema is generated
 * from it.
 */
sealed interface Shape {

    /**
     * A single value.
     *
     * @param type its type
     */
    record Value(Scalars.ScalarType type) implements Shape {}

    /** One of several words. */
    record Choice(List<String> words) implements Shape {}

    /**
     * The id of something defined elsewhere.
     *
     * @param scope what it names
     */
    record Ref(Scope scope) implements Shape {}

    /**
     * A list; a single entry may be given without a list, unless entries are lists themselves.
     *
     * @param item shape of its entries
     * @param least least number of entries
     * @param distinct whether entries must be distinct
     */
    record Several(Shape item, int least, boolean distinct) implements Shape {
        boolean soleItemWillDo() {
            return !(item instanceof Corner);
        }
    }

    /** A point: a list of two coordinates in millimetres. */
    record Corner() implements Shape {}

    /**
     * A map keyed by ids.
     *
     * @param keys what the keys name; {@link Scope#NEW} where they define something
     * @param value shape of the values
     * @param what what an entry is, for messages
     */
    record Table(Scope keys, Shape value, String what) implements Shape {}

    /**
     * A map with known keys.
     *
     * @param name what it describes, in a word; names its part of the schema
     * @param keys its keys by name, in the order in which they are written
     * @param judged those that can be missing or conflicting
     */
    record Group(String name, Map<String, FormatKey> keys, List<FormatKey> judged)
            implements Shape {

        static Group of(String name, List<FormatKey> keys) {
            return new Group(
                    name,
                    keys.stream()
                            .collect(
                                    Collectors.toMap(
                                            FormatKey::name,
                                            key -> key,
                                            (a, b) -> b,
                                            LinkedHashMap::new)),
                    keys.stream()
                            .filter(
                                    key ->
                                            key.need().required(true)
                                                    || key.need().required(false)
                                                    || key.speaksForBoth())
                            .toList());
        }
    }

    /**
     * Either a short form, a scalar, or a long form, a map.
     *
     * @param brief the short form
     * @param full the long form
     */
    record Either(Shape brief, Group full) implements Shape {}

    /** Anything: checked later. */
    record Anything() implements Shape {}

    /**
     * A key of a {@link Group}.
     *
     * @param name the key
     * @param shape shape of its value
     * @param need whether it is required
     * @param instead an alternative key, never given together with it; empty if there is none
     * @param help one sentence for the schema
     */
    record FormatKey(String name, Shape shape, Need need, String instead, String help) {

        /** Either key of a pair names the other; the one that sorts first is reported for both. */
        boolean speaksForBoth() {
            return name.compareTo(instead) < 0;
        }
    }

    /**
     * How the keys of a map fit a group.
     *
     * @param resolved whether no default applies
     * @param keys the definition of each key; empty if a key is unknown, missing, or given together
     *     with its alternative
     */
    record Fit(Group group, boolean resolved, List<FormatKey> keys) {

        static Fit of(Group group, boolean resolved, Keys keys) {
            List<FormatKey> known = new ArrayList<>();
            for (int i = 0; i < keys.count(); i++) {
                FormatKey key = group.keys().get(keys.get(i));
                if (key == null || (key.need() == Need.ONLY_RESOLVED && !resolved)) {
                    return new Fit(group, resolved, List.of());
                }
                known.add(key);
            }
            for (FormatKey key : group.judged()) {
                boolean here = keys.find(key.name()) >= 0;
                boolean other = keys.find(key.instead()) >= 0;
                if ((here && other && key.speaksForBoth())
                        || (!here && !other && key.need().required(resolved))) {
                    return new Fit(group, resolved, List.of());
                }
            }
            return new Fit(group, resolved, List.copyOf(known));
        }
    }

    /** Whether a key is required. */
    enum Need {
        /** Required in every file. */
        ALWAYS,
        /** Required in a resolved file, to which no default applies. */
        RESOLVED,
        /** Required in a file that people write; optional in a resolved one. */
        AUTHORED,
        /** Optional. */
        NEVER,
        /** Optional, and only allowed in resolved files. */
        ONLY_RESOLVED;

        boolean required(boolean resolved) {
            return this == ALWAYS || this == (resolved ? RESOLVED : AUTHORED);
        }
    }

    /** The scope of an id. */
    enum Scope {
        /** None yet: the id is defined here. */
        NEW("id", "ids"),
        PART("part", "parts"),
        JOINT("joint", "joints"),
        JOINT_OR_PART("part or joint", "parts and joints"),
        SUPPLY("supply", "supplies"),
        TOOL("tool", "tools"),
        POSTURE("posture", "postures"),
        HAZARD("hazard", "hazards"),
        CONSUMABLE("consumable", "consumables"),
        SCREW_TYPE("screw type", "screw types"),
        PART_KIND("kind of part", "kinds of part"),
        JOINT_KIND("kind of joint", "kinds of joint"),
        MANIPULATION("kind of manipulation", "kinds of manipulation");

        private final String noun;
        private final String plural;

        Scope(String noun, String plural) {
            this.noun = noun;
            this.plural = plural;
        }

        String noun() {
            return noun;
        }

        String plural() {
            return plural;
        }
    }
}
