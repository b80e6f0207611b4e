package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;

/**
 * Best plans small enough to be found by hand. Each act of a toy takes 1000 ms and 500 ms to undo,
 * each change of tool 200 ms.
 */
class PlannerTest {

    private static final Goal LID = new Goal.Free(List.of("lid"));
    private static final Goal FAN = new Goal.Free(List.of("fan"));

    private static List<String> acts(PlanRequest request) {
        Plan plan = Given.plan(request);
        assertTrue(plan.proved(), () -> "not proved: " + plan);
        return plan.acts().stream().map(act -> act.act().id()).toList();
    }

    private static List<String> acts(Device device, Goal goal, Rules rules) {
        return acts(PlanRequest.of(device, goal).with(rules));
    }

    /** Two releases and a move at 1500 ms, hand to T5 and back to the hand. */
    @Test
    void addsUpActsAndChangesOfTool() {
        Device device =
                Toy.of(
                        "part lid",
                        "joint a holds lid frame tool t5",
                        "joint b holds lid frame tool t5");
        assertEquals(4900, Given.plan(PlanRequest.of(device, LID)).totalMs());
    }

    @Test
    void keepsTheToolInHandAsLongAsItServes() {
        Device device =
                Toy.of(
                        "part lid",
                        "joint a holds lid frame tool t5",
                        "joint b holds lid frame tool spudger",
                        "joint c holds lid frame tool t5",
                        "joint d holds lid frame tool spudger");
        List<String> tools =
                Given.plan(PlanRequest.of(device, LID)).acts().stream()
                        .map(act -> act.tool())
                        .distinct()
                        .toList();
        assertEquals(3, tools.size());
        assertEquals(5 * 1500 + 3 * 200, Given.plan(PlanRequest.of(device, LID)).totalMs());
    }

    private static final Device TWO_WAYS =
            Toy.of("part lid", "joint screw holds lid frame tool hand or spudger");

    @Test
    void aRequiredToolIsUsedThoughItCostsMore() {
        assertEquals(List.of("release:screw/hand", "move:lid"), acts(TWO_WAYS, LID, Rules.none()));
        assertEquals(
                List.of("release:screw/spudger", "move:lid"),
                acts(TWO_WAYS, LID, Rules.none().requireTools(List.of("spudger"))));
        assertEquals(
                List.of("release:screw/spudger", "move:lid"),
                acts(TWO_WAYS, LID, Rules.none().forbidActs(List.of("release:screw/hand"))));
    }

    @Test
    void aToolThatNothingTakesCannotBeRequired() {
        PlanRequest request =
                PlanRequest.of(TWO_WAYS, LID).with(Rules.none().requireTools(List.of("heat-mat")));
        assertInstanceOf(PlanResult.Impossible.class, new Planner().plan(request));
    }

    private static final Device STACK =
            Toy.of(
                    "part lid",
                    "part tape",
                    "part door",
                    "part cap",
                    "joint screw holds lid frame tool t5 or spudger",
                    "joint glue holds tape lid",
                    "joint clip holds door frame",
                    "joint snap holds cap frame");

    @Test
    void whatIsJoinedLeavesTogether() {
        assertEquals(
                List.of("release:screw/t5", "move:lid+tape"),
                acts(STACK, new Goal.Reach("clip"), Rules.none().requireParts(List.of("lid"))));
    }

    /** The tape may not be moved alone: it leaves on the lid, and then the lid leaves it. */
    @Test
    void aMoveCanBeForbidden() {
        assertEquals(
                List.of("release:screw/t5", "move:lid+tape", "release:glue/hand", "move:lid"),
                acts(
                        STACK,
                        new Goal.Free(List.of("tape")),
                        Rules.none().forbidActs(List.of("move:tape"))));
    }

    @Test
    void requirementsOfAllKindsAreMetTogether() {
        Rules rules =
                Rules.none()
                        .requireTools(List.of("spudger", "hand"))
                        .requireParts(List.of("door", "cap"))
                        .requireActs(List.of("move:lid+tape", "move:tape"));
        List<String> acts = acts(STACK, new Goal.Free(List.of("tape")), rules);
        assertEquals(
                Set.of(
                        "release:screw/spudger",
                        "move:lid+tape",
                        "release:glue/hand",
                        "move:tape",
                        "release:clip/hand",
                        "move:door",
                        "release:snap/hand",
                        "move:cap"),
                Set.copyOf(acts));
        assertEquals(8, acts.size());
        assertTrue(acts.indexOf("move:lid+tape") < acts.indexOf("move:tape"));
    }

