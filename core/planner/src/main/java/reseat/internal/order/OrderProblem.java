package reseat.internal.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Acts to be put in order: the cost of following one by another, and which must come before which.
 *
 * <p>Acts are numbered from 0. Act 0 comes first and act {@code size() - 1} last, as in the
 * published instances (TSPLIB 95); a caller without such acts adds two that cost nothing. The order
 * to keep is closed under transitivity here, so a caller need not state implied pairs. Immutable.
 *
 * @see <a href="http://comopt.ifi.uni-heidelberg.de/software/TSPLIB95/">G. Reinelt, TSPLIB 95</a>
 */
public final class OrderProblem {

    /** The largest cost of one step. */
    public static final int MAX_COST = 1_000_000_000;

    /** The largest number of acts. */
    public static final int MAX_SIZE = 2048;

    private final int size;
    private final int[] costs;
    private final BitRows after;
    private final BitRows before;

    private OrderProblem(int size, int[] costs, BitRows after) {
        this.size = size;
        this.costs = costs;
        this.after = after;
        this.before = after.transposed();
    }

    /**
     * Starts a problem in which every step costs nothing and nothing is ordered but the first and
     * the last act.
     *
     * @param size how many acts, 1 to {@link #MAX_SIZE}
     * @return the builder
     */
    public static Builder ofSize(int size) {
        return new Builder(size);
    }

    /**
     * Returns how many acts there are.
     *
     * @return at least 1
     */
    public int size() {
        return size;
    }

    /**
     * Returns what it costs to do one act directly after another.
     *
     * @param from the earlier act
     * @param to the later act
     * @return the cost; without meaning where {@link #canFollow} is false
     */
    public int cost(int from, int to) {
        return costs[at(from) * size + at(to)];
    }

    /**
     * Returns whether one act must come before another, directly or through others.
     *
     * @param earlier an act
     * @param later an act
     * @return whether every valid order has it so
     */
    public boolean mustPrecede(int earlier, int later) {
        return after.has(at(earlier), at(later));
    }

    /**
     * Returns whether an act may come directly after another: nothing that must come between, and
     * not the wrong way round.
     *
     * @param from the earlier act
     * @param to the later act
     * @return whether a valid order may have it so
     */
    public boolean canFollow(int from, int to) {
        return at(from) != at(to) && !after.has(to, from) && !after.meets(from, before, to);
    }

    /**
     * Returns the share of pairs of acts whose order is given, the first and the last act included.
     *
     * @return 0 (free) to 1 (one single order)
     */
    public double density() {
        return size < 2 ? 1 : 2.0 * after.count() / ((double) size * (size - 1));
    }

    /**
     * Returns whether an order holds every act once and respects the precedence.
     *
     * @param order acts
     * @return whether it is valid
     */
    public boolean isValid(List<Integer> order) {
        if (order.size() != size) {
            return false;
        }
        BitRows done = new BitRows(1, size);
        for (int act : order) {
            if (act < 0 || act >= size || done.has(0, act) || !done.holds(0, before, act)) {
                return false;
            }
            done.set(0, act);
        }
        return true;
    }

    /**
     * Adds up the steps of a valid order.
     *
     * @param order a valid order
     * @return its cost
     * @throws IllegalArgumentException when the order is not valid
     */
    public long costOf(List<Integer> order) {
        if (!isValid(order)) {
            throw new IllegalArgumentException("not a valid order: " + order);
        }
        long sum = 0;
        for (int k = 1; k < size; k++) {
            sum += cost(order.get(k - 1), order.get(k));
        }
        return sum;
    }

    private int at(int act) {
        if (act < 0 || act >= size) {
            throw new IndexOutOfBoundsException("act " + act + " of " + size);
        }
        return act;
    }

    BitRows after() {
        return after;
    }

    BitRows before() {
        return before;
    }

    /** Collects the facts of a problem. Not thread-safe. */
    public static final class Builder {
        private final int size;
        private final int[] costs;
        private final BitRows after;

        private Builder(int size) {
            if (size < 1 || size > MAX_SIZE) {
                throw new IllegalArgumentException(
                        "the number of acts must be 1 to " + MAX_SIZE + ", not " + size);
            }
            this.size = size;
            this.costs = new int[size * size];
            this.after = new BitRows(size, size);
        }

        /**
         * States what a step costs; 0 where nothing is stated.
         *
         * @param from the earlier act
         * @param to the later act
         * @param cost 0 to {@link #MAX_COST}
         * @return this
         */
        public Builder cost(int from, int to, int cost) {
            if (cost < 0 || cost > MAX_COST) {
                throw new IllegalArgumentException(
                        "the cost of "
                                + from
                                + " to "
                                + to
                                + " must be 0 to "
                                + MAX_COST
                                + ", not "
                                + cost);
            }
            costs[at(from) * size + at(to)] = cost;
            return this;
        }

        /**
         * States that an act must come before another.
         *
         * @param earlier an act
         * @param later another act
         * @return this
         */
        public Builder precede(int earlier, int later) {
            after.set(at(earlier), at(later));
            return this;
        }

        /**
         * Closes the order and makes the problem.
         *
         * @return the problem
         * @throws IllegalArgumentException when acts would have to come before themselves; the
         *     message names one such cycle
         */
        public OrderProblem build() {
            BitRows closed = after.copy();
            for (int act = 0; act < size; act++) {
                if (act > 0) {
                    closed.set(0, act);
                }
                if (act < size - 1) {
                    closed.set(act, size - 1);
                }
            }
            List<Integer> cycle = closed.cycle();
            if (!cycle.isEmpty()) {
                throw new IllegalArgumentException("the precedence has a cycle: " + inWords(cycle));
            }
            closed.close();
            return new OrderProblem(size, costs.clone(), closed);
        }

        private static String inWords(List<Integer> cycle) {
            List<String> words = new ArrayList<>();
            cycle.forEach(act -> words.add(act.toString()));
            words.add(cycle.get(0).toString());
            return String.join(" before ", Collections.unmodifiableList(words));
        }

        private int at(int act) {
            if (act < 0 || act >= size) {
                throw new IndexOutOfBoundsException("act " + act + " of " + size);
            }
            return act;
        }
    }
}
