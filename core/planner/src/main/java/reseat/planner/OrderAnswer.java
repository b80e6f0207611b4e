package reseat.planner;

import java.util.List;
import reseat.plan.Plan;

/** What comes of a request for an order. */
public sealed interface OrderAnswer {

    /**
     * An order was found.
     *
     * @param order places of the items in the list of the request, in the order to do them
     * @param workMs time of the items, with that of joints that let go in a teardown, set-ups
     *     apart, in milliseconds
     * @param setupMs set-ups of the order, with what parts laid aside add in a teardown, in
     *     milliseconds
     * @param lowerBoundMs no valid order has less set-ups than this, in milliseconds
     * @param ended why the search ended
     */
    record Found(
            List<Integer> order, long workMs, long setupMs, long lowerBoundMs, Plan.Ended ended)
            implements OrderAnswer {

        public Found {
            order = List.copyOf(order);
            if (lowerBoundMs > setupMs) {
                throw new IllegalArgumentException(
                        "a bound of "
                                + lowerBoundMs
                                + " ms lies above the cost "
                                + setupMs
                                + " ms");
            }
        }

        /** Tells whether no valid order has less set-ups. */
        public boolean proved() {
            return lowerBoundMs == setupMs;
        }

        /** Returns the time of the items with all set-ups, in milliseconds. */
        public long totalMs() {
            return workMs + setupMs;
        }
    }

    /**
     * No order is valid.
     *
     * @param reasons sentences; never empty
     */
    record Impossible(List<String> reasons) implements OrderAnswer {
        public Impossible {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * The effort ended before any valid order was found.
     *
     * @param ended why the search ended
     * @param lowerBoundMs no valid order has less set-ups than this, in milliseconds
     */
    record Unfinished(Plan.Ended ended, long lowerBoundMs) implements OrderAnswer {}
}
