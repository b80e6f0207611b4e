package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/**
 * What the search reaches with little effort on devices of 50 and of 137 parts and joints. The
 * limits are what was measured when this was written, not derived: whoever makes the search better
 * may tighten them, whoever makes it worse has to say why.
 */
class LargeSearchTest {

    @ParameterizedTest(name = "{0} parts, seed {1}, {2}, {3} nodes judged")
    @CsvSource({
        // parts, seed, part to free or all, effort, plan at most, bound at least
        "20, 1, p3, 1000, 53497, 44126",
        "20, 2, p0, 300, 81067, 75262",
        "20, 2, all, 300, 113239, 112439",
        "55, 1, p3, 300, 192088, 184735",
        "55, 2, p0, 300, 199500, 188192",
        "55, 2, p3, 1000, 199848, 190482",
        "55, 1, all, 300, 320057, 318339"
    })
    void reachesAPlanAndABound(
            int parts, long seed, String target, int effort, long planMs, long boundMs) {
        Goal goal = target.equals("all") ? new Goal.Teardown() : new Goal.Free(List.of(target));
        Trial trial = new Trial(PlanRequest.of(Tower.of(parts, seed), goal), effort);
        Search.Outcome outcome = new Search(trial.task, trial.limits).run();
        Node best = Objects.requireNonNull(outcome.best());
        assertTrue(trial.task.reached(best.at));
        assertTrue(outcome.lowerBoundMs() <= best.cost);
        assertTrue(best.cost <= planMs, () -> "a plan of " + best.cost + " ms");
        assertTrue(
                outcome.lowerBoundMs() >= boundMs,
                () -> "a bound of " + outcome.lowerBoundMs() + " ms");
        // the last call may judge a node or two after the effort is used up
        assertEquals(effort, trial.limits.expansions(), 5);
    }
}
