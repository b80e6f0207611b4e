package reseat.internal.plan;

import java.util.Arrays;
import java.util.stream.IntStream;
import reseat.internal.graph.Bits;

/**
 * Work to be ordered: each item is done once, after the items it needs, in one of its classes.
 * Items are numbered so that each comes after those it needs. Set-ups are a change of tool plus a
 * change of posture, so what must still be paid is bounded for each of the two by itself: the
 * dearest chain of items that follow each other, or the cheapest walk over what must be visited.
 */
final class OrderWork {

    final int n;
    final int words;

    /** For each item, its number with the caller. */
    final int[] names;

    final int[][] classes;
    final long[][] extra;

    /** For each item, the items that come before it. */
    final long[][] before;

    /** For each class, the items that can be done in it at no extra cost. */
    final long[][] freeIn;

    private final Visits visits;
    private final Chains toolChains;
    private final Chains postureChains;
    private final Entries toolEntries;
    private final Entries postureEntries;

    /**
     * Numbers work.
     *
     * @param names for each item, its number with the caller
     * @param classes for each item, the classes it can be done in
     * @param extra for each item and class, what it costs above its cheapest class, in milliseconds
     * @param needs for each item, what comes before it, as a set of names; may contain others and
     *     the item itself
     * @param among the set of all names
     * @param visits the changes
     * @param start class in hand
     */
    OrderWork(
            int[] names,
            int[][] classes,
            long[][] extra,
            long[][] needs,
            long[] among,
            Visits visits,
            int start) {
        this.visits = visits;
        n = names.length;
        words = Math.max(1, Bits.words(n));
        int[] size = new int[n];
        for (int k = 0; k < n; k++) {
            for (int w = 0; w < among.length; w++) {
                size[k] += Long.bitCount(needs[k][w] & among[w]);
            }
            if (Bits.get(needs[k], names[k])) {
                size[k]--;
            }
        }
        // needs are transitive, so an item has fewer of them than what comes after it
        long[] keys = IntStream.range(0, n).mapToLong(k -> ((long) size[k] << 32) | k).toArray();
        Arrays.sort(keys);
        this.names = new int[n];
        this.classes = new int[n][];
        this.extra = new long[n][];
        before = new long[n][words];
        int[] item = new int[among.length << 6];
        for (int i = 0; i < n; i++) {
            int k = (int) keys[i];
            this.names[i] = names[k];
            this.classes[i] = classes[k];
            this.extra[i] = extra[k];
            item[names[k]] = i;
        }
        for (int i = 0; i < n; i++) {
            long[] own = needs[(int) keys[i]];
            for (int w = 0; w < among.length; w++) {
                for (long bits = own[w] & among[w]; bits != 0; bits &= bits - 1) {
                    int other = item[(w << 6) + Long.numberOfTrailingZeros(bits)];
                    if (other < i) {
                        Bits.set(before[i], other);
                    }
                }
            }
        }
        freeIn = new long[visits.toolOf.length][words];
        for (int i = 0; i < n; i++) {
            for (int o = 0; o < this.classes[i].length; o++) {
                if (this.extra[i][o] == 0) {
                    Bits.set(freeIn[this.classes[i][o]], i);
                }
            }
        }
        int[][] justBefore = justBefore();
        toolChains = new Chains(visits.toolOf, visits.toolChanges(), justBefore, true);
        postureChains = new Chains(visits.postureOf, visits.postureChanges(), justBefore, false);
        toolEntries = entries(visits.toolOf, visits.toolChanges(), justBefore, start);
        postureEntries = entries(visits.postureOf, visits.postureChanges(), justBefore, start);
    }

    private Entries entries(int[] of, long[][] change, int[][] justBefore, int start) {
        return new Entries(this, of, change, justBefore, of[start]);
    }

    private int[][] justBefore() {
        int[][] just = new int[n][];
        int[] found = new int[n];
        for (int i = 0; i < n; i++) {
            long[] left = before[i].clone();
            int count = 0;
            for (int k = last(left, words); k >= 0; k = last(left, (k >>> 6) + 1)) {
                found[count++] = k;
                Bits.clear(left, k);
                for (int w = 0; w < words; w++) {
                    left[w] &= ~before[k][w];
                }
            }
            just[i] = Arrays.copyOf(found, count);
        }
        return just;
    }

