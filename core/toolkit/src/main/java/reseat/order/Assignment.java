package reseat.order;

import java.util.Arrays;

/**
 * The cheapest choice of a follower for every act, circles allowed: a bound, and prices that prove it.
 *
 * <p>Successive shortest paths with prices (Kuhn 1955; Jonker and Volgenant 1987), in O(n^3). Steps that no valid order
 * has do not take part. The prices satisfy {@code leaving[i] + entering[j] <= cost(i, j)} for all steps.
 */
final class Assignment {

    private static final long FAR = Long.MAX_VALUE / 4;

    /** Price of leaving each act but the last. */
    final long[] leaving;
    /** Price of entering each act but the first. */
    final long[] entering;

    Assignment(Network net, Scale scale) {
        int n = net.n;
        leaving = new long[n];
        entering = new long[n];
        // column 0 stands for "the row being placed"; the first act is no column otherwise
        int[] rowOf = new int[n];
        int[] via = new int[n];
        long[] distance = new long[n];
        boolean[] settled = new boolean[n];
        Arrays.fill(rowOf, -1);
        for (int row = 0; row < n - 1; row++) {
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
}
