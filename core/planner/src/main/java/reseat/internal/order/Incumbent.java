package reseat.internal.order;

/** The best order so far. */
final class Incumbent {

    private final int[] order;
    private long cost;

    Incumbent(int[] order, long cost) {
        this.order = order.clone();
        this.cost = cost;
    }

    /** Its acts; not to be changed. */
    int[] order() {
        return order;
    }

    long cost() {
        return cost;
    }

    /** Adopts a valid order if it is better. */
    void offer(int[] found, long foundCost) {
        if (foundCost < cost) {
            System.arraycopy(found, 0, order, 0, order.length);
            cost = foundCost;
        }
    }
}
