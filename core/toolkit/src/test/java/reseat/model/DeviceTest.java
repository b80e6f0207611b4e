package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A device that exists names nothing that does not exist. */
class DeviceTest {

    private static final SetupTable SETUP =
            new SetupTable(
                    Map.of("hand", Map.of("t5", 100L), "t5", Map.of("hand", 100L)),
                    Map.of("up", Map.of()));

    private static Move lift(String tool, String posture) {
        return new Move("lift", tool, posture, 1000, 500, List.of(), List.of());
    }

    private static Part part(String id, List<String> under, List<String> spare, Move... move) {
        return new Part(
                id,
                id,
                "part",
                under,
                Stream.of(move).findFirst(),
                spare,
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static Way way(String tool, String posture, String... ruins) {
        return new Way(
                "usual",
                "undo",
                tool,
                posture,
                1000,
                500,
                List.of(),
                List.of(ruins),
                "",
                List.of(),
                List.of());
    }

    private static Joint joint(
            List<String> holds,
            List<String> under,
            List<String> needs,
            List<String> cuts,
            Way way,
            Optional<Seat> seat) {
        return new Joint(
                "plug",
                "plug",
                "plug",
                holds,
                under,
                false,
                needs,
                cuts,
                Map.of("usual", way),
                seat,
                Optional.empty(),
                1);
    }

    private static final List<String> BOTH = List.of("lid", "frame");
    private static final Way BY_HAND = way("hand", "up");

    private static Joint plug(Way way) {
        return joint(BOTH, List.of(), List.of(), List.of(), way, Optional.empty());
    }

    private static Seat seat(String screw) {
        return new Seat(
                screw,
                Optional.empty(),
                Seat.Form.TAPPED,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                "",
                OptionalInt.empty(),
                0);
    }

    private static Device device(Consumer<Device.Builder> more) {
        return Device.build(
                "slate",
                facts -> {
                    facts.base("frame").hand("hand").usualPosture("up").setup(SETUP);
                    facts.add(part("frame", List.of(), List.of()));
                    facts.add(part("lid", List.of(), List.of(), lift("hand", "up")));
                    facts.add(new Supply("cell", "Main cell"));
                    more.accept(facts);
                });
    }

    private static void baseWithAMove(Device.Builder facts) {
        facts.base("frame").usualPosture("up").setup(SETUP);
        facts.add(part("frame", List.of(), List.of(), lift("hand", "up")));
    }

    private static String refusal(Consumer<Device.Builder> wrong) {
        return assertThrows(IllegalArgumentException.class, () -> device(wrong)).getMessage();
    }

    static Stream<Arguments> whatDoesNotExist() {
        return Stream.of(
                wrong("the base names part \"tray\"", f -> f.base("tray")),
                wrong("the hand names tool of the set-up table \"glove\"", f -> f.hand("glove")),
                wrong(
                        "the usual posture names posture of the set-up table \"edge\"",
                        f -> f.usualPosture("edge")),
                wrong(
                        "part fan names part \"duct\"",
                        f -> f.add(part("fan", List.of("duct"), List.of(), lift("hand", "up")))),
                wrong(
                        "part fan names part \"blade\"",
                        f -> f.add(part("fan", List.of(), List.of("blade"), lift("hand", "up")))),
                wrong(
                        "part fan names tool of the set-up table \"pick\"",
                        f -> f.add(part("fan", List.of(), List.of(), lift("pick", "up")))),
                wrong(
                        "part fan names posture of the set-up table \"edge\"",
                        f -> f.add(part("fan", List.of(), List.of(), lift("hand", "edge")))),
                wrong(
                        "joint plug names part \"board\"",
                        f ->
                                f.add(
                                        joint(
                                                List.of("lid", "board"),
                                                List.of(),
                                                List.of(),
                                                List.of(),
                                                BY_HAND,
                                                Optional.empty()))),
                wrong(
                        "joint plug names part \"flap\"",
                        f ->
                                f.add(
                                        joint(
                                                BOTH,
                                                List.of("flap"),
                                                List.of(),
                                                List.of(),
                                                BY_HAND,
                                                Optional.empty()))),
                wrong(
                        "joint plug names supply \"dock\"",
                        f ->
                                f.add(
                                        joint(
                                                BOTH,
                                                List.of(),
                                                List.of("cell", "dock"),
                                                List.of(),
                                                BY_HAND,
                                                Optional.empty()))),
                wrong(
                        "joint plug names supply \"mains\"",
                        f ->
                                f.add(
                                        joint(
                                                BOTH,
                                                List.of(),
                                                List.of(),
                                                List.of("mains"),
                                                BY_HAND,
                                                Optional.empty()))),
                wrong(
                        "joint plug names tool of the set-up table \"pick\"",
                        f -> f.add(plug(way("pick", "up")))),
                wrong(
                        "joint plug names posture of the set-up table \"edge\"",
                        f -> f.add(plug(way("hand", "edge")))),
                wrong(
                        "joint plug names part \"tape\"",
                        f -> f.add(plug(way("hand", "up", "lid", "tape")))),
                wrong(
                        "joint plug names screw type \"m2x4\"",
                        f ->
                                f.add(
                                        joint(
                                                BOTH,
                                                List.of(),
                                                List.of(),
                                                List.of(),
                                                BY_HAND,
                                                Optional.of(seat("m2x4"))))));
    }

    private static Arguments wrong(String what, Consumer<Device.Builder> fact) {
        return Arguments.of(what, fact);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("whatDoesNotExist")
    void aReferenceToNothingIsRefused(String what, Consumer<Device.Builder> fact) {
        assertEquals("slate: " + what + ", which does not exist", refusal(fact));
    }

    @Test
    void theBaseAloneHasNoMove() {
        assertEquals(
                "part fan has no move", refusal(f -> f.add(part("fan", List.of(), List.of()))));
        assertEquals(
                "part frame is the base and must have no move",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Device.build("slate", DeviceTest::baseWithAMove))
                        .getMessage());
        Device device = device(f -> {});
        assertEquals(lift("hand", "up"), device.move("lid"));
        assertEquals(
                "frame is the base and is never moved",
                assertThrows(IllegalArgumentException.class, () -> device.move("frame"))
                        .getMessage());
    }

    @Test
    void anIdIsGivenOnceOfItsSort() {
        assertEquals(
                "slate has two of part lid",
                refusal(f -> f.add(part("lid", List.of(), List.of(), lift("hand", "up")))));
        assertEquals(
                "slate has two of joint plug",
                refusal(f -> f.add(plug(BY_HAND)).add(plug(BY_HAND))));
        assertEquals(
                "slate has two of supply cell",
                refusal(f -> f.add(new Supply("cell", "Another cell"))));
    }

    @Test
    void theSetupTableIsRequired() {
        assertEquals(
                "slate has no set-up table",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Device.build("slate", facts -> facts.base("frame")))
                        .getMessage());
    }

    @Test
    void whatIsAskedForAndNotThereIsNamed() {
        Device device = device(f -> f.add(plug(BY_HAND)));
        assertEquals("plug", device.joint("plug").id());
        assertEquals(
                "slate has no part tray",
                assertThrows(IllegalArgumentException.class, () -> device.part("tray"))
                        .getMessage());
        assertEquals(
                "slate has no joint clip",
                assertThrows(IllegalArgumentException.class, () -> device.joint("clip"))
                        .getMessage());
        assertEquals(
                "slate has no kind of JOINT plug",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> device.kindOf(device.joint("plug")))
                        .getMessage());
    }

