package reseat.internal.order;

import java.util.Arrays;

/**
 * The cheapest walk of n places that forgets most of where it was: a bound for orders, and for the
 * rest of a part.
 *
 * <p>A walk visits an act at every place; it may visit an act twice and break the precedence,
 * unless it remembers. At every act it remembers those of the acts ahead that are in the act's
 * <em>memory</em> and forgets the others (the "ng" relaxation of Baldacci, Mingozzi and Roberti
 * 2011, here with precedence). Visits are priced, so that walks that leave acts out are expensive
 * (Lagrange). One evaluation goes backward through the places in O(steps * 2^memory).
 *
 * <p>After {@link #spread} the table answers, in constant time, what the rest of a given part costs
 * at least.
 */
final class PathRelaxation implements Completion {

    /** How many acts walks can remember at one act. */
    static final int MOST_MEMORY = 12;

    private static final int UNREACHED = 1 << 30;
    private static final int DEAREST = 1 << 28;
    private static final int TRANSITIONS_PER_EFFORT = 1024;

    private final Network net;
    private final Scale scale;
    private final int n;
    private StepWindows steps;
    private int[][] memory;

    /**
     * For the step from i to j, the new memory for each memory at j; -1 when the walk knows better.
     */
    private final short[][] recall;

    private final int[] start;
    private final int[] states = new int[1 << MOST_MEMORY];
    private final int[] values = new int[1 << MOST_MEMORY];
    private int layer;
    private int[] table = new int[0];
    private int[] prices;
    private long work;

    PathRelaxation(Network net, Scale scale, StepWindows steps) {
        this.net = net;
        this.scale = scale;
        this.n = net.n;
        this.steps = steps;
        this.memory = new int[n][0];
        this.recall = new short[n * n][];
        this.start = new int[n + 1];
        this.prices = new int[n];
        remember(memory);
    }

    /** Sets what walks remember at each act. */
    void remember(int[][] acts) {
        memory = acts;
        for (int act = 0; act < n; act++) {
            start[act + 1] = start[act] + (1 << memory[act].length);
        }
        layer = start[n];
        if (table.length < n * layer) {
            table = new int[n * layer];
        }
        for (int tail = 0; tail < n; tail++) {
            for (int head : net.heads[tail]) {
                recall[tail * n + head] = recallOf(tail, head);
            }
        }
        measure();
    }

    private short[] recallOf(int tail, int head) {
        int[] ahead = memory[head];
        int[] bit = new int[ahead.length];
        int bad = 0;
        for (int t = 0; t < ahead.length; t++) {
            bit[t] = bitOf(tail, ahead[t]);
            if (ahead[t] == tail || net.before.has(tail, ahead[t])) {
                bad |= 1 << t;
            }
        }
        short[] result = new short[1 << ahead.length];
        int own = bitOf(tail, head);
        result[0] = (short) own;
        for (int m = 1; m < result.length; m++) {
            int low = Integer.numberOfTrailingZeros(m);
            int rest = result[m & (m - 1)];
            result[m] = (short) ((m & bad) != 0 ? -1 : rest | bit[low]);
        }
        return result;
    }

    private int bitOf(int act, int remembered) {
        for (int t = 0; t < memory[act].length; t++) {
            if (memory[act][t] == remembered) {
                return 1 << t;
            }
        }
        return 0;
    }

    /** Adopts fewer steps. */
    void narrow(StepWindows fewer) {
        steps = fewer;
        measure();
    }

    private void measure() {
        work = 0;
        for (int k = 0; k < n - 1; k++) {
            for (int step : steps.at(k)) {
                work += 1L << memory[step >>> 16].length;
            }
        }
    }

    /** The effort of one evaluation. */
    long effort() {
        return 1 + work / TRANSITIONS_PER_EFFORT;
    }

