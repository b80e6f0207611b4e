package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Explanation;
import reseat.plan.Necessity;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.plan.Why;

/** Why something must come off. */
class WhyTest {

    private static final Device HANDHELD =
            Toy.of(
                    "part top",
                    "part badge",
                    "part fan",
                    "part door",
                    "joint top-screw holds top frame tool t5",
                    "joint badge-tape holds badge top",
                    "joint door-clip holds door frame",
                    "joint fan-plug holds fan frame under top needs cell",
                    "joint cell-plug holds door frame under top cuts cell slack",
                    "joint link holds door frame under door cuts cell slack tool spudger",
                    "joint fan-screw holds fan frame under top tool t5");

    private static Why why(Device device, Goal goal, Rules rules) {
        PlanResult result = new Planner().plan(PlanRequest.of(device, goal).with(rules));
        return Why.of(assertInstanceOf(PlanResult.Found.class, result).plan(), new Planner());
    }

    private static Why fan() {
        return why(HANDHELD, new Goal.Free(List.of("fan")), Rules.none());
    }

    @Test
    void followsTheFactsDownToTheGoal() {
        Explanation top = fan().explain("top-screw");
        assertEquals(
                List.of(
                        "top-screw holds top to frame and must be released before top"
                                + " with badge can"
                                + " be moved",
                        "top lies over fan-screw: top must be moved before fan-screw"
                                + " can be released",
                        "fan-screw holds fan to frame and must be released to free fan"),
                top.links());
        assertEquals(new Necessity.EveryWay(), top.necessity());
    }

    @Test
    void namesTheSupply() {
        Explanation plug = fan().explain("cell-plug");
        assertEquals(
                "cell-plug cuts cell, which must be done before fan-plug can be released",
                plug.links().get(0));
        Necessity.Avoidable other = assertInstanceOf(Necessity.Avoidable.class, plug.necessity());
        assertTrue(other.extraMs() > 0 && other.proved(), other::sentence);
        assertEquals("There is a way without it, which takes 3200 ms more.", other.sentence());
        assertTrue(other.other().movedParts().contains("door"));
    }

    @Test
    void aPartThatMerelyGoesAlong() {
        Explanation badge = fan().explain("badge");
        assertEquals(
                "badge goes along with top, to which badge-tape holds it", badge.links().get(0));
        assertEquals(
                "top lies over fan-screw: top must be moved before fan-screw can be released",
                badge.links().get(1));
        assertInstanceOf(Necessity.Avoidable.class, badge.necessity());
    }

    @Test
    void whatStaysIsNotExplainedAway() {
        Explanation door = fan().explain("door");
        assertEquals(List.of("door is not moved in this plan"), door.links());
        assertEquals(new Necessity.Absent(), door.necessity());
        assertThrows(IllegalArgumentException.class, () -> fan().explain("fun"));
    }

    @Test
    void acceptsIdsOfActs() {
        Explanation move = fan().explain("move:top+badge");
        assertEquals(new Necessity.EveryWay(), move.necessity());
        assertEquals(new Necessity.EveryWay(), fan().explain("release:fan-screw/t5").necessity());
    }

    @Test
    void aRequirementIsAReason() {
        Why why =
                why(
                        HANDHELD,
                        new Goal.Reach("fan-screw"),
                        Rules.none().requireParts(List.of("door")));
        assertEquals(
                List.of("door is required by the request to be moved"),
                why.explain("door").links());
        assertEquals(
                List.of("top lies over fan-screw: top must be moved to reach fan-screw"),
                why.explain("top").links());
        assertEquals(new Necessity.EveryWay(), why.explain("door").necessity());
    }

    @Test
    void aFullTeardownNeedsEverything() {
        Why why = why(HANDHELD, new Goal.Teardown(), Rules.none());
        for (String id : HANDHELD.joints().keySet()) {
            assertEquals(new Necessity.EveryWay(), why.explain(id).necessity());
        }
        assertEquals(
                List.of("link holds door to frame and must be released for a full teardown"),
                why.explain("link").links());
    }

    @Test
    void aFullTeardownNeedsEachPartAlone() {
        Why why = why(Toy.of("part lid", "part tape"), new Goal.Teardown(), Rules.none());
        assertEquals(
                List.of(
                        "a full teardown separates lid from every other part: lid must"
                                + " be moved for it"),
                why.explain("lid").links());
    }

    @Test
    void aTargetHasToLeaveTheDevice() {
        Device one = Toy.of("part lid", "joint lid-clip holds lid frame");
        assertEquals(
                List.of("lid lies in the device: lid must be moved to free lid"),
                why(one, new Goal.Free(List.of("lid")), Rules.none()).explain("lid").links());
    }

    /** The board may come out on its tray, but then one of them has to leave the other. */
    @Test
    void aTargetHasToLieAlone() {
        Device tray =
                Toy.of(
                        "part tray",
                        "part board",
                        "joint tray-screw holds tray frame tool t5",
                        "joint board-clip holds board tray under frame");
        Plan plan = Given.plan(PlanRequest.of(tray, new Goal.Free(List.of("board"))));
        assertEquals(
                List.of(
                        "release:tray-screw/t5",
                        "move:tray+board",
                        "release:board-clip/hand",
                        "move:tray"),
                plan.acts().stream().map(act -> act.act().id()).toList());
        assertEquals(
                List.of("board lies with tray: tray must be moved to free board"),
                Why.of(plan, new Planner()).explain("move:tray").links());
    }

