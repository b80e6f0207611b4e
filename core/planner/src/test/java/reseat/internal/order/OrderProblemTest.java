package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.plan.Plan.Ended;

class OrderProblemTest {

    @Test
    void closesThePrecedence() {
        OrderProblem problem = OrderProblem.ofSize(6).precede(1, 2).precede(2, 3).build();
        assertTrue(problem.mustPrecede(1, 3));
        assertTrue(problem.mustPrecede(0, 4));
        assertTrue(problem.mustPrecede(4, 5));
        assertFalse(problem.mustPrecede(3, 4));
    }

    @Test
    void knowsWhatMayFollowDirectly() {
        OrderProblem problem = OrderProblem.ofSize(5).precede(1, 2).precede(2, 3).build();
        assertTrue(problem.canFollow(1, 2));
        assertFalse(problem.canFollow(1, 3), "2 must come between");
        assertFalse(problem.canFollow(2, 1));
        assertFalse(problem.canFollow(0, 4));
        assertFalse(problem.canFollow(2, 2));
    }

    @Test
    void namesACycle() {
        OrderProblem.Builder builder =
                OrderProblem.ofSize(8).precede(2, 5).precede(5, 3).precede(3, 2).precede(1, 2);
        IllegalArgumentException thrown =
                assertThrows(IllegalArgumentException.class, builder::build);
        assertEquals(
                "the precedence has a cycle: 2 before 5 before 3 before 2", thrown.getMessage());
    }

    @Test
    void refusesWhatMustPrecedeTheFirst() {
        OrderProblem.Builder builder = OrderProblem.ofSize(4).precede(2, 0);
        assertEquals(
                "the precedence has a cycle: 0 before 2 before 0",
                assertThrows(IllegalArgumentException.class, builder::build).getMessage());
    }

    @Test
    void countsThePairsThatAreOrdered() {
        assertEquals(1, OrderProblem.ofSize(3).build().density());
        assertEquals(5 / 6.0, OrderProblem.ofSize(4).build().density(), 1e-12);
    }

    @Test
    void judgesOrders() {
        OrderProblem problem =
                OrderProblem.ofSize(4)
                        .precede(1, 2)
                        .cost(0, 1, 5)
                        .cost(1, 2, 7)
                        .cost(2, 3, 9)
                        .build();
        assertEquals(21, problem.costOf(List.of(0, 1, 2, 3)));
        assertFalse(problem.isValid(List.of(0, 2, 1, 3)));
        assertFalse(problem.isValid(List.of(0, 1, 1, 3)));
        assertFalse(problem.isValid(List.of(0, 1, 2)));
        assertFalse(problem.isValid(List.of(0, 1, 2, 4)));
        assertThrows(IllegalArgumentException.class, () -> problem.costOf(List.of(0, 2, 1, 3)));
    }

    @Test
    void refusesWhatIsOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> OrderProblem.ofSize(0));
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderProblem.ofSize(OrderProblem.MAX_SIZE + 1));
        OrderProblem.Builder builder = OrderProblem.ofSize(3);
        assertThrows(IllegalArgumentException.class, () -> builder.cost(0, 1, -1));
        assertThrows(
                IllegalArgumentException.class,
                () -> builder.cost(0, 1, OrderProblem.MAX_COST + 1));
        assertThrows(IndexOutOfBoundsException.class, () -> builder.precede(0, 3));
    }

    @Test
    void refusesABoundAboveTheCost() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new OrderResult(List.of(0), 5, 6, Ended.PROVED, 0));
        assertEquals(0.25, new OrderResult(List.of(0), 8, 6, Ended.TIME, 0).gap());
    }
}
