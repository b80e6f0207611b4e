package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/**
 * Cases of towers with nine parts, which part far more often than those of the smallest devices.
 * What is best there is known by A* alone, which is held to exhaustive search in {@link
 * SearchPiecesTest}.
 */
class TowersTest {

    private static final List<Known> TOWERS = towers();

    private record Known(PlanRequest request, long optimum) {}

    private static List<Known> towers() {
        List<Known> towers = new ArrayList<>();
        for (long seed = 1; seed <= 4; seed++) {
            for (String part : List.of("p0", "p2")) {
                PlanRequest request =
                        PlanRequest.of(Tower.of(9, seed), new Goal.Free(List.of(part)));
                Trial trial = new Trial(request);
                Node best = trial.exact().run(trial.start(), Bound.NEVER);
                towers.add(new Known(request, Objects.requireNonNull(best).cost));
            }
        }
        return towers;
    }

    @Test
    void casesProveTheOptimum() {
        for (Known tower : TOWERS) {
            Trial trial = new Trial(tower.request);
            Cases cases = new Cases(trial.task, trial.judge, trial.limits);
            assertEquals(tower.optimum, cases.run(trial.greedy()));
        }
    }

    @Test
    void theTreeOfCasesBoundsTheOptimumWhereverItIsStopped() {
        long judged = 0;
        long proved = 0;
        for (Known tower : TOWERS) {
            for (int effort : new int[] {50, 200, 1_000_000}) {
                Trial trial = new Trial(tower.request, effort);
                Node greedy = trial.greedy();
                if (greedy == null) {
                    continue;
                }
                Node start = trial.judged();
                long[] needs = trial.judge.needs(start);
                long setups = trial.judge.setups(start, needs, trial.judge.thorough());
                CaseTree tree = new CaseTree(trial.task, trial.judge, trial.limits, greedy);
                long bound = tree.run(setups, 1);
                assertTrue(bound <= tower.optimum, () -> bound + " of " + tower.optimum);
                assertTrue(tree.best().cost >= tower.optimum);
                proved += bound == tower.optimum ? 1 : 0;
                judged += trial.limits.expansions();
            }
        }
        // as measured when this was written: fewer proofs or more judged nodes want a reason
        assertTrue(proved >= 20, "proved " + proved);
        assertTrue(judged <= 1_283, "judged " + judged);
    }

    @Test
    void allTogetherProveTheOptimum() {
        for (Known tower : TOWERS) {
            Trial trial = new Trial(tower.request);
            Search.Outcome outcome = new Search(trial.task, trial.limits).run();
            assertEquals(tower.optimum, outcome.lowerBoundMs());
            assertEquals(tower.optimum, Objects.requireNonNull(outcome.best()).cost);
        }
    }
}
