package reseat.internal.order;

import java.util.List;
import reseat.plan.Plan.Ended;

/**
 * An order, what it costs, and what is known about how much better one could be.
 *
 * @param order a valid order of all acts
 * @param cost its cost
 * @param lowerBound no valid order costs less; never above the cost
 * @param ended why the solver stopped
 * @param expansions the effort spent, in the unit of {@link Limits}
 */
public record OrderResult(
        List<Integer> order, long cost, long lowerBound, Ended ended, long expansions) {

    /** Copies the order and checks that the figures fit together. */
    public OrderResult {
        order = List.copyOf(order);
        if (lowerBound > cost) {
            throw new IllegalArgumentException(
                    "the lower bound " + lowerBound + " is above the cost " + cost);
        }
    }

    /**
     * Returns whether no valid order is cheaper.
     *
     * @return whether cost and lower bound meet
     */
    public boolean proved() {
        return lowerBound == cost;
    }

    /**
     * Returns how much of the cost could be saved at most.
     *
     * @return 0 when proved, else (cost - lower bound) / cost
     */
    public double gap() {
        return proved() ? 0 : (double) (cost - lowerBound) / cost;
    }
}
