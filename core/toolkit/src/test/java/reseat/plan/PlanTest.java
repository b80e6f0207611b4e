package reseat.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Goal;

class PlanTest {

    private static Plan plan(long totalMs, long boundMs, Act... acts) {
        List<CostedAct> costed =
                List.of(acts).stream()
                        .map(act -> new CostedAct(act, "hand", "face-up", 1, 1, 0))
                        .toList();
        PlanRequest request = PlanRequest.of(Toy.of("part lid"), new Goal.Teardown());
        return new Plan(request, costed, totalMs, boundMs, Plan.Ended.TIME, 7, PlanTest::none);
    }

    private static Rebuild none(Plan plan) {
        throw new AssertionError("no rebuild was asked for: " + plan);
    }

    @Test
    void isProvedWhenNothingCheaperIsOpen() {
        assertTrue(plan(200, 200).proved());
        assertFalse(plan(200, 199).proved());
        assertThrows(IllegalArgumentException.class, () -> plan(200, 201));
    }

    @Test
    void tellsHowFarItMayBeFromTheBest() {
        assertEquals(0.25, plan(200, 150).gap());
        assertEquals(0, plan(200, 200).gap());
        assertEquals(0, plan(0, 0).gap());
    }

    @Test
    void namesWhatItReleasesAndMoves() {
        Plan plan =
                plan(
                        2,
                        2,
                        new Act.Prepared("shut-down"),
                        new Act.Release("plug", "pull"),
                        new Act.MoveParts(List.of("lid", "tape")),
                        new Act.Release("clip", "pry"),
                        new Act.MoveParts(List.of("tape")));
        assertEquals(List.of("plug", "clip"), plan.releasedJoints());
        assertEquals(List.of("lid", "tape"), List.copyOf(plan.movedParts()));
    }
}
