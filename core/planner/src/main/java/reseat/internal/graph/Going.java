package reseat.internal.graph;

import java.util.Arrays;

/**
 * What parts need before they can go, as the least solution for given needs of releases, cuts and
 * separations: parts that go along support each other. When a given set shrinks, whatever may have
 * depended on it is removed from the parts that it reaches and derived again (delete and rederive,
 * Gupta, Mumick, Subrahmanian, SIGMOD 1993), so that the rest stays untouched.
 */
final class Going {

    private final Compiled c;
    private final Links links;
    private final Footing at;
    private final int words;
    private final int impossible;
    private final long[] all;

    /** For each node that is not slack, what must be done before it lets go. */
    private final long[][] loose;

    private final long[][] sep;

    /** For each supply, what must be done for it to be cut. */
    private final long[][] cut;

    /** The solution. */
    final long[][] go;

    /** For each part, what the given needs lost since it was last visited. */
    private final long[][] lost;

    private final long[][] doubtful;
    private final long[] own;
    private final long[] scratch;
    private final int[] queue;
    private final boolean[] queued;
    private int head;
    private int waiting;

    /** The parts that the last call of {@link #settle} visited. */
    final int[] touched;

    int touchedCount;
    private final boolean[] isTouched;

    Going(
            Compiled c,
            Links links,
            Footing at,
            long[] all,
            long[][] loose,
            long[][] sep,
            long[][] cut) {
        this.c = c;
        this.links = links;
        this.at = at;
        this.all = all;
        this.loose = loose;
        this.sep = sep;
        this.cut = cut;
        words = all.length;
        impossible = c.nodes + c.parts;
        go = new long[c.parts][words];
        lost = new long[c.parts][words];
        doubtful = new long[c.parts][words];
        own = new long[words];
        scratch = new long[words];
        queue = new int[c.parts];
        queued = new boolean[c.parts];
        touched = new int[c.parts];
        isTouched = new boolean[c.parts];
    }

    /** Solves from scratch. */
    void begin() {
        for (int p = 0; p < c.parts; p++) {
            Footing.fill(go[p], all, at.pinned[p]);
            Arrays.fill(lost[p], 0);
        }
        for (int p = 0; p < c.parts; p++) {
            if (!at.pinned[p]) {
                push(p);
            }
        }
        derive();
    }

    /** Records that something that a part depends on has shrunk. */
    void lose(int part, long[] was, long[] is) {
        long[] set = lost[part];
        for (int w = 0; w < words; w++) {
            set[w] |= was[w] & ~is[w];
        }
    }

    /** Solves again where a part lost support; {@link #touched} holds what may have changed. */
    void settle(int part) {
        touchedCount = 0;
        boolean any = false;
        for (int w = 0; w < words; w++) {
            doubtful[part][w] = lost[part][w] & go[part][w];
            any |= doubtful[part][w] != 0;
        }
        Arrays.fill(lost[part], 0);
        if (!any || at.pinned[part]) {
            return;
        }
        touch(part);
        push(part);
        while (waiting > 0) {
            spread(pop());
        }
        for (int k = 0; k < touchedCount; k++) {
            int p = touched[k];
            for (int w = 0; w < words; w++) {
                go[p][w] &= ~doubtful[p][w];
            }
            Arrays.fill(doubtful[p], 0);
            isTouched[p] = false;
            push(p);
        }
        derive();
    }

    private void touch(int p) {
        if (!isTouched[p]) {
            isTouched[p] = true;
            touched[touchedCount++] = p;
        }
    }

    /** Marks in other parts what they may have derived from a part. */
    private void spread(int p) {
        for (int j : links.holding[p]) {
            if (at.together[j]) {
                for (int x : c.holds[j]) {
                    if (x != p) {
                        doubt(x, doubtful[p], loose[j]);
                    }
                }
            }
        }
        for (int i : links.pairsOf[p]) {
            for (int x : links.partsOfPair[i]) {
                if (x != p && at.samePlace(x, p) && at.mayGoTogether(x, p) && !at.pinned[x]) {
                    doubt(x, doubtful[p], sep[i]);
                }
            }
        }
    }

    private void doubt(int x, long[] from, long[] with) {
        boolean more = false;
        for (int w = 0; w < words; w++) {
            more |= (from[w] & with[w] & go[x][w] & ~doubtful[x][w]) != 0;
        }
        if (!more) {
            return;
        }
        surely(x);
        more = false;
        for (int w = 0; w < words; w++) {
            long add = from[w] & with[w] & go[x][w] & ~doubtful[x][w] & ~own[w];
            doubtful[x][w] |= add;
            more |= add != 0;
        }
        if (more) {
            touch(x);
            push(x);
        }
    }

    /** What a part needs whatever goes along. */
    private void surely(int p) {
        Arrays.fill(own, 0);
        for (int j : links.holding[p]) {
            if (!at.together[j] && !at.isReleased(j)) {
                Bits.addAll(own, loose[j]);
            }
        }
        for (long open = at.moveNeeds[p] & ~at.cut; open != 0; open &= open - 1) {
            Bits.addAll(own, cut[Long.numberOfTrailingZeros(open)]);
        }
        for (int i : links.partPairs[p]) {
            int cover = cover(i, p);
            if (cover != p && at.samePlace(cover, p) && !at.mayGoTogether(p, cover)) {
                Bits.addAll(own, sep[i]);
            }
        }
    }

    private int cover(int pair, int p) {
        return links.pairA[pair] == p ? links.pairB[pair] : links.pairA[pair];
    }

    private void derive() {
        while (waiting > 0) {
            int p = pop();
            if (!at.pinned[p] && grow(p)) {
                wake(p);
            }
        }
    }

    private void wake(int p) {
        for (int j : links.holding[p]) {
            if (at.together[j]) {
                for (int x : c.holds[j]) {
                    if (x != p) {
                        push(x);
                    }
                }
            }
        }
        for (int i : links.pairsOf[p]) {
            for (int x : links.partsOfPair[i]) {
                if (x != p && at.samePlace(x, p) && at.mayGoTogether(x, p)) {
                    push(x);
                }
            }
        }
    }

    private boolean grow(int p) {
        long[] needs = own;
        surely(p);
        if (!Bits.get(needs, impossible)) {
            for (int j : links.holding[p]) {
                if (at.together[j]) {
                    Arrays.fill(scratch, 0);
                    for (int x : c.holds[j]) {
                        if (x != p) {
                            Bits.addAll(scratch, go[x]);
                        }
                    }
                    addEither(needs, loose[j], scratch);
                }
            }
            for (int i : links.partPairs[p]) {
                int cover = cover(i, p);
                if (cover != p && at.samePlace(cover, p) && at.mayGoTogether(p, cover)) {
                    addEither(needs, sep[i], go[cover]);
                }
            }
        }
        // each work separately: what cannot be reached needs all of them, but only while it depends
        // on that
        Bits.addAll(needs, go[p]);
        if (Arrays.equals(needs, go[p])) {
            return false;
        }
        System.arraycopy(needs, 0, go[p], 0, words);
        return true;
    }

    static void addEither(long[] needs, long[] one, long[] other) {
        for (int i = 0; i < needs.length; i++) {
            needs[i] |= one[i] & other[i];
        }
    }

    private void push(int p) {
        if (!queued[p]) {
            queued[p] = true;
            queue[(head + waiting++) % queue.length] = p;
        }
    }

    private int pop() {
        int p = queue[head];
        head = (head + 1) % queue.length;
        waiting--;
        queued[p] = false;
        return p;
    }
}
