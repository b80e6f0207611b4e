package reseat.internal.order;

import java.util.Arrays;

/**
 * Improves an order by exchanging adjacent stretches, accepting worse orders less and less often.
 *
 * <p>A proposal swaps two consecutive stretches without turning either, mostly such that acts come
 * together that have a cheap step between them (the path-preserving 3-exchange of Gambardella and
 * Dorigo 2000, with simulated annealing as in Skinderowicz 2017). What three new steps cost is
 * known in constant time, and most proposals end there; only one that would be accepted is checked
 * against the precedence, with one pass over the two stretches. Deterministic: the random numbers
 * are its own and seeded.
 */
final class Annealer {

    private static final int NEAR = 12;

    /**
     * Of ten proposals, how many swap short stretches anywhere; the others bring likely neighbours
     * together.
     */
    private static final int NEARBY_OF_TEN = 3;

    /** Proposals of the kinds below this choose the second new step from likely neighbours too. */
    private static final int GUIDED_BELOW = 7;

    /** The last temperature, as a share of the first, and as a share of the cost of a step. */
    private static final double COLD = 0.06;

    private static final double COLD_STEP = 0.05;
    private static final int SAMPLES = 4000;
    private static final int PROPOSALS_PER_EFFORT = 64;

    private final Network net;
    private final int n;
    private final Incumbent best;
    private Neighbours likely;
    private final int[] order;
    private final int[] place;
    private final int[] scratch;
    private final long[] marked;
    private final Dice dice = new Dice(0x9E3779B97F4A7C15L);

    /** Creates an annealer that improves the current best order. */
    Annealer(Network net, Incumbent best) {
        this.net = net;
        this.n = net.n;
        this.best = best;
        this.likely = Neighbours.of(net);
        this.order = new int[n];
        this.place = new int[n];
        this.scratch = new int[n];
        this.marked = new long[net.words];
    }

    /** Sets which acts proposals bring together. */
    void prefer(Neighbours neighbours) {
        likely = neighbours;
    }

    /** Anneals once, from the best order so far, for about the given effort. */
    void run(long effort, double heat, Limits limits) {
        if (n < 5) {
            return;
        }
        load();
        double usual = usualLoss();
        double hot = heat * usual;
        double cold = Math.max(0.02, Math.min(hot * COLD, COLD_STEP * best.cost() / n));
        long rounds = Math.max(1, effort / 16);
        long cost = best.cost();
        for (long round = 0; round < rounds; round++) {
            double temperature = hot * Math.pow(cold / hot, (double) round / rounds);
            for (int p = 0; p < 16 * PROPOSALS_PER_EFFORT; p++) {
                cost += propose(temperature);
                best.offer(order, cost);
            }
            if (!limits.spend(16)) {
                return;
            }
        }
    }

    private void load() {
        System.arraycopy(best.order(), 0, order, 0, n);
        for (int k = 0; k < n; k++) {
            place[order[k]] = k;
        }
    }

    /** The median loss of a random worsening proposal: the unit of temperatures. */
    private double usualLoss() {
        long[] losses = new long[SAMPLES];
        int count = 0;
        for (int s = 0; s < SAMPLES; s++) {
            if (draw()) {
                long loss = gain();
                if (loss > 0 && loss < Network.NEVER && valid()) {
                    losses[count++] = loss;
                }
            }
        }
        if (count == 0) {
            return 1;
        }
        Arrays.sort(losses, 0, count);
        return losses[count / 2];
    }

    private int left;
    private int middle;
    private int right;

    /**
     * Draws the exchange of order[left..middle-1] and order[middle..right]; false if the draw is
     * not an exchange.
     */
    private boolean draw() {
        int at = dice.below(n - 1);
        int kind = dice.below(10);
        if (kind < NEARBY_OF_TEN) {
            left = at + 1;
            middle = left + 1 + dice.below(1 << dice.below(6));
            right = middle + dice.below(1 << dice.below(6));
            return right < n - 1;
        }
        int q = placeOfOneOf(likely.followers[order[at]]);
        if (q > at + 1 && q < n - 1) {
            left = at + 1;
            middle = q;
            right =
                    kind < GUIDED_BELOW
                            ? placeOfOneOf(likely.leaders[order[left]])
                            : q + dice.below(n - 1 - q);
            return right >= middle && right < n - 1;
        }
        if (q >= at || q == 0) {
            return false;
        }
        left = q;
        right = at;
        if (kind >= GUIDED_BELOW) {
            middle = q + 1 + dice.below(at - q);
        } else if (dice.below(2) == 0) {
            middle = placeOfOneOf(likely.followers[order[left - 1]]);
        } else {
            middle = 1 + placeOfOneOf(likely.leaders[order[right + 1]]);
        }
        return middle > left && middle <= right;
    }

    private int placeOfOneOf(int[] acts) {
        return place[acts[dice.below(Math.min(acts.length, NEAR))]];
    }

    private long gain() {
        int[] c = net.cost;
        int a = order[left - 1];
        int b = order[left];
        int m = order[middle - 1];
        int o = order[middle];
        int y = order[right];
        int z = order[right + 1];
        return (long) c[a * n + o]
                + c[y * n + b]
                + c[m * n + z]
                - c[a * n + b]
                - c[m * n + o]
                - c[y * n + z];
    }

    private long propose(double temperature) {
        if (!draw()) {
            return 0;
        }
        long gain = gain();
        if ((gain > 0 && gain >= dice.patience(temperature)) || !valid()) {
            return 0;
        }
        int leftLength = middle - left;
        int rightLength = right - middle + 1;
        if (leftLength <= rightLength) {
            System.arraycopy(order, left, scratch, 0, leftLength);
            System.arraycopy(order, middle, order, left, rightLength);
            System.arraycopy(scratch, 0, order, left + rightLength, leftLength);
        } else {
            System.arraycopy(order, middle, scratch, 0, rightLength);
            System.arraycopy(order, left, order, left + rightLength, leftLength);
            System.arraycopy(scratch, 0, order, left, rightLength);
        }
        for (int k = left; k <= right; k++) {
            place[order[k]] = k;
        }
        return gain;
    }

    /** Returns whether nothing in the left stretch must come before anything in the right one. */
    private boolean valid() {
        int words = net.words;
        boolean leftShorter = middle - left <= right - middle;
        int begin = leftShorter ? left : middle;
        int end = leftShorter ? middle : right + 1;
        long[] bits = leftShorter ? net.after.bits : net.before.bits;
        if (words == 1) {
            long all = 0;
            for (int k = begin; k < end; k++) {
                all |= bits[order[k]];
            }
            for (int k = leftShorter ? middle : left, stop = leftShorter ? right + 1 : middle;
                    k < stop;
                    k++) {
                if (((all >>> order[k]) & 1) != 0) {
                    return false;
                }
            }
            return true;
        }
        Arrays.fill(marked, 0);
        for (int k = begin; k < end; k++) {
            int row = order[k] * words;
            for (int w = 0; w < words; w++) {
                marked[w] |= bits[row + w];
            }
        }
        for (int k = leftShorter ? middle : left, stop = leftShorter ? right + 1 : middle;
                k < stop;
                k++) {
            if (((marked[order[k] >>> 6] >>> order[k]) & 1) != 0) {
                return false;
            }
        }
        return true;
    }
}
