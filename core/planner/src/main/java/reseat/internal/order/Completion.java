package reseat.internal.order;

import java.util.Arrays;

/**
 * Bounds from below what it costs to finish an order of which a part is known.
 *
 * <p>The bound of a part is its own cost, plus {@link #after} for its last act, plus the prices of
 * all acts not in it; everything is scaled. A search keeps the sum of prices up to date, so that a
 * bound costs almost nothing.
 */
interface Completion {

    /** Higher than any bound that matters. */
    int NONE = 1 << 29;

    /** The price of visiting an act. */
    long price(int act);

    /**
     * Returns the least priced cost of going on.
     *
     * @param position place of the last act in the order
     * @param act the last act
     * @param sets sets of acts
     * @param offset where the set of the acts in the part begins
     * @return the bound, {@link #NONE} or more when there is no way on
     */
    long after(int position, int act, long[] sets, int offset);

    /** The sum of all prices. */
    static long total(Completion completion, int n) {
        long sum = 0;
        for (int act = 0; act < n; act++) {
            sum += completion.price(act);
        }
        return sum;
    }

    /** The trivial bound: steps cost no less than 0. */
    Completion NOTHING =
            new Completion() {
                @Override
                public long price(int act) {
                    return 0;
                }

                @Override
                public long after(int position, int act, long[] sets, int offset) {
                    return 0;
                }
            };

    /** The bound that the prices of an assignment give, for problems too large for better. */
    static Completion of(Assignment assignment) {
        int n = assignment.leaving.length;
        long[] prices = new long[n];
        Arrays.setAll(
                prices,
                act ->
                        act == 0 || act == n - 1
                                ? 0
                                : assignment.leaving[act] + assignment.entering[act]);
        return new Completion() {
            @Override
            public long price(int act) {
                return prices[act];
            }

            @Override
            public long after(int position, int act, long[] sets, int offset) {
                return act == n - 1 ? 0 : assignment.leaving[act] + assignment.entering[n - 1];
            }
        };
    }
}
