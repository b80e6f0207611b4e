package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.oracle.SmallDevices;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.planner.Planner;

/** What a search comes to as a result: with prepare acts, bounds and reasons. */
class PlanningTest {

    private static long prepareMs(PlanRequest request) {
        return request.device().prepares().values().stream()
                .mapToLong(prepare -> prepare.ms() + prepare.restoreMs())
                .sum();
    }

    private static PlanRequest with(PlanRequest request, long expansions) {
        return new PlanRequest(
                request.device(),
                request.goal(),
                request.start(),
                request.rules(),
                Effort.ofExpansions(expansions));
    }

    @Test
    void prepareActsCountInTheCostAndInTheBound() {
        long prepared = 0;
        for (SmallDevices.Stand device : Trial.small(40)) {
            PlanRequest request = device.request();
            long wanted = device.restMs().orElseThrow() + prepareMs(request);
            PlanResult.Found found =
                    assertInstanceOf(
                            PlanResult.Found.class,
                            Planning.plan(with(request, 1_000_000), Watch.NONE, Planner::rebuild));
            assertEquals(wanted, found.plan().totalMs());
            assertEquals(wanted, found.plan().lowerBoundMs());
            prepared += prepareMs(request) > 0 ? 1 : 0;
        }
        assertTrue(prepared > 0, "no device has a prepare act");
    }

    @Test
    void stoppedEarlyItTellsTheBoundOfTheSearchWithThePrepareActs() {
        long unfinished = 0;
        for (SmallDevices.Stand device : Trial.small(40)) {
            PlanRequest request = device.request();
            for (int effort : new int[] {1, 3, 20}) {
                Trial trial = new Trial(request, effort);
                long bound =
                        new Search(trial.task, trial.limits).run().lowerBoundMs()
                                + prepareMs(request);
                PlanResult result = Planning.plan(with(request, effort), Watch.NONE, Planner::rebuild);
                if (result instanceof PlanResult.Unfinished open) {
                    assertEquals(bound, open.lowerBoundMs());
                    unfinished += prepareMs(request) > 0 ? 1 : 0;
                } else {
                    PlanResult.Found found = assertInstanceOf(PlanResult.Found.class, result);
                    assertEquals(bound, found.plan().lowerBoundMs());
                }
            }
        }
        assertTrue(unfinished > 0, "none with a prepare act was stopped before it had a plan");
    }

    @Test
    void saysWhatStandsInTheWay() {
        PlanRequest request =
                PlanRequest.of(
                                Toy.of("part lid", "joint screw holds lid frame tool t5"),
                                new Goal.Free(List.of("lid")))
                        .with(Rules.none().forbidTools(List.of("t5")));
        PlanResult.Impossible none =
                assertInstanceOf(PlanResult.Impossible.class, Planning.plan(request, Watch.NONE, Planner::rebuild));
        assertTrue(
                none.reasons().stream().anyMatch(reason -> reason.contains("screw")),
                () -> String.valueOf(none.reasons()));
    }
}