    private static int last(long[] set, int words) {
        for (int w = words - 1; w >= 0; w--) {
            if (set[w] != 0) {
                return (w << 6) + 63 - Long.numberOfLeadingZeros(set[w]);
            }
        }
        return -1;
    }

    /** Returns what must still be paid at least, for set-ups and extra costs, in milliseconds. */
    long rest(long[] done, int clazz) {
        int tool = visits.toolOf[clazz];
        int posture = visits.postureOf[clazz];
        long tools =
                Math.max(
                        toolChains.dearest(tool, done),
                        visits.tools(tool, toolChains.still(done)));
        long postures =
                Math.max(
                        postureChains.dearest(posture, done),
                        visits.postures(posture, postureChains.still(done)));
        return Math.max(tools, toolEntries.rest(tool, done))
                + Math.max(postures, postureEntries.rest(posture, done));
    }

    /** Does all that costs no set-up and nothing extra, and what becomes ready by it. */
    void close(long[] done, int clazz) {
        long[] free = freeIn[clazz];
        for (int w = 0; w < words; w++) {
            for (long bits = free[w] & ~done[w]; bits != 0; bits &= bits - 1) {
                int i = (w << 6) + Long.numberOfTrailingZeros(bits);
                if (Bits.subset(before[i], done)) {
                    Bits.set(done, i);
                }
            }
        }
    }

    boolean all(long[] done) {
        return Bits.count(done) == n;
    }

    /** Chains of items in one of the two tables of changes. */
    private final class Chains {
        private final long[][] dearest;
        private final int[][] dearestFirst;
        private final long[][] must;

        Chains(int[] of, long[][] change, int[][] justBefore, boolean withExtra) {
            int m = change.length;
            dearest = new long[m][n];
            must = new long[Math.min(64, m)][words];
            long[][] after = new long[n][];
            for (int i = 0; i < n; i++) {
                after[i] = new long[classes[i].length];
            }
            for (int i = n - 1; i >= 0; i--) {
                int only = of[classes[i][0]];
                for (int at = 0; at < m; at++) {
                    long least = Long.MAX_VALUE;
                    for (int o = 0; o < after[i].length; o++) {
                        int next = of[classes[i][o]];
                        only = next == only ? only : -1;
                        long cost = change[at][next] + after[i][o];
                        least = Math.min(least, withExtra ? cost + extra[i][o] : cost);
                    }
                    dearest[at][i] = least;
                }
                if (only >= 0 && only < 64) {
                    Bits.set(must[only], i);
                }
                for (int k : justBefore[i]) {
                    for (int o = 0; o < after[k].length; o++) {
                        after[k][o] = Math.max(after[k][o], dearest[of[classes[k][o]]][i]);
                    }
                }
            }
            dearestFirst = new int[m][];
        }

        long dearest(int at, long[] done) {
            int[] order = dearestFirst[at];
            if (order == null) {
                order = order(dearest[at]);
                dearestFirst[at] = order;
            }
            for (int i : order) {
                if (!Bits.get(done, i)) {
                    return dearest[at][i];
                }
            }
            return 0;
        }

        private int[] order(long[] value) {
            long[] keys = new long[n];
            for (int i = 0; i < n; i++) {
                keys[i] = -(value[i] << 20) + i;
            }
            Arrays.sort(keys);
            int[] order = new int[n];
            for (int k = 0; k < n; k++) {
                order[k] = (int) (keys[k] & 0xFFFFF);
            }
            return order;
        }

        /** Tells which tools or postures every way to do what is left visits. */
        long still(long[] done) {
            long mask = 0;
            for (int k = 0; k < must.length; k++) {
                for (int w = 0; w < words; w++) {
                    if ((must[k][w] & ~done[w]) != 0) {
                        mask |= 1L << k;
                        break;
                    }
                }
            }
            return mask;
        }
    }
}