    @Test
    void aRequiredPartThatLiesApartAtTheStartIsMovedAlready() {
        State start = new State(Set.of("clip"), List.of(Set.of("door")));
        assertEquals(
                List.of("release:snap/hand", "move:cap"),
                acts(
                        PlanRequest.of(STACK, new Goal.Free(List.of("cap")))
                                .from(start)
                                .with(Rules.none().requireParts(List.of("door")))));
    }

    @Test
    void aGoalThatHoldsNeedsNoAct() {
        State start = new State(Set.of("clip"), List.of(Set.of("door")));
        assertEquals(
                List.of(), acts(PlanRequest.of(STACK, new Goal.Free(List.of("door"))).from(start)));
    }

    /**
     * Three covers hang together by cords, so that one move clears them all from the fan's plug.
     */
    @Test
    void whatHangsTogetherByCordsLeavesInOneMove() {
        Device corded =
                Toy.of(
                        "part a",
                        "part b",
                        "part c",
                        "part fan under a b c",
                        "joint cord holds a b slack",
                        "joint cord-2 holds b c slack",
                        "joint fan-clip holds fan frame under a");
        assertEquals(
                List.of("move:a+b+c", "release:fan-clip/hand", "move:fan"),
                acts(corded, FAN, Rules.none()));
    }

    /** b would come along, but d lies over it and is held to the frame by two screws. */
    @Test
    void whatIsCoveredDoesNotComeAlong() {
        Device covered =
                Toy.of(
                        "part a",
                        "part b under d",
                        "part d",
                        "part fan under a",
                        "joint cord holds a b slack",
                        "joint d-screw holds d frame tool t5",
                        "joint d-screw-2 holds d frame tool t5");
        assertEquals(List.of("move:a", "move:fan"), acts(covered, FAN, Rules.none()));
    }

    @Test
    void aCoverComesAlongWithWhatItCovers() {
        Device covered =
                Toy.of(
                        "part a under d",
                        "part d",
                        "part fan under a d",
                        "joint cord holds a d slack");
        assertEquals(List.of("move:a+d", "move:fan"), acts(covered, FAN, Rules.none()));
    }

    /** Parts that are moved with different tools do not leave in one move. */
    @Test
    void partsOfDifferentToolsLeaveOneAfterTheOther() {
        Device two =
                Toy.of(
                        "part a",
                        "part b tool t5",
                        "part fan under a b",
                        "joint cord holds a b slack");
        List<String> acts = acts(two, FAN, Rules.none());
        assertEquals(Set.of("move:a", "move:b", "move:fan"), Set.copyOf(acts));
    }

    @Test
    void aJointIsReachedWhileItIsMade() {
        Device under = Toy.of("part lid", "part fan", "joint plug holds fan frame under lid");
        assertEquals(List.of("move:lid"), acts(under, new Goal.Reach("plug"), Rules.none()));
    }

    @Test
    void aFullTeardownLeavesEachPartAlone() {
        Device three =
                Toy.of("part a", "part b", "joint ab holds a b", "joint b-clip holds b frame");
        List<String> acts = acts(three, new Goal.Teardown(), Rules.none());
        assertEquals(4, acts.size());
        assertEquals(
                Set.of("release:ab/hand", "release:b-clip/hand"),
                Set.copyOf(acts.stream().filter(act -> act.startsWith("release")).toList()));
    }

    @Test
    void aShieldThatStaysOnTheSpareIsNotTakenOff() {
        Device unit =
                Toy.of(
                        "part board spare shield",
                        "part shield",
                        "joint clip holds board frame",
                        "joint tape holds shield board");
        assertEquals(
                List.of("release:clip/hand", "move:board+shield"),
                acts(unit, new Goal.Free(List.of("board")), Rules.none()));
    }
}
