package reseat.internal.order;

import java.util.Arrays;

/**
 * A problem prepared for searching: flat arrays, and for every act those that may come directly
 * after and before it.
 *
 * <p>A network can be reversed: act {@code v} becomes {@code n - 1 - v} and every step is walked
 * the other way, so that an order read backwards has the same cost. Everything that searches
 * forward can so search backward.
 */
final class Network {

    /** The cost of a step that no valid order has. */
    static final int NEVER = Integer.MAX_VALUE;

    final int n;
    final int words;

    /** Cost of the step from i to j at {@code i * n + j}, or {@link #NEVER}. */
    final int[] cost;

    /** Acts that must come after, and before, each act. */
    final BitRows after;

    final BitRows before;

    /** Acts that may come directly after, cheapest first. */
    final int[][] heads;

    /** Acts that may come directly before, cheapest first. */
    final int[][] tails;

    /**
     * The {@link Twins twins} of each act. One that is ready after its twin may as well be done
     * right then.
     */
    final int[][] twins;

    private Network(int n, int[] cost, BitRows after, BitRows before, int[][] twins) {
        this.twins = twins;
        this.n = n;
        this.words = after.words;
        this.cost = cost;
        this.after = after;
        this.before = before;
        this.heads = new int[n][];
        this.tails = new int[n][];
        for (int i = 0; i < n; i++) {
            heads[i] = neighbours(i * n, 1);
            tails[i] = neighbours(i, n);
        }
    }

    static Network of(OrderProblem problem) {
        int n = problem.size();
        int[] cost = new int[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                cost[i * n + j] = problem.canFollow(i, j) ? problem.cost(i, j) : NEVER;
            }
        }
        return new Network(n, cost, problem.after(), problem.before(), Twins.of(problem));
    }

    Network turned() {
        int[] turned = new int[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                turned[(n - 1 - j) * n + n - 1 - i] = cost[i * n + j];
            }
        }
        int[][] mirrored = new int[n][];
        for (int i = 0; i < n; i++) {
            mirrored[n - 1 - i] = Arrays.stream(twins[i]).map(twin -> n - 1 - twin).toArray();
        }
        return new Network(n, turned, after.mirrored(), before.mirrored(), mirrored);
    }

    private int[] neighbours(int start, int stride) {
        long[] keyed = new long[n];
        int count = 0;
        for (int j = 0; j < n; j++) {
            int c = cost[start + j * stride];
            if (c != NEVER) {
                keyed[count++] = ((long) c << 16) | j;
            }
        }
        Arrays.sort(keyed, 0, count);
        int[] result = new int[count];
        for (int k = 0; k < count; k++) {
            result[k] = (int) (keyed[k] & 0xffff);
        }
        return result;
    }

    long costOf(int[] order) {
        long sum = 0;
        for (int k = 1; k < n; k++) {
            sum += cost[order[k - 1] * n + order[k]];
        }
        return sum;
    }

    /** An order made by always taking the cheapest act that may come next; always valid. */
    int[] nearest() {
        int[] order = new int[n];
        BitRows done = new BitRows(1, n);
        done.set(0, 0);
        for (int k = 1; k < n; k++) {
            for (int j : heads[order[k - 1]]) {
                if (!done.has(0, j) && done.holds(0, before, j)) {
                    order[k] = j;
                    break;
                }
            }
            done.set(0, order[k]);
        }
        return order;
    }
}