    @Test
    void whatTheSpareUnitBringsMayStayOnTheTarget() {
        Device unit =
                Toy.of(
                        "part board spare shield",
                        "part shield",
                        "joint board-clip holds board frame",
                        "joint shield-tape holds shield board");
        Why why = why(unit, new Goal.Free(List.of("board")), Rules.none());
        assertEquals(
                List.of("shield-tape stays connected in this plan"),
                why.explain("shield-tape").links());
        assertEquals(
                List.of("board lies in the device: board must be moved to free board"),
                why.explain("board").links());
    }

    @Test
    void aJointOfThreePartsHoldsThemTogether() {
        Device stack =
                Toy.of(
                        "part lid",
                        "part pad",
                        "joint through holds lid pad frame tool t5",
                        "joint lid-tape holds lid pad");
        assertEquals(
                List.of("through holds lid, pad, frame together and must be released to free lid"),
                why(stack, new Goal.Free(List.of("lid")), Rules.none()).explain("through").links());
    }

    @Test
    void aMoveIsNamedByItsFirstPartAndHowManyGoAlong() {
        Device stack =
                Toy.of(
                        "part deck",
                        "part pad",
                        "part foil",
                        "part fan",
                        "joint deck-screw holds deck frame tool t5",
                        "joint pad-glue holds pad deck",
                        "joint foil-glue holds foil deck",
                        "joint fan-clip holds fan frame under deck");
        Explanation screw =
                why(stack, new Goal.Free(List.of("fan")), Rules.none()).explain("deck-screw");
        assertEquals(
                "deck-screw holds deck to frame and must be released before deck with 2 others can"
                        + " be moved",
                screw.links().get(0));
    }

    @Test
    void aCoverMayGoAlongWithWhatItLiesOver() {
        Device covered =
                Toy.of(
                        "part top",
                        "part fan under badge",
                        "part badge",
                        "joint badge-tape holds badge fan",
                        "joint fan-clip holds fan frame",
                        "joint link holds top frame under fan");
        assertEquals(
                "badge lies over fan and goes along with it",
                why(covered, new Goal.Reach("link"), Rules.none()).explain("badge").links().get(0));
    }

    @Test
    void whatIsOpenFromTheStartNeedsNoReason() {
        State start = new State(Set.of("top-screw"), List.of());
        PlanRequest request = PlanRequest.of(HANDHELD, new Goal.Free(List.of("fan"))).from(start);
        Why why = Why.of(Given.plan(request), new Planner());
        assertEquals(
                List.of("top-screw is released from the start"), why.explain("top-screw").links());
        assertEquals(
                List.of("door-clip stays connected in this plan"),
                why.explain("door-clip").links());
    }

    @Test
    void actsAndJointsMayBeRequiredToo() {
        Why why =
                why(
                        HANDHELD,
                        new Goal.Reach("top-screw"),
                        Rules.none()
                                .requireJoints(List.of("door-clip"))
                                .requireActs(List.of("release:badge-tape/hand")));
        assertEquals(
                List.of("door-clip is required by the request to be released"),
                why.explain("door-clip").links());
        assertEquals(
                List.of("release:badge-tape/hand is required by the request"),
                why.explain("badge-tape").links());
    }

    @Test
    void aPrepareActIsThereForSafety() {
        Explanation prepare = Why.of(Given.boardOut(), new Planner()).explain("prepare:shut-down");
        assertEquals(
                List.of("prepare:shut-down comes before any work, for safety"), prepare.links());
        assertEquals(new Necessity.EveryWay(), prepare.necessity());
    }

    /** A release by one way may be avoided by another way of the same joint. */
    @Test
    void theNecessityOfAReleaseIsThatOfItsWay() {
        Device two = Toy.of("part lid", "joint lid-screw holds lid frame tool t5 or spudger");
        Why why = why(two, new Goal.Free(List.of("lid")), Rules.none());
        assertInstanceOf(Necessity.Avoidable.class, why.explain(usedWay(two)).necessity());
        assertEquals(new Necessity.EveryWay(), why.explain("lid-screw").necessity());
    }

    private static String usedWay(Device device) {
        return Given.plan(PlanRequest.of(device, new Goal.Free(List.of("lid"))))
                .acts()
                .get(0)
                .act()
                .id();
    }

    @Test
    void aSearchThatIsCutShortDoesNotKnow() {
        Plan plan = Given.plan(PlanRequest.of(HANDHELD, new Goal.Free(List.of("fan"))));
        Plan hasty =
                new Plan(
                        plan.request().with(Effort.ofExpansions(0)),
                        plan.acts(),
                        plan.totalMs(),
                        plan.lowerBoundMs(),
                        plan.ended(),
                        plan.expansions(),
                        Planner::rebuild);
        Watch cancelled =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                };
        Necessity badge = Why.of(hasty, new Planner()).explain("badge", cancelled).necessity();
        assertEquals(new Necessity.Unknown(), badge);
        assertEquals(
                "Whether there is a way without it could not be determined in time.",
                badge.sentence());
    }

    @Test
    void necessityIsToldInASentence() {
        Plan plan = Given.plan(PlanRequest.of(HANDHELD, new Goal.Free(List.of("fan"))));
        assertEquals(
                "There is a way without it, which takes 7 ms less; this difference is not proved.",
                new Necessity.Avoidable(-7, false, plan).sentence());
        assertEquals(
                "There is a way without it, which takes 0 ms more.",
                new Necessity.Avoidable(0, true, plan).sentence());
        assertEquals("Every way to the goal needs it.", new Necessity.EveryWay().sentence());
        assertEquals("The plan does without it.", new Necessity.Absent().sentence());
    }
}
