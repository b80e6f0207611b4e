package reseat.order;

import java.util.Arrays;

/**
 * Improves an order by chains of exchanged steps until none helps, then kicks it and tries again.
 *
 * <p>A chain takes out a step, brings in a likelier one from the same act, takes out the one that
 * this displaces, and so on, as long as the sum is a gain (Lin and Kernighan 1973); after three or
 * five steps it may be closed. No stretch is ever turned round, so an odd number of steps is needed
 * (Kanellakis and Papadimitriou 1980). Steps are weighed above the prices of an assignment: what an
 * exchange gains is the same, but the likely steps come first and hopeless chains end early. Only
 * acts that a change has touched are looked at again. A kick puts three short neighbouring
 * stretches in the opposite order, which no chain of three can undo; whether the outcome stays is
 * decided as in annealing (Martin, Otto and Felten 1992). Deterministic.
 */
final class ChainSearch {

    /** How many likely followers are tried for each step of a chain. */
    private static final int[] NARROW = {5, 5, 3, 2};

    private static final int[] BROAD = {8, 6, 4, 3};

    /**
     * How hot to begin, in steps of middle cost, how long kicked stretches are at most, and whether
     * chains are broad.
     */
    private record Manner(double heat, int kick, boolean broad) {}

    private static final Manner[] MANNERS = {
        new Manner(2, 10, false),
        new Manner(0.1, 30, true),
        new Manner(1, 30, false),
        new Manner(0.3, 10, true)
    };

    private static final int LONGEST = 5;
    private static final int KICK_TRIES = 50;
    private static final int LOOKS_PER_EFFORT = 512;

    private final Network net;
    private final int n;
    private final Incumbent best;
    private final int[][] followers;
    private final int[] weight;
    private final int[] order;
    private final int[] place;
    private final int[] kept;
    private final long[] marked;
    private final Dice dice = new Dice(0x6A09E667F3BCC909L);

    /** Acts whose steps are to be looked at. */
    private final int[] touched;

    private final boolean[] isTouched;
    private int touchedCount;

    /** The places of a chain after which the order is cut, as the chain runs. */
    private final int[] cuts = new int[LONGEST];

    /** The same sorted, and the number of each in the chain. */
    private final int[] sorted = new int[LONGEST];

    private final int[] rank = new int[LONGEST];
    private final int[] position = new int[LONGEST];

    /** The stretches between the cuts, the first being 1, in their new sequence. */
    private final int[] sequence = new int[LONGEST];

    /** What has changed since the order was kept. */
    private int changedFrom;

    private int changedTo;
    private long looks;
    private int turn;
    private Manner manner = MANNERS[0];
    private int[] breadth = NARROW;

    ChainSearch(
            Network net, Incumbent best, Neighbours likely, Assignment assignment, Scale scale) {
        this.net = net;
        this.n = net.n;
        this.best = best;
        this.followers = likely.followers;
        this.weight = weights(net, assignment, scale);
        this.order = new int[n];
        this.place = new int[n];
        this.kept = new int[n];
        this.marked = new long[net.words];
        this.touched = new int[n];
        this.isTouched = new boolean[n];
    }

    /** Costs less whole prices; the bare costs where these would be too large. */
    private static int[] weights(Network net, Assignment assignment, Scale scale) {
        int n = net.n;
        int[] weights = new int[n * n];
        for (int k = 0; k < weights.length; k++) {
            long weight = net.cost[k];
            if (weight != Network.NEVER) {
                weight -= scale.down(assignment.leaving[k / n]);
                weight -= scale.down(assignment.entering[k % n]);
                if (Math.abs(weight) >= Network.NEVER) {
                    return net.cost;
                }
            }
            weights[k] = (int) weight;
        }
        return weights;
    }

    /** Searches from the best order so far, for about the given effort. */
    void run(long effort, Budget budget) {
        if (n < 5) {
            return;
        }
        manner = MANNERS[turn++ % MANNERS.length];
        breadth = manner.broad ? BROAD : NARROW;
        System.arraycopy(best.order(), 0, order, 0, n);
        System.arraycopy(order, 0, kept, 0, n);
        changedFrom = n;
        changedTo = 0;
        for (int k = n - 2; k >= 0; k--) {
            touch(order[k]);
        }
        number(0, n);
        long cost = best.cost();
        long until = budget.spent() + effort;
        long now = cost - improve();
        do {
            long spent = effort - (until - budget.spent());
            double temperature = manner.heat * cost / n * (effort - spent) / effort;
            if (now - cost <= dice.patience(temperature)) {
                cost = now;
                best.offer(order, cost);
                System.arraycopy(order, changedFrom, kept, changedFrom, changed());
            } else {
                System.arraycopy(kept, changedFrom, order, changedFrom, changed());
                number(changedFrom, changedTo);
            }
            changedFrom = n;
            changedTo = 0;
            now = cost + kick();
            now -= improve();
            long done = looks / LOOKS_PER_EFFORT;
            looks -= done * LOOKS_PER_EFFORT;
            if (!budget.spend(done)) {
                return;
            }
        } while (budget.spent() < until);
    }

    private int changed() {
        return Math.max(0, changedTo - changedFrom);
    }

    private void number(int from, int to) {
        for (int k = from; k < to; k++) {
            place[order[k]] = k;
        }
    }

    private void touch(int act) {
        if (!isTouched[act]) {
            isTouched[act] = true;
            touched[touchedCount++] = act;
        }
    }

