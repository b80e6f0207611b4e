package reseat.internal.order;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.ToLongFunction;

/**
 * The cheapest choice of a successor for every act, cycles allowed: a bound, and prices that prove
 * it.
 *
 * <p>Successive shortest paths with prices (Kuhn 1955; Jonker and Volgenant 1987), in O(n^3). Steps
 * that no valid order has do not take part. The prices satisfy {@code leaving[i] + entering[j] <=
 * cost(i, j)} for all steps.
 */
final class Assignment {

    private static final long FAR = Long.MAX_VALUE / 4;

    /** Price of leaving each act but the last. */
    final long[] leaving;

    /** Price of entering each act but the first. */
    final long[] entering;

    private final Network net;
    private final Scale scale;

    /** Solves it; when the budget ends before, the prices hold all the same. */
    Assignment(Network net, Scale scale, Limits limits) {
        this.net = net;
        this.scale = scale;
        int n = net.n;
        leaving = new long[n];
        entering = new long[n];
        // column 0 stands for "the row being placed"; the first act is no column otherwise
        int[] rowOf = new int[n];
        int[] via = new int[n];
        long[] distance = new long[n];
        boolean[] settled = new boolean[n];
        Arrays.fill(rowOf, -1);
        for (int row = 0; row < n - 1 && limits.spend(1 + (long) n * n / 8192); row++) {
            Arrays.fill(distance, FAR);
            Arrays.fill(settled, false);
            rowOf[0] = row;
            int at = 0;
            do {
                settled[at] = true;
                int from = rowOf[at];
                for (int j : net.heads[from]) {
                    if (!settled[j]) {
                        long slack = scale.up(net.cost[from * n + j]) - leaving[from] - entering[j];
                        if (slack < distance[j]) {
                            distance[j] = slack;
                            via[j] = at;
                        }
                    }
                }
                int nearest = -1;
                for (int j = 1; j < n; j++) {
                    if (!settled[j] && (nearest < 0 || distance[j] < distance[nearest])) {
                        nearest = j;
                    }
                }
                long step = distance[nearest];
                for (int j = 0; j < n; j++) {
                    if (settled[j]) {
                        leaving[rowOf[j]] += step;
                        entering[j] -= step;
                    } else if (distance[j] < FAR) {
                        distance[j] -= step;
                    }
                }
                at = nearest;
            } while (rowOf[at] >= 0);
            while (at != 0) {
                rowOf[at] = rowOf[via[at]];
                at = via[at];
            }
        }
        entering[0] = 0;
    }

    /** The cost of the assignment, scaled. */
    long bound() {
        return Arrays.stream(leaving).sum() + Arrays.stream(entering).sum();
    }

    /**
     * For every act those that may come directly after it, by what the step costs above its prices.
     */
    int[][] likelyFollowers() {
        int n = net.n;
        int[][] sorted = new int[n][];
        for (int from = 0; from < n; from++) {
            int row = from * n;
            sorted[from] =
                    sorted(net.heads[from], to -> scale.up(net.cost[row + to]) - entering[to]);
        }
        return sorted;
    }

    /**
     * For every act those that may come directly before it, by what the step costs above its
     * prices.
     */
    int[][] likelyLeaders() {
        int n = net.n;
        int[][] sorted = new int[n][];
        for (int to = 0; to < n; to++) {
            int column = to;
            sorted[to] =
                    sorted(
                            net.tails[to],
                            from -> scale.up(net.cost[from * n + column]) - leaving[from]);
        }
        return sorted;
    }

    private static int[] sorted(int[] acts, ToLongFunction<Integer> cost) {
        return Arrays.stream(acts)
                .boxed()
                .sorted(Comparator.comparingLong(cost))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
