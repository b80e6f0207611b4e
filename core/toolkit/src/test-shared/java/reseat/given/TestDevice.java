package reseat.given;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import reseat.fasten.FastenerTables;
import reseat.model.BadInputException;
import reseat.model.Bond;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Origin;
import reseat.model.Part;
import reseat.model.Point;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.model.SetupTable;
import reseat.model.Tool;
import reseat.model.Way;

/**
 * A small device for tests: a lid on a frame, a cell and a board behind it, and whatever screws a
 * test adds.
 */
public final class TestDevice {

    private final List<ScrewType> types = new ArrayList<>();
    private final List<Joint> joints = new ArrayList<>();
    private final Map<String, String> tools = new LinkedHashMap<>();
    private final Map<String, Origin> origins = new LinkedHashMap<>();
    private String family = "";
    private Optional<String> variant = Optional.empty();

    public TestDevice() {
        tools.put("hand", "");
        tools.put("t5", "T5");
    }

    /** The tables that ship, with no answer kept from another test. */
    public static FastenerTables tables() {
        try {
            return FastenerTables.standard()
                    .withRows("materials.csv", "material,group,rm,shear,source,tag\n");
        } catch (BadInputException e) {
            throw new AssertionError(e);
        }
    }

    public TestDevice family(String id) {
        family = id;
        return this;
    }

    public TestDevice variant(String id) {
        variant = Optional.of(id);
        return this;
    }

    public TestDevice tool(String id, String drive) {
        tools.put(id, drive);
        return this;
    }

    public TestDevice origin(String pointer, int line) {
        origins.put(pointer, new Origin("bench.yaml", line, 5));
        return this;
    }

    public TestDevice type(String id, String thread, double length) {
        return type(id, thread, length, t -> t);
    }

    public TestDevice type(String id, String thread, double length, UnaryOperator<ScrewType> change) {
        types.add(
                change.apply(
                        new ScrewType(
                                id,
                                thread,
                                length,
                                OptionalDouble.empty(),
                                "pan",
                                OptionalDouble.of(3.5),
                                OptionalDouble.empty(),
                                "T5",
                                Optional.of("8.8"),
                                "black",
                                false,
                                Optional.empty())));
        return this;
    }

