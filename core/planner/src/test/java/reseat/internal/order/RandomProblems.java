package reseat.internal.order;

import java.util.Arrays;
import java.util.Random;

/** Makes small problems from a seed, and solves them by trying every set of acts. */
final class RandomProblems {

    private RandomProblems() {}

    static OrderProblem make(long seed, int size) {
        Random random = new Random(seed);
        double density = random.nextDouble() * 0.6;
        int dearest = new int[] {3, 40, 5000, OrderProblem.MAX_COST}[random.nextInt(4)];
        OrderProblem.Builder builder = OrderProblem.ofSize(size);
        int[] names = new int[size];
        Arrays.setAll(names, k -> k);
        for (int k = size - 2; k > 1; k--) {
            int other = 1 + random.nextInt(k);
            int name = names[k];
            names[k] = names[other];
            names[other] = name;
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                builder.cost(i, j, random.nextInt(dearest));
                if (i > 0 && i < j && j < size - 1 && random.nextDouble() < density) {
                    builder.precede(names[i], names[j]);
                }
            }
        }
        return builder.build();
    }

    /** The cost of the best order, by the recurrence over sets with nothing clever about it. */
    static long optimum(OrderProblem problem) {
        int n = problem.size();
        long[][] least = new long[1 << n][n];
        for (long[] row : least) {
            Arrays.fill(row, Long.MAX_VALUE);
        }
        least[1][0] = 0;
        int[] before = predecessors(problem);
        for (int set = 1; set < 1 << n; set++) {
            for (int last = 0; last < n; last++) {
                if (least[set][last] == Long.MAX_VALUE) {
                    continue;
                }
                for (int next = 0; next < n; next++) {
                    if ((set >> next & 1) == 0 && (before[next] & ~set) == 0) {
                        long cost = least[set][last] + problem.cost(last, next);
                        int grown = set | 1 << next;
                        least[grown][next] = Math.min(least[grown][next], cost);
                    }
                }
            }
        }
        return least[(1 << n) - 1][n - 1];
    }

    private static int[] predecessors(OrderProblem problem) {
        int[] masks = new int[problem.size()];
        for (int earlier = 0; earlier < masks.length; earlier++) {
            for (int later = 0; later < masks.length; later++) {
                if (problem.mustPrecede(earlier, later)) {
                    masks[later] |= 1 << earlier;
                }
            }
        }
        return masks;
    }
}
