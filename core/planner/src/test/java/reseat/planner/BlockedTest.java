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
                        "bond can only be released with heat-mat, which is forbidden"),
                why(SLATE, free("display"), rules));
    }

    @Test
    void ruinWithoutPermissionFarDown() {
        assertEquals(
                List.of(
                        "board cannot be freed: cell-plug holds it",
                        "display hides cell-plug",
                        "bond holds display",
                        "bond can only be released by heat-mat, which ruins display without"
                                + " permission"),
                why(SLATE, free("board"), Rules.none()));
    }

    @Test
    void aSupplyThatNothingCuts() {
        Rules rules =
                Rules.none().permitRuin(List.of("display")).forbidJoints(List.of("cell-plug"));
        assertEquals(
                List.of(
                        "screw cannot be reached: cell cannot be cut",
                        "only cell-plug cuts cell",
                        "releasing cell-plug is forbidden"),
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
                        "a cannot be freed: it cannot leave frame",
                        "b is in the way of a",
                        "b cannot come along: they differ in tool",
                        "a is in the way of b"),
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
                        "b hides j",
                        "k holds b",
                        "a hides k",
                        "which closes a ring: j would have to be released already"),
                why(ring, free("a"), Rules.none()));
    }

    @Test
    void noSentenceRepeatsAnother() {
        Device shell =
                Toy.of(
                        "part bumper",
                        "part shell",
                        "part radio under shell",
                        "joint bumper-screw holds bumper shell frame tool t5",
                        "joint clip holds radio frame");
        assertEquals(
                List.of(
                        "radio cannot be freed: shell is in its way",
                        "bumper-screw holds shell",
                        "bumper-screw can only be released with t5, which is forbidden"),
                why(shell, free("radio"), Rules.none().forbidTools(List.of("t5"))));
    }

    @Test
    void aPartThatMustStay() {
        Rules rules = Rules.none().permitRuin(List.of("display")).forbidParts(List.of("display"));
        assertEquals(
                List.of(
                        "board cannot be freed: display is in its way",
                        "moving display is forbidden"),
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
                List.of("what is required is impossible", "releasing screw is forbidden"),
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
                List.of("the device cannot be taken apart fully", "releasing screw is forbidden"),
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
