package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;

class TallyTest {

    private final Plan plan = Given.boardOut();
    private final Rebuild rebuild = plan.rebuild();
    private final Tally tally = Tally.of(plan, rebuild);

    @Test
    void closesByTypeAndSeat() {
        assertTrue(tally.closes());
        assertEquals(5, tally.screwsOut());
        assertEquals(0, tally.left());
        assertTrue(tally.totals().stream().allMatch(Tally.Total::closes));
    }

    @Test
    void countsUpAndDown() {
        List<Integer> running = tally.entries().stream().map(Tally.Entry::outInAll).toList();

        assertEquals(List.of(1, 2, 3, 4, 5, 4, 3, 2, 1, 0), running);
    }

    /** Four of m2x4 and the bolt, m2x6, which comes out last and goes in first. */
    @Test
    void countsEachTypeByItself() {
        assertEquals(
                List.of(1, 2, 3, 4, 1, 0, 3, 2, 1, 0),
                tally.entries().stream().map(Tally.Entry::outOfType).toList());
    }

    @Test
    void showsAScrewThatIsLeftOver() {
        List<RebuildAct> short1 = new ArrayList<>(rebuild.acts());
        short1.removeIf(act -> act.joints().equals(List.of("board-screw.a")));
        Rebuild forgot =
                Rebuild.of(plan, short1, 0, Plan.Ended.TIME, plan.request().start());
        Tally open = Tally.of(plan, forgot);

        assertFalse(open.closes());
        assertEquals(1, open.left());
    }
}
