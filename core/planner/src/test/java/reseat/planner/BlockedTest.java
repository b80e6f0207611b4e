package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.graph.Blocked;
import reseat.graph.StepGraph;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;

/** Why a goal cannot be reached, in sentences. */
class BlockedTest {

    private static final Device SLATE =
            Toy.of(
                    "part display",
                    "part board under display",
                    "joint bond holds display frame tool heat-mat ruins display",
                    "joint cell-plug holds board frame under display cuts cell",
                    "joint screw holds board frame under display needs cell");

    private static List<String> why(Device device, Goal goal, Rules rules) {
        List<String> chain =
                StepGraph.of(device, State.closed(), rules)
                        .blocked(goal)
                        .map(Blocked::chain)
                        .orElse(List.of());
        PlanResult result = new Planner().plan(PlanRequest.of(device, goal).with(rules));
        if (!chain.isEmpty()) {
            assertEquals(new PlanResult.Impossible(chain), result);
        }
        return chain;
    }

    private static Goal free(String part) {
        return new Goal.Free(List.of(part));
    }

    @Test
    void nothingStandsInTheWay() {
        Rules may = Rules.none().permitRuin(List.of("display"));
        assertEquals(List.of(), why(SLATE, free("board"), may));
    }

    @Test
    void aToolThatIsForbidden() {
        Rules rules = Rules.none().permitRuin(List.of("display")).forbidTools(List.of("heat-mat"));
        assertEquals(
                List.of(
                        "display cannot be freed: bond holds it",
                        "bond cannot be released: it can only be released with heat-mat, which is"
                                + " forbidden"),
                why(SLATE, free("display"), rules));
    }

    @Test
    void ruinWithoutPermissionFarDown() {
        assertEquals(
                List.of(
                        "board cannot be freed: cell-plug holds it",
                        "cell-plug cannot be released: display hides it while it lies with frame",
                        "display and frame cannot come apart: bond cannot be released from display,"
                                + " and frame is the base and stays",
                        "bond cannot be released: it can only be released by heat-mat, which ruins"
                                + " display without permission"),
                why(SLATE, free("board"), Rules.none()));
    }

    @Test
    void aSupplyThatNothingCuts() {
        Rules rules =
                Rules.none().permitRuin(List.of("display")).forbidJoints(List.of("cell-plug"));
        assertEquals(
                List.of(
                        "screw cannot be reached: cell cannot be cut",
                        "cell cannot be cut: none of its isolators can be released",
                        "cell-plug cannot be released: that is forbidden"),
                why(SLATE, new Goal.Reach("screw"), rules));
    }

    @Test
    void aRingOfCoversThatDifferInTool() {
        Device ring =
                Toy.of(
                        "part a under b",
                        "part b under a tool t5",
                        "joint j holds a frame",
                        "joint k holds b frame");
        assertEquals(
                List.of(
                        "a cannot be freed: it cannot get away from frame",
                        "a and frame cannot come apart: a cannot be moved, and frame is the base"
                                + " and stays",
                        "a cannot be moved: b is in its way, and b cannot come along: they differ"
                                + " in tool",
                        "b and a cannot come apart: b cannot go first because a is in its way, and"
                                + " a cannot go first because b is in its way"),
                why(ring, free("a"), Rules.none()));
    }

    @Test
    void aRingOverSeveralFactsIsNamedAsOne() {
        Device ring =
                Toy.of(
                        "part a",
                        "part b",
                        "joint j holds a frame under b",
                        "joint k holds b frame under a");
        assertEquals(
                List.of(
                        "a cannot be freed: j holds it",
                        "j cannot be released: b hides it while it lies with frame",
                        "b and frame cannot come apart: k cannot be released from b, and frame is"
                                + " the base and stays",
                        "k cannot be released: a hides it while it lies with frame",
                        "a and frame cannot come apart: j cannot be released from a, and frame is"
                                + " the base and stays",
                        "this closes a ring: to release j, j must be released already"),
                why(ring, free("a"), Rules.none()));
    }

    @Test
    void aPartThatMustStay() {
        Rules rules = Rules.none().permitRuin(List.of("display")).forbidParts(List.of("display"));
        assertEquals(
                List.of(
                        "board cannot be freed: it cannot get away from display",
                        "board and display cannot come apart: board cannot go first because display"
                                + " is in its way, and moving display is forbidden"),
                why(SLATE, free("board"), rules));
    }

    @Test
    void whatIsRequiredCannotBe() {
        Rules rules =
                Rules.none()
                        .permitRuin(List.of("display"))
                        .requireJoints(List.of("screw"))
                        .forbidJoints(List.of("screw"));
        assertEquals(
                List.of(
                        "what is required is impossible",
                        "screw cannot be released: that is forbidden"),
                why(SLATE, new Goal.Reach("bond"), rules));
    }

    @Test
    void aJointWithoutAWayIsNeverReached() {
        Rules rules = Rules.none().forbidTools(List.of("heat-mat"));
        assertEquals(
                List.of(
                        "bond cannot be reached: it can only be released with heat-mat, which is"
                                + " forbidden"),
                why(SLATE, new Goal.Reach("bond"), rules));
    }

    @Test
    void aTeardownThatStopsAtOneJoint() {
        Rules rules = Rules.none().permitRuin(List.of("display")).forbidJoints(List.of("screw"));
        assertEquals(
                List.of(
                        "the device cannot be taken apart fully",
                        "screw cannot be released: that is forbidden"),
                why(SLATE, new Goal.Teardown(), rules));
    }

    @Test
    void whereNoSingleThingIsToBlameThePlannerSaysSo() {
        // the only way is a move of both, which is forbidden as such
        Device pair =
                Toy.of(
                        "part a under b",
                        "part b under a",
                        "joint hook holds a b under frame",
                        "joint j holds b frame");
        Rules rules = Rules.none().forbidActs(List.of("move:a+b"));
        assertEquals(
                Optional.empty(),
                StepGraph.of(pair, State.closed(), rules).blocked(new Goal.Reach("hook")));
        assertEquals(
                new PlanResult.Impossible(
                        List.of(
                                "reach hook: no order of acts works, although no single fact"
                                        + " prevents it")),
                new Planner().plan(PlanRequest.of(pair, new Goal.Reach("hook")).with(rules)));
    }
}