    @Test
    void kindsAreLookedUpInTheirScope() {
        Kind ofParts = Kind.plain(Kind.Scope.PART, "part");
        Kind ofJoints = Kind.plain(Kind.Scope.JOINT, "plug");
        Kind ofMoves = Kind.plain(Kind.Scope.MANIPULATION, "lift");
        Device device = device(f -> f.add(plug(BY_HAND)).add(ofParts).add(ofJoints).add(ofMoves));
        assertEquals(ofParts, device.kindOf(device.part("lid")));
        assertEquals(ofJoints, device.kindOf(device.joint("plug")));
        assertEquals(ofMoves, device.manipulation("lift"));
    }

    @Test
    void aFactWithoutAPlaceOfItsOwnHasThatOfTheNearestAroundIt() {
        Origin joints = new Origin("slate.yaml", 10, 1);
        Origin plug = new Origin("slate.yaml", 11, 3);
        Device device =
                device(
                        f ->
                                f.origin("/joints", joints)
                                        .origins(() -> Map.of("/joints/plug", plug)));
        assertEquals(plug, device.origin("/joints/plug/ways/usual"));
        assertEquals(plug, device.origin("/joints/plug"));
        assertEquals(joints, device.origin("/joints/clip"));
        assertEquals(Origin.MEMORY, device.origin("/parts/lid"));
        assertEquals(Origin.MEMORY, device.origin("/"));
        assertEquals(Map.of("/joints", joints, "/joints/plug", plug), device.origins());
    }

