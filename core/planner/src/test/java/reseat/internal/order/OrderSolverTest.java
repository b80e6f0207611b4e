package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

class OrderSolverTest {

    private static final long SEED = 20_260_101;

    @Test
    void findsAndProvesTheOptimumOfSmallProblems() {
        for (int k = 0; k < 200; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 1 + k % 11);
            OrderResult result = OrderSolver.solve(problem, Efforts.of(3_000_000));
            String which = "seed " + seed;
            assertEquals(RandomProblems.optimum(problem), result.cost(), which);
            assertTrue(result.proved(), which);
            assertEquals(Ended.PROVED, result.ended(), which);
            assertEquals(result.cost(), problem.costOf(result.order()), which);
        }
    }

    @Test
    void findsTheOptimumWhereActsAreAlike() {
        for (int k = 0; k < 60; k++) {
            OrderProblem problem = alike(SEED + k, 11);
            assertTrue(Arrays.stream(Twins.of(problem)).anyMatch(twins -> twins.length > 0));
            OrderResult result = OrderSolver.solve(problem, Efforts.of(3_000_000));
            assertEquals(RandomProblems.optimum(problem), result.cost(), "seed " + (SEED + k));
            assertTrue(result.proved(), "seed " + (SEED + k));
        }
    }

    /** Acts with one of three tools; every change of tool costs 10 to 20. */
    private static OrderProblem alike(long seed, int size) {
        Random random = new Random(seed);
        int[][] change = new int[3][3];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                change[a][b] = a == b ? 0 : 10 + random.nextInt(11);
            }
        }
        OrderProblem.Builder builder = OrderProblem.ofSize(size);
        int[] tool = random.ints(size, 0, 3).toArray();
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size - 1; j++) {
                builder.cost(i, j, change[tool[i]][tool[j]]);
                if (i > 0 && i < j && random.nextInt(4) == 0) {
                    builder.precede(i, j);
                }
            }
        }
        return builder.build();
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 100, 1_500, 4_000, 9_000, 20_000})
    void boundsHoldHoweverEarlyTheWorkEnds(long expansions) {
        for (int k = 0; k < 30; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 6 + k % 7);
            OrderResult result = OrderSolver.solve(problem, Efforts.of(expansions));
            long optimum = RandomProblems.optimum(problem);
            String which = "seed " + seed + ", " + result;
            assertTrue(result.lowerBound() <= optimum, which);
            assertTrue(result.cost() >= optimum, which);
            assertEquals(result.cost(), problem.costOf(result.order()), which);
            assertEquals(result.proved(), result.ended() == Ended.PROVED, which);
        }
    }

    @Test
    void boundsHoldWhenStatesAreThrownAway() {
        for (int k = 0; k < 30; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 13);
            OrderResult result = OrderSolver.solve(problem, Efforts.of(60_000), 3);
            long optimum = RandomProblems.optimum(problem);
            assertTrue(
                    result.lowerBound() <= optimum && optimum <= result.cost(),
                    "seed " + seed + ", " + result);
        }
    }

    @Test
    void sameEffortGivesTheSameAnswer() {
        OrderProblem problem = RandomProblems.make(SEED, 40);
        assertEquals(
                OrderSolver.solve(problem, Efforts.of(150_000)),
                OrderSolver.solve(problem, Efforts.of(150_000)));
    }

    @Test
    void moreEffortIsNeverWorse() {
        OrderProblem problem = RandomProblems.make(SEED + 5, 45);
        OrderResult little = OrderSolver.solve(problem, Efforts.of(10_000));
        OrderResult more = OrderSolver.solve(problem, Efforts.of(200_000));
        assertTrue(more.cost() <= little.cost());
        assertTrue(more.lowerBound() >= little.lowerBound());
    }

    @Test
    void endsWhenToldTo() {
        AtomicInteger asked = new AtomicInteger();
        Watch watch =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return asked.incrementAndGet() > 3;
                    }
                };
        Limits limit = new Limits(Effort.ofTime(Duration.ofHours(1)), watch);
        OrderProblem problem = RandomProblems.make(SEED, 60);
        OrderResult result = OrderSolver.solve(problem, limit);
        assertEquals(Ended.CANCELLED, result.ended());
        assertEquals(4, asked.get());
        assertTrue(problem.isValid(result.order()));
    }

    @Test
    void endsWhenTheTimeIsUp() {
        OrderProblem problem = RandomProblems.make(SEED, 60);
        OrderResult result = OrderSolver.solve(problem, Efforts.ofTime(Duration.ZERO));
        assertEquals(Ended.TIME, result.ended());
        assertFalse(result.proved());
    }

    @Test
    void ordersOneAndTwoActs() {
        Limits limit = Efforts.of(0);
        assertEquals(List.of(0), OrderSolver.solve(OrderProblem.ofSize(1).build(), limit).order());
        OrderResult two = OrderSolver.solve(OrderProblem.ofSize(2).cost(0, 1, 7).build(), limit);
        assertEquals(7, two.cost());
        assertTrue(two.proved());
    }

    @Test
    void provesAChainThatAllowsOneOrderOnly() {
        OrderProblem.Builder chain = OrderProblem.ofSize(130);
        for (int act = 1; act < 129; act++) {
            chain.precede(act - 1, act).cost(act - 1, act, act);
        }
        OrderResult result = OrderSolver.solve(chain.build(), Efforts.of(100_000));
        assertTrue(result.proved());
        assertEquals(128 * 129 / 2, result.cost());
    }
}