    public static ScrewType drive(ScrewType t, String drive) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                t.threadLengthMm(),
                t.head(),
                t.headDiameterMm(),
                t.headHeightMm(),
                drive,
                t.strengthClass(),
                t.finish(),
                t.patch(),
                t.spare());
    }

    public static ScrewType finish(ScrewType t, String finish) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                t.threadLengthMm(),
                t.head(),
                t.headDiameterMm(),
                t.headHeightMm(),
                t.drive(),
                t.strengthClass(),
                finish,
                t.patch(),
                t.spare());
    }

    public static ScrewType patched(ScrewType t) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                t.threadLengthMm(),
                t.head(),
                t.headDiameterMm(),
                t.headHeightMm(),
                t.drive(),
                t.strengthClass(),
                t.finish(),
                true,
                Optional.of("SP-1"));
    }

    public static ScrewType strength(ScrewType t, String strength) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                t.threadLengthMm(),
                t.head(),
                t.headDiameterMm(),
                t.headHeightMm(),
                t.drive(),
                strength.isEmpty() ? Optional.empty() : Optional.of(strength),
                t.finish(),
                t.patch(),
                t.spare());
    }

    public static ScrewType threaded(ScrewType t, double threadLength) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                OptionalDouble.of(threadLength),
                t.head(),
                t.headDiameterMm(),
                t.headHeightMm(),
                t.drive(),
                t.strengthClass(),
                t.finish(),
                t.patch(),
                t.spare());
    }

    /** A seat that nothing is known of. */
    public static SeatBuilder seat(String screw) {
        return new SeatBuilder(screw);
    }

    public TestDevice screw(String id, SeatBuilder seat) {
        return screw(id, seat, "t5", List.of());
    }

    public TestDevice screw(String id, SeatBuilder seat, String tool, List<ConsumableUse> consumes) {
        joints.add(
                new Joint(
                        id,
                        id,
                        "screw",
                        List.of("lid", "frame"),
                        List.of(),
                        false,
                        List.of(),
                        List.of(),
                        Map.of("usual", way(tool, consumes)),
                        Optional.of(seat.build()),
                        Optional.empty(),
                        0));
        return this;
    }

    public TestDevice bond(String id, Bond bond) {
        joints.add(
                new Joint(
                        id,
                        id,
                        "bond",
                        List.of("lid", "frame"),
                        List.of(),
                        false,
                        List.of(),
                        List.of(),
                        Map.of("usual", way(
                                        "hand",
                                        List.of(
                                                new ConsumableUse(
                                                        "glue", BigDecimal.ONE, "piece")))),
                        Optional.empty(),
                        Optional.of(bond),
                        0));
        return this;
    }

    private static Way way(String tool, List<ConsumableUse> consumes) {
        return new Way(
                "usual", "unscrew", tool, "flat", 1000, 1000, consumes, List.of(), "", List.of(),
                List.of());
    }

    public Device build() {
        return Device.build(
                "bench",
                d -> {
                    d.base("frame").hand("hand").usualPosture("flat").family(family);
                    variant.ifPresent(d::variant);
                    Map<String, Map<String, Long>> change = new LinkedHashMap<>();
                    for (String from : tools.keySet()) {
                        Map<String, Long> row = new LinkedHashMap<>();
                        tools.keySet().forEach(to -> row.put(to, from.equals(to) ? 0L : 1000L));
                        change.put(from, row);
                    }
                    d.setup(new SetupTable(change, Map.of("flat", Map.of("flat", 0L))));
                    tools.forEach(
                            (id, drive) ->
                                    d.add(
                                            new Tool(
                                                    id,
                                                    id,
                                                    Optional.empty(),
                                                    drive.isEmpty()
                                                            ? Optional.empty()
                                                            : Optional.of(drive))));
                    d.add(part("frame", "part", false));
                    d.add(part("lid", "part", true));
                    d.add(part("cell", "cell", true));
                    d.add(part("board", "board", true));
                    d.add(part("display", "display", true));
                    d.add(kind("part", Kind.Scope.PART, Optional.empty()));
                    d.add(kind("cell", Kind.Scope.PART, Optional.of(Kind.Role.CELL)));
                    d.add(kind("board", Kind.Scope.PART, Optional.of(Kind.Role.BOARD)));
                    d.add(kind("display", Kind.Scope.PART, Optional.of(Kind.Role.DISPLAY)));
                    d.add(kind("screw", Kind.Scope.JOINT, Optional.of(Kind.Role.SCREW)));
                    d.add(kind("bond", Kind.Scope.JOINT, Optional.of(Kind.Role.BOND)));
                    d.add(kind("lift", Kind.Scope.MANIPULATION, Optional.empty()));
                    d.add(kind("unscrew", Kind.Scope.MANIPULATION, Optional.empty()));
                    types.forEach(d::add);
                    joints.forEach(d::add);
                    origins.forEach(d::origin);
                });
    }

    private static Part part(String id, String kind, boolean moves) {
        return new Part(
                id,
                "the " + id,
                kind,
                List.of(),
                moves
                        ? Optional.of(
                                new Move("lift", "hand", "flat", 1000, 1000, List.of(), List.of()))
                        : Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static Kind kind(String id, Kind.Scope scope, Optional<Kind.Role> role) {
        return new Kind(
                id,
                scope,
                id,
                "Do",
                "Undo",
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                false,
                false,
                false,
                0,
                OptionalInt.empty(),
                Optional.empty(),
                false,
                false,
                false,
                false,
                Optional.empty(),
                "test");
    }

    /** States a seat. */
    public static final class SeatBuilder {
        private final String screw;
        private Optional<Point> at = Optional.empty();
        private Seat.Form form = Seat.Form.TAPPED;
        private Optional<String> material = Optional.of("magnesium");
        private OptionalDouble clamped = OptionalDouble.of(1);
        private OptionalDouble threaded = OptionalDouble.of(4);
        private OptionalDouble depth = OptionalDouble.empty();
        private final List<Seat.Behind> behind = new ArrayList<>();
        private OptionalDouble torque = OptionalDouble.of(0.1);
        private String source = "";
        private OptionalInt pass = OptionalInt.empty();
        private int cycles = 1;

        private SeatBuilder(String screw) {
            this.screw = screw;
        }

        public SeatBuilder at(double x, double y) {
            at = Optional.of(new Point(x, y));
            return this;
        }

        public SeatBuilder form(Seat.Form value) {
            form = value;
            return this;
        }

        public SeatBuilder material(String value) {
            material = value.isEmpty() ? Optional.empty() : Optional.of(value);
            return this;
        }

        public SeatBuilder lengths(double clampedMm, double threadedMm) {
            clamped = OptionalDouble.of(clampedMm);
            threaded = OptionalDouble.of(threadedMm);
            return this;
        }

        public SeatBuilder unmeasured() {
            clamped = OptionalDouble.empty();
            threaded = OptionalDouble.empty();
            return this;
        }

        public SeatBuilder depth(double mm) {
            depth = OptionalDouble.of(mm);
            return this;
        }

        public SeatBuilder behind(String part, double gap) {
            behind.add(new Seat.Behind(part, gap));
            return this;
        }

        public SeatBuilder torque(double nm) {
            torque = OptionalDouble.of(nm);
            return this;
        }

        public SeatBuilder torque(double nm, String from) {
            source = from;
            return torque(nm);
        }

        public SeatBuilder noTorque() {
            torque = OptionalDouble.empty();
            return this;
        }

        public SeatBuilder pass(int number) {
            pass = OptionalInt.of(number);
            return this;
        }

        public SeatBuilder cycles(int number) {
            cycles = number;
            return this;
        }

        private Seat build() {
            return new Seat(
                    screw,
                    at,
                    form,
                    Optional.empty(),
                    material,
                    clamped,
                    threaded,
                    depth,
                    OptionalDouble.empty(),
                    behind,
                    torque,
                    source,
                    pass,
                    cycles);
        }
    }
}
