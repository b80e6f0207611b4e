package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.internal.order.OrderResult.Ended;

class OrderSolverTest {

    private static final long SEED = 20_260_101;

    @Test
    void findsAndProvesTheOptimumOfSmallProblems() {
        for (int k = 0; k < 200; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 1 + k % 11);
            OrderResult result = OrderSolver.solve(problem, OrderLimit.ofExpansions(3_000_000));
            String which = "seed " + seed;
            assertEquals(RandomProblems.optimum(problem), result.cost(), which);
            assertTrue(result.proved(), which);
            assertEquals(Ended.PROVED, result.ended(), which);
            assertEquals(result.cost(), problem.costOf(result.order()), which);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 100, 1_500, 4_000, 9_000, 20_000})
    void boundsHoldHoweverEarlyTheWorkEnds(long expansions) {
        for (int k = 0; k < 30; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 6 + k % 7);
            OrderResult result = OrderSolver.solve(problem, OrderLimit.ofExpansions(expansions));
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
            OrderResult result =
                    OrderSolver.solve(problem, OrderLimit.ofExpansions(60_000).withStates(3));
            long optimum = RandomProblems.optimum(problem);
            assertTrue(
                    result.lowerBound() <= optimum && optimum <= result.cost(),
                    "seed " + seed + ", " + result);
        }
    }

    @Test
    void sameEffortGivesTheSameAnswer() {
        OrderProblem problem = RandomProblems.make(SEED, 40);
        OrderLimit limit = OrderLimit.ofExpansions(150_000);
        assertEquals(OrderSolver.solve(problem, limit), OrderSolver.solve(problem, limit));
    }

    @Test
    void moreEffortIsNeverWorse() {
        OrderProblem problem = RandomProblems.make(SEED + 5, 45);
        OrderResult little = OrderSolver.solve(problem, OrderLimit.ofExpansions(10_000));
        OrderResult more = OrderSolver.solve(problem, OrderLimit.ofExpansions(200_000));
        assertTrue(more.cost() <= little.cost());
        assertTrue(more.lowerBound() >= little.lowerBound());
    }

    @Test
    void endsWhenToldTo() {
        AtomicInteger asked = new AtomicInteger();
        OrderLimit limit =
                OrderLimit.ofTime(Duration.ofHours(1)).orWhen(() -> asked.incrementAndGet() > 3);
        OrderProblem problem = RandomProblems.make(SEED, 60);
        OrderResult result = OrderSolver.solve(problem, limit);
        assertEquals(Ended.CANCELLED, result.ended());
        assertEquals(4, asked.get());
        assertTrue(problem.isValid(result.order()));
    }

    @Test
    void endsWhenTheTimeIsUp() {
        OrderProblem problem = RandomProblems.make(SEED, 60);
        OrderResult result = OrderSolver.solve(problem, OrderLimit.ofTime(Duration.ZERO));
        assertEquals(Ended.TIME, result.ended());
        assertFalse(result.proved());
    }

    @Test
    void ordersOneAndTwoActs() {
        OrderLimit limit = OrderLimit.ofExpansions(0);
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
        OrderResult result = OrderSolver.solve(chain.build(), OrderLimit.ofExpansions(100_000));
        assertTrue(result.proved());
        assertEquals(128 * 129 / 2, result.cost());
    }
}
