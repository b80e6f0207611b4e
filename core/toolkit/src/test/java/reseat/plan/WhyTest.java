package reseat.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.graph.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;

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
        return Why.of(assertInstanceOf(PlanResult.Found.class, result).plan());
    }

    private static Why fan() {
        return why(HANDHELD, new Goal.Free(List.of("fan")), Rules.none());
    }

    @Test
    void followsTheFactsDownToTheGoal() {
        Explanation top = fan().explain("top-screw");
        assertEquals(
                List.of(
                        "top-screw holds top to frame and must be released before top with badge can"
                                + " be moved",
                        "top lies over fan-screw: top must be moved before fan-screw can be released",
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
}
