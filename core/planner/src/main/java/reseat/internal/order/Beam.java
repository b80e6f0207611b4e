package reseat.internal.order;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Searches orders place by place, keeping of all parts with the same acts and the same last act the
 * cheapest one.
 *
 * <p>This is the dynamic program of Held and Karp (1962) over sets closed under the precedence
 * (Lawler 1979), cut where a bound says that no better order can come of a state (Morin and Marsten
 * 1976), and, where a layer would grow above a width, to its best states (Libralesso and others
 * 2020). After an act whose twin is ready, the twin alone is tried. When no layer had to be cut to
 * the width, the result is exact; else the lowest bound among the states thrown away is a lower
 * bound for all orders.
 */
final class Beam {

    private static final int MOST_TRACES = 32_000_000;

    private final Network net;
    private final Limits limits;
    private final Layer[] layers;
    private final long[] actHash;
    private int @Nullable [] order;
    private long lost;
    private Completion ahead;
    private @Nullable StepWindows steps;

    /** The acts that may follow each act at the current place, one act after another. */
    private int[] heads = new int[0];

    private final int[] firstHead;

    Beam(Network net, Limits limits, Completion ahead) {
        this.net = net;
        this.limits = limits;
        this.ahead = ahead;
        this.layers = new Layer[] {new Layer(net.words), new Layer(net.words)};
        this.actHash = new long[net.n];
        this.firstHead = new int[net.n + 1];
        Dice dice = new Dice(0x2545F4914F6CDD1DL);
        Arrays.setAll(actHash, act -> dice.next() * 0x9E3779B97F4A7C15L);
    }

    /**
     * Sets the bounds and windows for the next passes.
     *
     * @param newAhead bounds what is to come
     * @param newSteps where steps may be taken, or null for no restriction
     */
    void use(Completion newAhead, @Nullable StepWindows newSteps) {
        ahead = newAhead;
        steps = newSteps;
    }

    /** The order found by the last pass, or null when there is none below the limit. */
    int @Nullable [] order() {
        return order;
    }

    /**
     * The lowest scaled bound that the last pass threw away for lack of space; {@code MAX_VALUE}
     * for none.
     */
    long lost() {
        return lost;
    }

    /**
     * Makes one pass.
     *
     * @param limit the highest scaled bound that is still of interest
     * @param width how many states a layer keeps
     * @return false when the budget ended before the pass did
     */
    boolean pass(Scale scale, long limit, int width) {
        order = null;
        lost = Long.MAX_VALUE;
        int n = net.n;
        int[][] parents = new int[n][];
        char[][] acts = new char[n][];
        Layer here = layers[0];
        here.clear(width);
        here.addFirst(Completion.total(ahead, n));
        int traces = 0;
        for (int k = 0; k < n - 1; k++) {
            Layer next = layers[(k + 1) & 1];
            next.clear(Math.max(1, Math.min(width, (MOST_TRACES - traces) / 4)));
            listHeads(k);
            for (int s = 0; s < here.count; s++) {
                expand(here, s, k, next, scale, limit);
                if ((s & 255) == 255 && !limits.spend(256)) {
                    return false;
                }
            }
            next.shrink();
            lost = Math.min(lost, next.lost());
            parents[k + 1] = Arrays.copyOf(next.parent, next.count);
            acts[k + 1] = Arrays.copyOf(next.last, next.count);
            traces += next.count;
            here = next;
            if (!limits.spend(1 + (here.count & 255))) {
                return false;
            }
        }
        if (here.count > 0) {
            order = trace(parents, acts);
        }
        return true;
    }

    private void listHeads(int k) {
        int count = 0;
        for (int tail = 0; tail < net.n; tail++) {
            firstHead[tail] = count;
            if (steps == null && k > 0) {
                count += net.heads[tail].length; // the same at every place
                continue;
            }
            int most = count + net.heads[tail].length;
            if (most > heads.length) {
                heads = Arrays.copyOf(heads, Math.max(most, 2 * heads.length));
            }
            for (int head : net.heads[tail]) {
                if (steps == null || steps.isOpen(k, tail, head)) {
                    heads[count++] = head;
                }
            }
        }
        firstHead[net.n] = count;
    }

    private void expand(Layer here, int state, int k, Layer next, Scale scale, long limit) {
        int last = here.last[state];
        for (int twin : net.twins[last]) {
            if (isReady(here, state, twin) && (steps == null || steps.isOpen(k, last, twin))) {
                take(here, state, k, twin, next, scale, limit);
                return;
            }
        }
        for (int h = firstHead[last]; h < firstHead[last + 1]; h++) {
            if (isReady(here, state, heads[h])) {
                take(here, state, k, heads[h], next, scale, limit);
            }
        }
    }

    private boolean isReady(Layer here, int state, int act) {
        int words = net.words;
        int offset = state * words;
        long[] before = net.before.bits;
        long[] sets = here.sets;
        if (((sets[offset + (act >>> 6)] >>> act) & 1) != 0) {
            return false;
        }
        long missing = 0;
        for (int w = 0; w < words; w++) {
            missing |= before[act * words + w] & ~sets[offset + w];
        }
        return missing == 0;
    }

    private void take(Layer here, int state, int k, int act, Layer next, Scale scale, long limit) {
        long cost = here.cost[state] + net.cost[here.last[state] * net.n + act];
        long prices = here.prices[state] - ahead.price(act);
        // acts never remember themselves, so the set without the act serves as well
        long bound =
                scale.up(cost) + prices + ahead.after(k + 1, act, here.sets, state * net.words);
        if (bound <= limit && next.admits(bound)) {
            next.add(here, state, act, actHash[act], cost, prices, bound);
        }
    }

    private static int[] trace(int[][] parents, char[][] acts) {
        int n = parents.length;
        int[] order = new int[n];
        int state = 0;
        for (int k = n - 1; k > 0; k--) {
            order[k] = acts[k][state];
            state = parents[k][state];
        }
        return order;
    }
}
