package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Part;
import reseat.model.Problem;
import reseat.model.Rules;
import reseat.model.SetupTable;
import reseat.model.State;
import reseat.model.Supply;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;

/** A request that makes no sense for its device is refused with a sentence, not planned. */
class RequestCheckTest {

    private static final Device TOY =
            Toy.of(
                    "part lid",
                    "part board",
                    "part shield",
                    "joint lid-screw holds lid frame tool t5 or spudger",
                    "joint board-clip holds board frame under lid",
                    "joint shield-tape holds shield board",
                    "joint board-plug holds board frame slack");

    private static final Goal BOARD = new Goal.Free(List.of("board"));

    private static List<String> problems(PlanRequest request) {
        List<Problem> problems = request.problems();
        assertTrue(problems.stream().allMatch(Problem::isError));
        if (!problems.isEmpty()) {
            PlanResult result = new Planner().plan(request);
            assertEquals(problems, assertInstanceOf(PlanResult.Refused.class, result).problems());
        }
        return problems.stream().map(Problem::message).toList();
    }

    private static List<String> problems(Goal goal) {
        return problems(PlanRequest.of(TOY, goal));
    }

    private static List<String> problems(Rules rules) {
        return problems(PlanRequest.of(TOY, BOARD).with(rules));
    }

    private static List<String> problems(State start) {
        return problems(PlanRequest.of(TOY, BOARD).from(start));
    }

    @Test
    void theNearestNameIsOffered() {
        assertEquals(
                List.of("toy has no part \"bord\" (did you mean \"board\"?)"),
                problems(new Goal.Free(List.of("bord"))));
        assertEquals(List.of("toy has no part \"tray\""), problems(new Goal.Free(List.of("tray"))));
    }

    /** Of two names that are as near, the first by the alphabet. */
    @Test
    void aNameThatWasCutShortIsFound() {
        assertEquals(
                List.of("toy has no joint \"lid\" (did you mean \"lid-screw\"?)"),
                problems(new Goal.Reach("lid")));
        assertEquals(
                List.of("toy has no joint \"tape\" (did you mean \"shield-tape\"?)"),
                problems(new Goal.Reach("tape")));
        assertEquals(
                List.of("toy has no joint \"board\" (did you mean \"board-clip\"?)"),
                problems(new Goal.Reach("board")));
    }

    @Test
    void ofSeveralNamesTheNearestIsOffered() {
        Device two =
                Toy.of(
                        "part lid",
                        "joint plug-a-long holds lid frame",
                        "joint plug-z holds lid frame");
        assertEquals(
                List.of("toy has no joint \"plug\" (did you mean \"plug-z\"?)"),
                problems(PlanRequest.of(two, new Goal.Reach("plug"))));
    }

    /** Up to a third of the letters may differ, and always one. */
    @Test
    void aNameThatIsTooFarIsNotOffered() {
        assertEquals(
                List.of("toy has no part \"lit\" (did you mean \"lid\"?)"),
                problems(new Goal.Free(List.of("lit"))));
        assertEquals(List.of("toy has no part \"lot\""), problems(new Goal.Free(List.of("lot"))));
        assertEquals(
                List.of("toy has no part \"shilde\" (did you mean \"shield\"?)"),
                problems(new Goal.Free(List.of("shilde"))));
    }

    @Test
    void theBaseIsNeverATarget() {
        assertEquals(
                List.of(
                        "frame is the base: everything is mounted to it, and it stays"
                                + " on the bench"),
                problems(new Goal.Free(List.of("lid", "frame"))));
    }

