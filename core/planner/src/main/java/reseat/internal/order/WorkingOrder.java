package reseat.internal.order;

import java.util.Arrays;

/**
 * A valid order whose stretches can be rearranged, and restored.
 *
 * <p>It tracks which acts got another neighbour since the last query.
 */
final class WorkingOrder {

    /** How many places an order can be cut at. */
    static final int MOST_CUTS = 5;

    final int[] order;

    /** The place of each act. */
    final int[] place;

    /** The places after which the order was cut last, sorted. */
    final int[] cuts = new int[MOST_CUTS];

    /** How many acts were examined or moved so far, as a measure of time. */
    long looks;

    private final Network net;
    private final int[] kept;
    private final long[] marked;
    private final int[] touched;
    private final boolean[] isTouched;
    private int touchedCount;

    /**
     * The number of each sorted cut in its chain, and the place of each of the chain among them.
     */
    private final int[] rank = new int[MOST_CUTS];

    private final int[] position = new int[MOST_CUTS];

    /** The stretches between the cuts, the first being 1, in their new sequence. */
    private final int[] sequence = new int[MOST_CUTS];

    /** What has changed since the order was kept. */
    private int changedFrom;

    private int changedTo;

    WorkingOrder(Network net) {
        this.net = net;
        this.order = new int[net.n];
        this.place = new int[net.n];
        this.kept = new int[net.n];
        this.marked = new long[net.words];
        this.touched = new int[net.n];
        this.isTouched = new boolean[net.n];
    }

    /** Sets the order; all its acts count as touched. */
    void load(int[] acts) {
        System.arraycopy(acts, 0, order, 0, order.length);
        changedFrom = 0;
        changedTo = order.length;
        number();
        keep();
        for (int k = order.length - 1; k >= 0; k--) {
            touch(order[k]);
        }
    }

    /** Saves this order for {@link #undo}. */
    void keep() {
        System.arraycopy(order, changedFrom, kept, changedFrom, changedTo - changedFrom);
        changedFrom = 0;
        changedTo = 0;
    }

    /** Restores the saved order. */
    void undo() {
        System.arraycopy(kept, changedFrom, order, changedFrom, changedTo - changedFrom);
        number();
        changedFrom = 0;
        changedTo = 0;
    }

    private void number() {
        for (int k = changedFrom; k < changedTo; k++) {
            place[order[k]] = k;
        }
    }

    private void touch(int act) {
        if (!isTouched[act]) {
            isTouched[act] = true;
            touched[touchedCount++] = act;
        }
    }

    /** Returns an act that was touched, which no longer counts as such; -1 when there is none. */
    int nextTouched() {
        if (touchedCount == 0) {
            return -1;
        }
        int act = touched[--touchedCount];
        isTouched[act] = false;
        return act;
    }

    /**
     * Joins what ends at each cut to what begins at the next, and what ends at the last to what
     * begins at the first.
     *
     * @return false, and nothing is changed, if that creates cycles or breaks the precedence
     */
    boolean join(int[] chain, int count) {
        for (int c = 0; c < count; c++) {
            int at = chain[c];
            int k = c;
            for (; k > 0 && cuts[k - 1] > at; k--) {
                cuts[k] = cuts[k - 1];
                rank[k] = rank[k - 1];
            }
            cuts[k] = at;
            rank[k] = c;
        }
        for (int k = 0; k < count; k++) {
            position[rank[k]] = k;
        }
        int length = 0;
        for (int stretch = 0; length < count; length++) {
            stretch = position[(rank[stretch] + 1) % count] + 1;
            if (stretch == count) {
                break;
            }
            sequence[length] = stretch;
        }
        return length == count - 1 && rearrange(length);
    }

    /** Puts the three stretches between the first four cuts in the opposite sequence, if valid. */
    boolean oppose() {
        for (int k = 0; k < 3; k++) {
            sequence[k] = 3 - k;
        }
        int first = cuts[1] - cuts[0];
        int last = cuts[3] - cuts[2];
        if (!rearrange(3)) {
            return false;
        }
        cuts[1] = cuts[0] + last;
        cuts[2] = cuts[3] - first;
        return true;
    }

    private boolean rearrange(int stretches) {
        if (!valid(stretches)) {
            return false;
        }
        int begin = cuts[0] + 1;
        int to = begin;
        int[] source = Arrays.copyOfRange(order, begin, cuts[stretches] + 1);
        touch(order[begin - 1]);
        for (int s = 0; s < stretches; s++) {
            int from = cuts[sequence[s] - 1] + 1;
            int length = cuts[sequence[s]] + 1 - from;
            System.arraycopy(source, from - begin, order, to, length);
            touch(order[to]);
            to += length;
            touch(order[to - 1]);
        }
        touch(order[to]);
        for (int k = begin; k < to; k++) {
            place[order[k]] = k;
        }
        changedFrom = changedTo == 0 ? begin : Math.min(changedFrom, begin);
        changedTo = Math.max(changedTo, to);
        looks += to - begin;
        return true;
    }

    /**
     * Returns whether nothing comes before what it must follow, when the stretches are rearranged.
     */
    private boolean valid(int stretches) {
        int words = net.words;
        long[] before = net.before.bits;
        looks += (cuts[stretches] - cuts[0]) / 2;
        Arrays.fill(marked, 0);
        for (int s = 0; s < stretches; s++) {
            int from = cuts[sequence[s] - 1] + 1;
            int to = cuts[sequence[s]];
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
}
