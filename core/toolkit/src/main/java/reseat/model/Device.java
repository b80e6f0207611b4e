package reseat.model;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The physical facts of one device in one variant, with every default applied. Immutable; all maps
 * keep the order of the file. Created by {@link #build}, which rejects invalid facts: all
 * references of an existing device resolve.
 */
public final class Device {

    private final Builder facts;
    private volatile @Nullable Power power;

    private Device(Builder facts) {
        this.facts = facts;
    }

    /**
     * Creates a device.
     *
     * @param id id of the device
     * @param fill states the facts
     * @throws IllegalArgumentException if a fact names something that does not exist
     */
    public static Device build(String id, Consumer<Builder> fill) {
        Builder builder = new Builder(id);
        fill.accept(builder);
        builder.freeze();
        return new Device(builder);
    }

    /** Returns the id of the device. */
    public String id() {
        return facts.id;
    }

    /** Returns the display name. */
    public String name() {
        return facts.name;
    }

    /** Returns the maker, or the empty string. */
    public String maker() {
        return facts.maker;
    }

    /** Returns the id of the device family, or the empty string. */
    public String family() {
        return facts.family;
    }

    /** Returns the id of the variant; empty for the base device. */
    public Optional<String> variant() {
        return facts.variant;
    }

    /** Returns the id of the part that everything is mounted to. */
    public String base() {
        return facts.base;
    }

    /** Returns the id of the tool that stands for the bare hand. */
    public String hand() {
        return facts.hand;
    }

    /** Returns the id of the usual posture. */
    public String usualPosture() {
        return facts.usualPosture;
    }

    /** Returns the outer dimensions; empty if unknown. */
    public Optional<Outline> outline() {
        return facts.outline;
    }

    /** Returns the parts by id, the base among them. */
    public Map<String, Part> parts() {
        return facts.parts;
    }

    /** Returns the joints by id. */
    public Map<String, Joint> joints() {
        return facts.joints;
    }

    /** Returns the sources of power by id. */
    public Map<String, Supply> supplies() {
        return facts.supplies;
    }

    /** Returns the tools by id, the hand among them. */
    public Map<String, Tool> tools() {
        return facts.tools;
    }

    /** Returns the types of screw by id. */
    public Map<String, ScrewType> screwTypes() {
        return facts.screwTypes;
    }

    /** Returns what a rebuild uses up, by id. */
    public Map<String, Consumable> consumables() {
        return facts.consumables;
    }

    /** Returns the hazards by id. */
    public Map<String, Hazard> hazards() {
        return facts.hazards;
    }

    /** Returns the acts before work, by id. */
    public Map<String, Prepare> prepares() {
        return facts.prepares;
    }

    /** Returns the function tests, by id. */
    public Map<String, FunctionTest> tests() {
        return facts.tests;
    }

    /** Returns what changes of tool and posture cost. */
    public SetupTable setup() {
        return Objects.requireNonNull(facts.setup);
    }

    /** Returns what has to be without power before it is touched; computed when first asked. */
    public Power power() {
        Power known = power;
        if (known == null) {
            known = new Power(this);
            power = known;
        }
        return known;
    }

    /**
     * Returns the joints that must be released before a joint is released by a way: those that the
     * way states, else, for a forceful way, every joint of role screw that holds at least two parts
     * that the joint holds.
     */
    public List<String> strainedBy(Joint joint, Way way) {
        if (way.strainedBy().isPresent()) {
            return way.strainedBy().get();
        }
        Kind manipulation = kinds(Kind.Scope.MANIPULATION).get(way.kind());
        if (manipulation == null || !manipulation.forceful()) {
            return List.of();
        }
        return joints().values().stream()
                .filter(screw -> !screw.id().equals(joint.id()) && isScrew(screw))
                .filter(screw -> screw.holds().stream().filter(joint.holds()::contains).count() > 1)
                .map(Joint::id)
                .toList();
    }

    private boolean isScrew(Joint joint) {
        return isOf(Kind.Role.SCREW, joint);
    }

    private boolean isOf(Kind.Role role, Joint joint) {
        Kind kind = kinds(Kind.Scope.JOINT).get(joint.kind());
        return kind != null && kind.role().equals(Optional.of(role));
    }

    /**
     * Returns whether a joint is released by a move that takes its parts apart and by nothing else:
     * it gives and is of role connector, such as spring contacts, on which there is nothing to
     * undo. No act of its own releases it.
     */
    public boolean onlyLetsGo(Joint joint) {
        return joint.gives() && isOf(Kind.Role.CONNECTOR, joint);
    }

    /**
     * Returns the parts of which any one is moved away to have a joint let go that {@linkplain
     * #onlyLetsGo only lets go}: those that it holds besides its site and the base, or, if there
     * are none, its site.
     */
    public List<String> movedToLetGo(Joint joint) {
        List<String> parts =
                joint.holds().stream()
                        .filter(part -> !part.equals(joint.site()) && !part.equals(base()))
                        .toList();
        return parts.isEmpty() ? List.of(joint.site()) : parts;
    }

    /** Returns the kinds of one scope that this device uses, by id. */
    public Map<String, Kind> kinds(Kind.Scope scope) {
        return Objects.requireNonNull(facts.kinds.get(scope));
    }

    /** Returns where facts were read, by JSON Pointer (RFC 6901) into the device file. */
    public Map<String, Origin> origins() {
        return facts.origins.all();
    }

    /**
     * Returns the part with an id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Part part(String partId) {
        Part part = facts.parts.get(partId);
        if (part == null) {
            throw new IllegalArgumentException(facts.id + " has no part " + partId);
        }
        return part;
    }

    /**
     * Returns the joint with an id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Joint joint(String jointId) {
        Joint joint = facts.joints.get(jointId);
        if (joint == null) {
            throw new IllegalArgumentException(facts.id + " has no joint " + jointId);
        }
        return joint;
    }

    /** Returns the move of a part. The base has none. */
    public Move move(String partId) {
        return part(partId)
                .move()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        partId + " is the base and is never moved"));
    }

    /** Returns the kind of a joint. */
    public Kind kindOf(Joint joint) {
        return kind(Kind.Scope.JOINT, joint.kind());
    }

    /** Returns the kind of a part. */
    public Kind kindOf(Part part) {
        return kind(Kind.Scope.PART, part.kind());
    }

    /** Returns a kind of manipulation. */
    public Kind manipulation(String kindId) {
        return kind(Kind.Scope.MANIPULATION, kindId);
    }

    private Kind kind(Kind.Scope scope, String kindId) {
        Kind kind = kinds(scope).get(kindId);
        if (kind == null) {
            throw new IllegalArgumentException(
                    facts.id + " has no kind of " + scope + " " + kindId);
        }
        return kind;
    }

    /**
     * Returns where a fact was read: the location of the pointer itself, or of the nearest
     * enclosing fact.
     *
     * @param pointer JSON Pointer, such as {@code /joints/lid-1/under}
     */
    public Origin origin(String pointer) {
        Map<String, Origin> origins = origins();
        String at = pointer;
        while (true) {
            Origin origin = origins.get(at);
            if (origin != null) {
                return origin;
            }
            int slash = at.lastIndexOf('/');
            if (slash < 0) {
                return Origin.MEMORY;
            }
            at = at.substring(0, slash);
        }
    }

    @Override
    public String toString() {
        return facts.id + facts.variant.map(v -> " (" + v + ")").orElse("");
    }

    /**
     * Builds the facts of a device. Not thread-safe. Once the device is built, every method throws
     * an {@link IllegalStateException}.
     */
    public static final class Builder {
        private final String id;
        private String name;
        private String maker = "";
        private String family = "";
        private Optional<String> variant = Optional.empty();
        private String base = "";
        private String hand = "hand";
        private String usualPosture = "";
        private Optional<Outline> outline = Optional.empty();
        private @Nullable SetupTable setup;
        private Map<String, Part> parts = new LinkedHashMap<>();
        private Map<String, Joint> joints = new LinkedHashMap<>();
        private Map<String, Supply> supplies = new LinkedHashMap<>();
        private Map<String, Tool> tools = new LinkedHashMap<>();
        private Map<String, ScrewType> screwTypes = new LinkedHashMap<>();
        private Map<String, Consumable> consumables = new LinkedHashMap<>();
        private Map<String, Hazard> hazards = new LinkedHashMap<>();
        private Map<String, Prepare> prepares = new LinkedHashMap<>();
        private Map<String, FunctionTest> tests = new LinkedHashMap<>();
        private Map<Kind.Scope, Map<String, Kind>> kinds = new EnumMap<>(Kind.Scope.class);
        private final Origins origins = new Origins();
        private boolean built;

        private Builder(String id) {
            this.id = id;
            this.name = id;
            for (Kind.Scope scope : Kind.Scope.values()) {
                kinds.put(scope, new LinkedHashMap<>());
            }
        }

        public Builder name(String text) {
            open().name = text;
            return this;
        }

        public Builder maker(String text) {
            open().maker = text;
            return this;
        }

        public Builder family(String familyId) {
            open().family = familyId;
            return this;
        }

        public Builder variant(String variantId) {
            open().variant = Optional.of(variantId);
            return this;
        }

        public Builder base(String partId) {
            open().base = partId;
            return this;
        }

        public Builder hand(String toolId) {
            open().hand = toolId;
            return this;
        }

        public Builder usualPosture(String postureId) {
            open().usualPosture = postureId;
            return this;
        }

        public Builder outline(Outline rectangle) {
            open().outline = Optional.of(rectangle);
            return this;
        }

        public Builder setup(SetupTable table) {
            open().setup = table;
            return this;
        }

        public Builder add(Part part) {
            return put("part", parts, part.id(), part);
        }

        public Builder add(Joint joint) {
            return put("joint", joints, joint.id(), joint);
        }

        public Builder add(Supply supply) {
            return put("supply", supplies, supply.id(), supply);
        }

        public Builder add(Tool tool) {
            return put("tool", tools, tool.id(), tool);
        }

        public Builder add(ScrewType type) {
            return put("screw type", screwTypes, type.id(), type);
        }

        public Builder add(Consumable consumable) {
            return put("consumable", consumables, consumable.id(), consumable);
        }

        public Builder add(Hazard hazard) {
            return put("hazard", hazards, hazard.id(), hazard);
        }

        public Builder add(Prepare prepare) {
            return put("prepare act", prepares, prepare.id(), prepare);
        }

        public Builder add(FunctionTest test) {
            return put("test", tests, test.id(), test);
        }

        public Builder add(Kind kind) {
            return put("kind", Objects.requireNonNull(kinds.get(kind.scope())), kind.id(), kind);
        }

        private Builder open() {
            if (built) {
                throw new IllegalStateException(
                        id + " has been built; its builder can no longer change it");
            }
            return this;
        }

        /** Records where the fact at a JSON Pointer was read. */
        public Builder origin(String pointer, Origin origin) {
            open().origins.put(pointer, origin);
            return this;
        }

        /**
         * Records where facts were read, for a device most of whose locations are never requested.
         *
         * @param later supplies the locations by JSON Pointer; called from any thread, once or more
         *     often with the same result, when the first location is requested
         */
        public Builder origins(Supplier<Map<String, Origin>> later) {
            open().origins.add(later);
            return this;
        }

        private <V> Builder put(String what, Map<String, V> map, String key, V value) {
            open();
            if (map.put(key, value) != null) {
                throw new IllegalArgumentException(id + " has two of " + what + " " + key);
            }
            return this;
        }

        private void freeze() {
            if (setup == null) {
                throw new IllegalArgumentException(id + " has no set-up table");
            }
            new References(this).check();
            built = true;
            parts = Collections.unmodifiableMap(parts);
            joints = Collections.unmodifiableMap(joints);
            supplies = Collections.unmodifiableMap(supplies);
            tools = Collections.unmodifiableMap(tools);
            screwTypes = Collections.unmodifiableMap(screwTypes);
            consumables = Collections.unmodifiableMap(consumables);
            hazards = Collections.unmodifiableMap(hazards);
            prepares = Collections.unmodifiableMap(prepares);
            tests = Collections.unmodifiableMap(tests);
            kinds.replaceAll((scope, map) -> Collections.unmodifiableMap(map));
        }
    }

    /** The last line of defence: readers report these errors earlier, with their locations. */
    private static final class References {
        private final Builder facts;
        private final SetupTable setup;

        References(Builder facts) {
            this.facts = facts;
            this.setup = Objects.requireNonNull(facts.setup);
        }

        void check() {
            known("part", facts.parts.keySet(), facts.base, "the base", "");
            known("tool of the set-up table", setup.tools(), facts.hand, "the hand", "");
            known(
                    "posture of the set-up table",
                    setup.postures(),
                    facts.usualPosture,
                    "the usual posture",
                    "");
            for (Part part : facts.parts.values()) {
                part(part);
            }
            for (Joint joint : facts.joints.values()) {
                joint(joint);
            }
            for (Supply supply : facts.supplies.values()) {
                supply.of()
                        .ifPresent(
                                part ->
                                        known(
                                                "part",
                                                facts.parts.keySet(),
                                                part,
                                                "supply ",
                                                supply.id()));
            }
        }

        private void part(Part part) {
            allKnown("part", facts.parts.keySet(), part.under(), "part ", part.id());
            allKnown("part", facts.parts.keySet(), part.spareIncludes(), "part ", part.id());
            allKnown("supply", facts.supplies.keySet(), part.needs(), "part ", part.id());
            if (part.move().isEmpty() != part.id().equals(facts.base)) {
                throw new IllegalArgumentException(
                        "part "
                                + part.id()
                                + (part.move().isEmpty()
                                        ? " has no move"
                                        : " is the base and must have no move"));
            }
            part.move().ifPresent(move -> clazz(move.tool(), move.posture(), "part ", part.id()));
        }

        private void joint(Joint joint) {
            allKnown("part", facts.parts.keySet(), joint.holds(), "joint ", joint.id());
            allKnown("part", facts.parts.keySet(), joint.under(), "joint ", joint.id());
            allKnown("supply", facts.supplies.keySet(), joint.needs(), "joint ", joint.id());
            allKnown("supply", facts.supplies.keySet(), joint.cuts(), "joint ", joint.id());
            for (Way way : joint.ways().values()) {
                clazz(way.tool(), way.posture(), "joint ", joint.id());
                allKnown("part", facts.parts.keySet(), way.ruins(), "joint ", joint.id());
                allKnown("joint", facts.joints.keySet(), way.strainedBy(), "joint ", joint.id());
            }
            joint.seat()
                    .ifPresent(
                            seat ->
                                    known(
                                            "screw type",
                                            facts.screwTypes.keySet(),
                                            seat.screw(),
                                            "joint ",
                                            joint.id()));
        }

        private void allKnown(
                String what,
                Collection<String> known,
                Optional<List<String>> ids,
                String scope,
                String id) {
            ids.ifPresent(stated -> allKnown(what, known, stated, scope, id));
        }

        private void clazz(String tool, String posture, String scope, String id) {
            known("tool of the set-up table", setup.tools(), tool, scope, id);
            known("posture of the set-up table", setup.postures(), posture, scope, id);
        }

        private void allKnown(
                String what, Collection<String> known, List<String> ids, String scope, String id) {
            for (int i = 0; i < ids.size(); i++) {
                known(what, known, ids.get(i), scope, id);
            }
        }

        private void known(
                String what, Collection<String> known, String wanted, String scope, String id) {
            if (!known.contains(wanted)) {
                throw new IllegalArgumentException(
                        facts.id
                                + ": "
                                + scope
                                + id
                                + " names "
                                + what
                                + " \""
                                + wanted
                                + "\", which does not exist");
            }
        }
    }
}