    /** Exchanges steps until no chain from a touched act helps; returns the gain. */
    private long improve() {
        long total = 0;
        while (touchedCount > 0) {
            int act = touched[--touchedCount];
            isTouched[act] = false;
            long gain = act == n - 1 ? 0 : improve(act);
            while (gain > 0) {
                total += gain;
                gain = improve(act);
            }
        }
        return total;
    }

    private long improve(int act) {
        cuts[0] = place[act];
        return extend(1, act, step(place[act]));
    }

    private int step(int at) {
        return weight[order[at] * n + order[at + 1]];
    }

    /**
     * Tries to go on with a chain that has taken out some steps and left an act without a follower.
     *
     * @param length how many steps are taken out
     * @param tail the act that wants a follower
     * @param gain what the steps taken out cost above those brought in
     * @return the gain of the exchange made, 0 when none was made
     */
    private long extend(int length, int tail, long gain) {
        int row = tail * n;
        int most = Math.min(followers[tail].length, breadth[length - 1]);
        for (int k = 0; k < most; k++) {
            looks++;
            int head = followers[tail][k];
            long sum = gain - weight[row + head];
            int at = place[head] - 1;
            if (sum <= 0 || at < 0 || isCut(at, length)) {
                continue;
            }
            int next = order[at];
            sum += weight[next * n + head];
            cuts[length] = at;
            if (length % 2 == 0) {
                long closed = sum - weight[next * n + order[cuts[0] + 1]];
                if (closed > 0 && exchange(length + 1)) {
                    return closed;
                }
            }
            if (length + 1 < LONGEST) {
                long gained = extend(length + 1, next, sum);
                if (gained > 0) {
                    return gained;
                }
            }
        }
        return 0;
    }

    private boolean isCut(int at, int length) {
        for (int c = 0; c < length; c++) {
            if (cuts[c] == at) {
                return true;
            }
        }
        return false;
    }

    /** Makes the exchange of a chain of cuts, if it leaves one valid order and no circles. */
    private boolean exchange(int count) {
        for (int c = 0; c < count; c++) {
            int at = cuts[c];
            int k = c;
            for (; k > 0 && sorted[k - 1] > at; k--) {
                sorted[k] = sorted[k - 1];
                rank[k] = rank[k - 1];
            }
            sorted[k] = at;
            rank[k] = c;
        }
        for (int k = 0; k < count; k++) {
            position[rank[k]] = k;
        }
        int length = 0;
        for (int stretch = 0; length < count; length++) {
            // what ends at a cut is followed by what begins at the next cut of the chain
            stretch = position[(rank[stretch] + 1) % count] + 1;
            if (stretch == count) {
                break;
            }
            sequence[length] = stretch;
        }
        return length == count - 1 && rearrange(length);
    }

    /** Puts the stretches in their new sequence, if the precedence allows. */
    private boolean rearrange(int stretches) {
        if (!valid(stretches)) {
            return false;
        }
        int begin = sorted[0] + 1;
        int to = begin;
        int[] source = Arrays.copyOfRange(order, begin, sorted[stretches] + 1);
        touch(order[begin - 1]);
        for (int s = 0; s < stretches; s++) {
            int from = sorted[sequence[s] - 1] + 1;
            int length = sorted[sequence[s]] + 1 - from;
            System.arraycopy(source, from - begin, order, to, length);
            touch(order[to]);
            to += length;
            touch(order[to - 1]);
        }
        touch(order[to]);
        number(begin, to);
        changedFrom = Math.min(changedFrom, begin);
        changedTo = Math.max(changedTo, to);
        looks += to - begin;
        return true;
    }

    private boolean valid(int stretches) {
        int words = net.words;
        long[] before = net.before.bits;
        looks += (sorted[stretches] - sorted[0]) / 2;
        Arrays.fill(marked, 0);
        for (int s = 0; s < stretches; s++) {
            int from = sorted[sequence[s] - 1] + 1;
            int to = sorted[sequence[s]];
            for (int k = from; s > 0 && k <= to; k++) {
                if (((marked[order[k] >>> 6] >>> order[k]) & 1) != 0) {
                    return false;
                }
            }
            for (int k = from; s < stretches - 1 && k <= to; k++) {
                int row = order[k] * words;
                for (int w = 0; w < words; w++) {
                    marked[w] |= before[row + w];
                }
            }
        }
        return true;
    }

    /** Exchanges four steps without regard to the cost; returns the loss. */
    private long kick() {
        int most = Math.min(manner.kick, (n - 2) / 3);
        for (int tries = 0; tries < KICK_TRIES; tries++) {
            looks += 8;
            sorted[0] = dice.below(n - 1);
            for (int k = 0; k < 3; k++) {
                sorted[k + 1] = sorted[k] + 1 + dice.below(most);
                sequence[k] = 3 - k;
            }
            if (sorted[3] >= n - 1) {
                continue;
            }
            long before = stepsAtCuts();
            int first = sorted[2] - sorted[3];
            int second = sorted[1] - sorted[2];
            if (rearrange(3)) {
                sorted[1] = sorted[0] - first;
                sorted[2] = sorted[1] - second;
                return stepsAtCuts() - before;
            }
        }
        return 0;
    }

    private long stepsAtCuts() {
        return (long) step(sorted[0]) + step(sorted[1]) + step(sorted[2]) + step(sorted[3]);
    }
}