    /**
     * Finds the cheapest walk for the given prices; its priced cost plus the sum of prices bounds
     * every order.
     */
    int evaluate(int[] newPrices) {
        prices = newPrices;
        Arrays.fill(table, 0, n * layer, UNREACHED);
        table[(n - 1) * layer + start[n - 1]] = 0;
        for (int k = n - 2; k >= 0; k--) {
            int here = k * layer;
            int ahead = (k + 1) * layer;
            int head = -1;
            int count = 0;
            for (int step : steps.at(k)) {
                if (step >>> 16 != head) {
                    head = step >>> 16;
                    count = 0;
                    int begin = ahead + start[head];
                    for (int m = 0, size = start[head + 1] - start[head]; m < size; m++) {
                        if (table[begin + m] < NONE) {
                            states[count] = m;
                            values[count++] = table[begin + m];
                        }
                    }
                }
                int tail = step & 0xffff;
                int priced = priced(tail, head);
                short[] to = recall[tail * n + head];
                int base = here + start[tail];
                for (int s = 0; s < count; s++) {
                    int m = to[states[s]];
                    if (m >= 0) {
                        int value = values[s] + priced;
                        if (value < table[base + m]) {
                            table[base + m] = value;
                        }
                    }
                }
            }
        }
        return table[0];
    }

    /**
     * The scaled cost of a step; steps more expensive than any order of interest may count as less.
     */
    int stepCost(int tail, int head) {
        return (int) Math.min(DEAREST, scale.up(net.cost[tail * n + head]));
    }

    private int priced(int tail, int head) {
        return stepCost(tail, head) - prices[head];
    }

    /** The acts of a cheapest walk, after {@link #evaluate} and before {@link #spread}. */
    int[] walk() {
        int[] walk = new int[n];
        int m = 0;
        for (int k = 0; k < n - 1; k++) {
            int tail = walk[k];
            int value = table[k * layer + start[tail] + m];
            m = follow(k, tail, m, value, walk);
        }
        return walk;
    }

    private int follow(int k, int tail, int m, int value, int[] walk) {
        for (int head : net.heads[tail]) {
            if (!steps.isOpen(k, tail, head)) {
                continue;
            }
            int rest = value - priced(tail, head);
            short[] to = recall[tail * n + head];
            int begin = (k + 1) * layer + start[head];
            for (int s = 0; s < to.length; s++) {
                if (to[s] == m && table[begin + s] == rest) {
                    walk[k + 1] = head;
                    return s;
                }
            }
        }
        throw new IllegalStateException("no walk at place " + k);
    }

    /** The least value at each place and act, at {@code place * n + act}. */
    int[] least() {
        int[] least = new int[n * n];
        Arrays.fill(least, UNREACHED);
        for (int k = 0; k < n; k++) {
            for (int act = 0; act < n; act++) {
                for (int m = start[act]; m < start[act + 1]; m++) {
                    least[k * n + act] = Math.min(least[k * n + act], table[k * layer + m]);
                }
            }
        }
        return least;
    }

    /** Lets every entry of the table stand for all memories within its own. */
    void spread() {
        for (int k = 0; k < n; k++) {
            for (int act = 0; act < n; act++) {
                int begin = k * layer + start[act];
                int size = start[act + 1] - start[act];
                for (int bit = 1; bit < size; bit <<= 1) {
                    for (int m = 0; m < size; m++) {
                        if ((m & bit) != 0) {
                            table[begin + m] = Math.min(table[begin + m], table[begin + m - bit]);
                        }
                    }
                }
            }
        }
    }

    @Override
    public long price(int act) {
        return prices[act];
    }

    @Override
    public long after(int position, int act, long[] sets, int offset) {
        int[] remembered = memory[act];
        int m = 0;
        for (int t = 0; t < remembered.length; t++) {
            int other = remembered[t];
            m |= (int) ((~sets[offset + (other >>> 6)] >>> other) & 1) << t;
        }
        return table[position * layer + start[act] + m];
    }
}
