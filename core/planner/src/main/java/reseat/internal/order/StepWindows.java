package reseat.internal.order;

import java.util.Arrays;

/**
 * Which step may be taken at which place of an order: at first what the precedence allows, later
 * what could still be part of a better order than the best known.
 */
final class StepWindows {

    private final int n;
    private final int words;
    private final long[] open;

    /** At each place k, the steps open from k to k + 1, as {@code head << 16 | tail}, sorted. */
    private final int[][] at;

    private StepWindows(int n, int[][] at) {
        this.n = n;
        this.words = (n + 63) >>> 6;
        this.open = new long[n * n * words];
        this.at = at;
        for (int k = 0; k < n - 1; k++) {
            for (int step : at[k]) {
                open[word(step & 0xffff, step >>> 16, k)] |= 1L << k;
            }
        }
    }

    static StepWindows of(Network net) {
        int n = net.n;
        int[][] at = new int[n][];
        int[] found = new int[n * n];
        for (int k = 0; k < n - 1; k++) {
            int count = 0;
            for (int head = 1; head < n; head++) {
                if (!fits(net, head, k + 1)) {
                    continue;
                }
                for (int tail : net.tails[head]) {
                    if (fits(net, tail, k)) {
                        found[count++] = (head << 16) | tail;
                    }
                }
            }
            at[k] = Arrays.copyOf(found, count);
            Arrays.sort(at[k]);
        }
        at[n - 1] = new int[0];
        return new StepWindows(n, at);
    }

    /** How many steps {@link #of} would hold. */
    static long sizeFor(Network net) {
        long sum = 0;
        for (int tail = 0; tail < net.n; tail++) {
            for (int head : net.heads[tail]) {
                int first = Math.max(net.before.count(tail), net.before.count(head) - 1);
                int last = net.n - 1 - Math.max(net.after.count(tail), net.after.count(head) + 1);
                sum += Math.max(0, last - first + 1);
            }
        }
        return sum;
    }

    private static boolean fits(Network net, int act, int position) {
        return net.before.count(act) <= position && position <= net.n - 1 - net.after.count(act);
    }

    /** A test of a step at a place. */
    interface Test {
        boolean keeps(int position, int tail, int head);
    }

    StepWindows only(Test test) {
        int[][] kept = new int[n][];
        for (int k = 0; k < n; k++) {
            int position = k;
            kept[k] =
                    Arrays.stream(at[k])
                            .filter(step -> test.keeps(position, step & 0xffff, step >>> 16))
                            .toArray();
        }
        return new StepWindows(n, kept);
    }

    /** The same windows for the reversed network. */
    StepWindows turned() {
        int[][] turned = new int[n][];
        for (int k = 0; k < n - 1; k++) {
            turned[n - 2 - k] =
                    Arrays.stream(at[k])
                            .map(
                                    step ->
                                            ((n - 1 - (step & 0xffff)) << 16)
                                                    | (n - 1 - (step >>> 16)))
                            .sorted()
                            .toArray();
        }
        turned[n - 1] = new int[0];
        return new StepWindows(n, turned);
    }

    int[] at(int position) {
        return at[position];
    }

    boolean isOpen(int position, int tail, int head) {
        return ((open[word(tail, head, position)] >>> position) & 1) != 0;
    }

    /** Returns whether a step may be taken anywhere. */
    boolean isEverOpen(int tail, int head) {
        int first = word(tail, head, 0);
        for (int w = first; w < first + words; w++) {
            if (open[w] != 0) {
                return true;
            }
        }
        return false;
    }

    long size() {
        return Arrays.stream(at).mapToLong(steps -> steps.length).sum();
    }

    private int word(int tail, int head, int position) {
        return (tail * n + head) * words + (position >>> 6);
    }
}
