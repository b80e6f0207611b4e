package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * The planner's cost is the exhaustive optimum on 2,000 solvable random devices, each of its plans
 * passes the simulator act by act at the same cost, and where it says that there is no way there is
 * none. Prints for each feature in how many devices the optimum depends on it.
 */
class PlannerAgainstOracleTest {

    private static final int SOLVABLE = 2_000;
    private static final int EACH_FEATURE = 200;
    private static final Effort ENOUGH = Effort.ofExpansions(5_000_000);

    private final Survey survey = new Survey();
    private long plannerNanos;

    @Test
    void findsTheOptimumOfEveryDevice() {
        long begun = System.nanoTime();
        Map<Long, AssertionError> failures = new TreeMap<>();
        for (long seed = Seeds.first();
                survey.looked() < Seeds.devices(Integer.MAX_VALUE)
                        && survey.solvable() < SOLVABLE
                        && !Seeds.enough(failures);
                seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::compare).ifPresent(e -> failures.put(each, e));
        }
        System.out.printf(
                "Planner against oracle: %s; planner %d ms of %d ms%n",
                survey, plannerNanos / 1_000_000, (System.nanoTime() - begun) / 1_000_000);
        Seeds.report(failures);
        if (survey.solvable() == SOLVABLE) {
            for (Feature feature : Feature.values()) {
                assertTrue(
                        survey.count(feature) >= EACH_FEATURE,
                        () -> feature + " matters too seldom: " + survey);
            }
        }
    }

    private void compare(long seed) {
        Case of = RandomDevices.of(seed);
        Optional<Oracle.Optimum> optimum = Oracle.solve(of);
        survey.add(of, optimum);
        optimum.ifPresent(best -> assertEquals(best.ms(), verdict(of, best.acts()).totalMs()));
        PlanRequest request =
                new PlanRequest(of.device(), of.goal(), of.start(), of.rules(), ENOUGH);
        long begun = System.nanoTime();
        PlanResult result = new Planner().plan(request, Watch.NONE);
        plannerNanos += System.nanoTime() - begun;
        if (optimum.isEmpty()) {
            // a request that names what cannot be, such as to reach a released joint, is refused at
            // once
            boolean no =
                    result instanceof PlanResult.Impossible || result instanceof PlanResult.Refused;
            assertTrue(no, () -> "there is no way, but: " + result);
        } else {
            Plan plan =
                    assertInstanceOf(
                                    PlanResult.Found.class,
                                    result,
                                    () -> "there is a way: " + optimum.get())
                            .plan();
            assertEquals(
                    optimum.get().ms(),
                    plan.totalMs(),
                    () -> "best is " + optimum.get() + "\nnot " + plan.acts());
            assertTrue(
                    plan.proved(),
                    () -> "not proved: bound " + plan.lowerBoundMs() + " of " + plan.totalMs());
            passes(of, plan);
        }
    }

    private static void passes(Case of, Plan plan) {
        Verdict verdict = verdict(of, plan.acts().stream().map(CostedAct::act).toList());
        assertEquals(plan.acts(), verdict.acts());
        assertEquals(plan.totalMs(), verdict.totalMs());
    }

    private static Verdict verdict(Case of, List<Act> acts) {
        Verdict verdict = Simulator.judge(of.device(), of.start(), of.goal(), of.rules(), acts);
        assertEquals(List.of(), verdict.sentences());
        return verdict;
    }
}
