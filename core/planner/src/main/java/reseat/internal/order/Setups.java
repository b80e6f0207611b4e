package reseat.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Items to be put in order, and what they cost after each other. An item may be free: it costs
 * nothing, and what comes after it costs what it would cost after the item before.
 *
 * <p>Free items are left out while the others are put in order, and stand as early as they may
 * afterwards. That is exact: what must come before what through a free item is kept.
 */
public final class Setups {

    private static final int NONE = -1;

    private final int items;
    private final int[] kinds;
    private final int[][] costs;
    private final int start;
    private final int[] costly;

    /**
     * Makes the set-ups.
     *
     * @param kinds for each item, its kind, or -1 for a free one
     * @param costs what it costs to do an item of one kind after one of another
     * @param start kind of what was done before
     */
    public Setups(int[] kinds, int[][] costs, int start) {
        this.items = kinds.length;
        this.kinds = kinds.clone();
        this.costs = Arrays.stream(costs).map(int[]::clone).toArray(int[][]::new);
        this.start = start;
        int[] some = new int[items];
        int count = 0;
        for (int item = 0; item < items; item++) {
            if (kinds[item] != NONE) {
                some[count++] = item;
            }
        }
        this.costly = Arrays.copyOf(some, count);
    }

    int items() {
        return items;
    }

    /** Makes a problem of the items that are not free, between a start and an end. */
    OrderProblem problem(BitRows before) {
        int n = costly.length;
        OrderProblem.Builder builder = OrderProblem.ofSize(n + 2);
        for (int a = 0; a <= n; a++) {
            int from = a == 0 ? start : kinds[costly[a - 1]];
            for (int b = 0; b <= n; b++) {
                builder.cost(a, b, costs[from][b == 0 ? start : kinds[costly[b - 1]]]);
                if (a > 0 && b > 0 && before.has(costly[a - 1], costly[b - 1])) {
                    builder.precede(a, b);
                }
            }
        }
        return builder.build();
    }

    /** Returns all items in the order of a solution of the problem. */
    int[] order(OrderResult result, BitRows before) {
        List<Integer> order = new ArrayList<>();
        BitRows after = before.transposed();
        BitRows done = new BitRows(1, items);
        addFree(order, done, after);
        for (int act : result.order()) {
            if (act > 0 && act <= costly.length) {
                done.set(0, costly[act - 1]);
                order.add(costly[act - 1]);
                addFree(order, done, after);
            }
        }
        return order.stream().mapToInt(Integer::intValue).toArray();
    }

    private void addFree(List<Integer> order, BitRows done, BitRows after) {
        boolean more = costly.length < items;
        while (more) {
            more = false;
            for (int item = 0; item < items; item++) {
                if (kinds[item] == NONE && !done.has(0, item) && done.holds(0, after, item)) {
                    done.set(0, item);
                    order.add(item);
                    more = true;
                }
            }
        }
    }

    long costOf(int[] order) {
        long sum = 0;
        int at = start;
        for (int item : order) {
            if (kinds[item] != NONE) {
                sum += costs[at][kinds[item]];
                at = kinds[item];
            }
        }
        return sum;
    }
}