    static Stream<Arguments> rulesThatNameNothing() {
        List<String> x = List.of("xx");
        return Stream.of(
                Arguments.of("joint", Rules.none().forbidJoints(x)),
                Arguments.of("joint", Rules.none().requireJoints(x)),
                Arguments.of("part", Rules.none().forbidParts(x)),
                Arguments.of("part", Rules.none().requireParts(x)),
                Arguments.of("part", Rules.none().permitRuin(x)),
                Arguments.of("tool", Rules.none().forbidTools(x)),
                Arguments.of("tool", Rules.none().requireTools(x)),
                Arguments.of("act", Rules.none().forbidActs(List.of("release:xx/xx"))),
                Arguments.of("act", Rules.none().requireActs(List.of("release:xx/xx"))),
                Arguments.of("part", Rules.none().requireActs(List.of("move:lid+xx"))),
                Arguments.of("prepare act", Rules.none().requireActs(List.of("prepare:xx"))));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("rulesThatNameNothing")
    void aRuleNamesWhatExists(String what, Rules rules) {
        String id = what.equals("act") ? "release:xx/xx" : "xx";
        assertEquals(List.of("toy has no " + what + " \"" + id + "\""), problems(rules));
    }

    @Test
    void aRuleAboutActsGivesTheirIds() {
        String expected =
                "found \"lid-screw/t5\", expected the id of an act: prepare:ID, release:JOINT/WAY"
                        + " or move:PART+PART";
        List<String> id = List.of("lid-screw/t5");
        assertEquals(List.of(expected), problems(Rules.none().forbidActs(id)));
        assertEquals(List.of(expected), problems(Rules.none().requireActs(id)));
    }

    @Test
    void actsAreKnownByTheirIds() {
        assertEquals(
                List.of(),
                problems(
                        Rules.none()
                                .forbidActs(List.of("release:lid-screw/spudger"))
                                .requireActs(List.of("release:lid-screw/t5", "move:shield"))));
        assertEquals(
                List.of(
                        "toy has no act \"release:lid-screw/t6\" (did you mean"
                                + " \"release:lid-screw/t5\"?)"),
                problems(Rules.none().requireActs(List.of("release:lid-screw/t6"))));
    }

    @Test
    void prepareActsAreThereForSafety() {
        PlanRequest request = PlanRequest.of(Given.bonded(), BOARD);
        List<String> id = List.of("prepare:shut-down");
        assertEquals(
                List.of("prepare:shut-down cannot be forbidden: prepare acts are there for safety"),
                problems(request.with(Rules.none().forbidActs(id))));
        assertEquals(List.of(), problems(request.with(Rules.none().requireActs(id))));
    }

    @Test
    void theBaseIsNeverMoved() {
        assertEquals(
                List.of("frame is the base and is never moved"),
                problems(Rules.none().requireParts(List.of("frame"))));
    }

    @Test
    void theStartNamesWhatExists() {
        assertEquals(
                List.of("toy has no joint \"xx\""), problems(new State(Set.of("xx"), List.of())));
        assertEquals(
                List.of("toy has no part \"xx\""),
                problems(new State(Set.of(), List.of(Set.of("xx")))));
        assertEquals(
                List.of("part lid cannot be in two places at the start"),
                problems(new State(Set.of("lid-screw"), List.of(Set.of("lid"), Set.of("lid")))));
    }

    @Test
    void atTheStartOnlySlackJointsLeadFromPlaceToPlace() {
        List<Set<String>> boardAway = List.of(Set.of("board", "shield"));
        assertEquals(
                List.of(
                        "at the start, board and frame cannot lie in different places: board-clip"
                                + " still holds them together"),
                problems(new State(Set.of(), boardAway)));
        assertEquals(List.of(), problems(new State(Set.of("board-clip"), boardAway)));
    }

    @Test
    void theBasesPlaceMayBeSpelledOutAtTheStart() {
        assertEquals(List.of(), problems(new State(Set.of(), List.of(Set.of("frame", "board")))));
        assertEquals(
                List.of(
                        "at the start, lid and frame cannot lie in different places:"
                                + " lid-screw still"
                                + " holds them together"),
                problems(new State(Set.of(), List.of(Set.of("frame"), Set.of("lid")))));
    }

    /** What else is wrong can only be told once it is known where the unit stands. */
    @Test
    void aWrongStartIsToldFirstAndAlone() {
        assertEquals(
                List.of("toy has no joint \"xx\""),
                problems(
                        PlanRequest.of(TOY, new Goal.Reach("yy"))
                                .from(new State(Set.of("xx"), List.of()))));
    }

    @Test
    void atMost62ThingsAreRequired() {
        String[] facts = IntStream.range(0, 63).mapToObj(i -> "part p" + i).toArray(String[]::new);
        List<String> parts = new ArrayList<>(List.of(facts));
        parts.replaceAll(fact -> fact.substring("part ".length()));
        PlanRequest request = PlanRequest.of(Toy.of(facts), new Goal.Free(List.of("p0")));
        Rules rules =
                Rules.none()
                        .requireTools(List.of("t5"))
                        .requireActs(List.of("move:p1"))
                        .requireParts(parts.subList(0, 60));
        assertEquals(List.of(), request.with(rules).problems());
        assertEquals(
                List.of("at most 62 tools, parts and acts can be required, not 63"),
                problems(request.with(rules.requireParts(List.of("p62")))));
    }

    @Test
    void aDeviceHasUpTo64Supplies() {
        assertEquals(List.of(), supplied(64).problems());
        assertEquals(
                List.of("a device can have at most 64 supplies, not 65"),
                supplied(65).problems().stream().map(Problem::message).toList());
    }

    private static PlanRequest supplied(int supplies) {
        Device device =
                Device.build(
                        "many",
                        facts -> {
                            facts.base("frame")
                                    .usualPosture("up")
                                    .setup(
                                            new SetupTable(
                                                    Map.of("hand", Map.of()),
                                                    Map.of("up", Map.of())));
                            facts.add(
                                    new Part(
                                            "frame",
                                            "Frame",
                                            "frame",
                                            List.of(),
                                            Optional.empty(),
                                            List.of(),
                                            Optional.empty(),
                                            List.of(),
                                            List.of()));
                            IntStream.range(0, supplies)
                                    .forEach(i -> facts.add(new Supply("s" + i, "S" + i)));
                        });
        return PlanRequest.of(device, new Goal.Teardown());
    }

    @Test
    void whatIsReleasedAlreadyCannotBeAskedFor() {
        State start = new State(Set.of("lid-screw"), List.of());
        assertEquals(
                new PlanResult.Impossible(
                        List.of("joint lid-screw is already released, so it cannot be reached")),
                new Planner().plan(PlanRequest.of(TOY, new Goal.Reach("lid-screw")).from(start)));
        assertEquals(
                new PlanResult.Impossible(
                        List.of(
                                "release:lid-screw/t5 is required, but lid-screw is already"
                                        + " released")),
                new Planner()
                        .plan(
                                PlanRequest.of(TOY, BOARD)
                                        .from(start)
                                        .with(
                                                Rules.none()
                                                        .requireActs(
                                                                List.of("release:lid-screw/t5")))));
    }
}