    @Test
    void isCalledByItsIdAndItsVariant() {
        assertEquals("slate", device(f -> {}).toString());
        assertEquals("slate", device(f -> {}).name());
        assertEquals("slate (lte)", device(f -> f.variant("lte")).toString());
        assertEquals("Slate 11", device(f -> f.name("Slate 11")).name());
    }

    @Test
    void itsFactsCannotBeChanged() {
        Device device = device(f -> f.add(plug(BY_HAND)));
        for (Map<String, ?> facts :
                List.of(
                        device.parts(),
                        device.joints(),
                        device.supplies(),
                        device.kinds(Kind.Scope.PART))) {
            assertThrows(UnsupportedOperationException.class, facts::clear);
        }
        assertEquals(List.of("frame", "lid"), List.copyOf(device.parts().keySet()));
        assertTrue(device.tools().isEmpty());
    }

    static Stream<Consumer<Device.Builder>> whatABuilderStates() {
        return Stream.of(
                f -> f.name("other"),
                f -> f.maker("other"),
                f -> f.family("other"),
                f -> f.variant("other"),
                f -> f.base("lid"),
                f -> f.hand("t5"),
                f -> f.usualPosture("edge"),
                f -> f.outline(new Outline(1, 1, OptionalDouble.empty())),
                f -> f.setup(SETUP),
                f -> f.add(part("fan", List.of(), List.of(), lift("hand", "up"))),
                f -> f.add(plug(BY_HAND)),
                f -> f.add(new Supply("dock", "Dock")),
                f -> f.add(Kind.plain(Kind.Scope.PART, "part")),
                f -> f.origin("/parts/lid", new Origin("other.yaml", 1, 1)),
                f -> f.origins(() -> Map.of("/parts/lid", new Origin("other.yaml", 1, 1))));
    }

    @ParameterizedTest
    @MethodSource("whatABuilderStates")
    void aBuilderThatSomebodyKeptCannotChangeIt(Consumer<Device.Builder> change) {
        AtomicReference<Device.Builder> kept = new AtomicReference<>();
        Device device = device(kept::set);

        IllegalStateException refused =
                assertThrows(IllegalStateException.class, () -> change.accept(kept.get()));

        assertEquals(
                "slate has been built; its builder can no longer change it", refused.getMessage());
        assertEquals("slate", device.name());
        assertEquals(Optional.empty(), device.variant());
        assertEquals(List.of("frame", "lid"), List.copyOf(device.parts().keySet()));
        assertEquals(Map.of(), device.origins());
    }
}
