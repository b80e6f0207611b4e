package reseat.internal.planner;

import java.util.Arrays;
import java.util.stream.IntStream;
import reseat.internal.graph.Bits;

/**
 * Work to be ordered: each item is done once, after the items it needs, in one of its classes.
 * Items are numbered so that each comes after those it needs.
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

    final Visits visits;

    /** For each item, the items that come right before it. */
    final int[][] justBefore;

    /** For each item, the items that come right after it. */
    private final int[][] justAfter;

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
     */
    OrderWork(
            int[] names,
            int[][] classes,
            long[][] extra,
            long[][] needs,
            long[] among,
            Visits visits) {
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
        freeIn = freeIn();
        justBefore = justBefore();
        justAfter = justAfter();
    }

    private OrderWork(OrderWork of, int[] kept) {
        visits = of.visits;
        n = kept.length;
        words = Math.max(1, Bits.words(n));
        names = new int[n];
        classes = new int[n][];
        extra = new long[n][];
        before = new long[n][words];
        for (int i = 0; i < n; i++) {
            names[i] = of.names[kept[i]];
            classes[i] = of.classes[kept[i]];
            extra[i] = of.extra[kept[i]];
            for (int k = 0; k < i; k++) {
                if (Bits.get(of.before[kept[i]], kept[k])) {
                    Bits.set(before[i], k);
                }
            }
        }
        freeIn = freeIn();
        justBefore = justBefore();
        justAfter = justAfter();
    }

    private long[][] freeIn() {
        long[][] free = new long[visits.toolOf.length][words];
        for (int i = 0; i < n; i++) {
            for (int o = 0; o < classes[i].length; o++) {
                if (extra[i][o] == 0) {
                    Bits.set(free[classes[i][o]], i);
                }
            }
        }
        return free;
    }

    /**
     * Leaves out what can always be done beside another item, at no set-up: that other is done in
     * no class that is not free for it, waits for all that it waits for, and comes before all that
     * it comes before. The least set-ups stay the same.
     */
    OrderWork condensed() {
        long[][] after = new long[n][words];
        long[] kept = new long[words];
        for (int i = 0; i < n; i++) {
            Bits.set(kept, i);
            for (int k = Bits.next(before[i], 0); k >= 0; k = Bits.next(before[i], k + 1)) {
                Bits.set(after[k], i);
            }
        }
        boolean more = true;
        while (more) {
            more = false;
            for (int i = Bits.next(kept, 0); i >= 0; i = Bits.next(kept, i + 1)) {
                if (besideAnother(i, after, kept)) {
                    Bits.clear(kept, i);
                    more = true;
                }
            }
        }
        int[] left = IntStream.range(0, n).filter(i -> Bits.get(kept, i)).toArray();
        return left.length == n ? this : new OrderWork(this, left);
    }

    private boolean besideAnother(int item, long[][] after, long[] kept) {
        for (int w = 0; w < words; w++) {
            for (long bits = kept[w]; bits != 0; bits &= bits - 1) {
                int other = (w << 6) + Long.numberOfTrailingZeros(bits);
                if (other != item
                        && freeWherever(item, other)
                        && within(before[item], before[other], kept, other)
                        && within(after[item], after[other], kept, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean freeWherever(int item, int other) {
        for (int clazz : classes[other]) {
            if (!Bits.get(freeIn[clazz], item)) {
                return false;
            }
        }
        return true;
    }

    private static boolean within(long[] some, long[] all, long[] kept, int besides) {
        for (int w = 0; w < kept.length; w++) {
            long more = some[w] & kept[w] & ~all[w];
            if (w == besides >> 6) {
                more &= ~(1L << besides);
            }
            if (more != 0) {
                return false;
            }
        }
        return true;
    }

    private int[][] justAfter() {
        int[] count = new int[n];
        for (int[] just : justBefore) {
            for (int k : just) {
                count[k]++;
            }
        }
        int[][] after = new int[n][];
        for (int k = 0; k < n; k++) {
            after[k] = new int[count[k]];
        }
        for (int i = 0; i < n; i++) {
            for (int k : justBefore[i]) {
                after[k][--count[k]] = i;
            }
        }
        return after;
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

    /** Returns the items that wait for nothing. */
    long[] ready() {
        long[] ready = new long[words];
        for (int i = 0; i < n; i++) {
            if (justBefore[i].length == 0) {
                Bits.set(ready, i);
            }
        }
        return ready;
    }

    /** Does an item that is ready. */
    void take(long[] done, long[] ready, int item) {
        Bits.set(done, item);
        Bits.clear(ready, item);
        for (int next : justAfter[item]) {
            if (Bits.subset(before[next], done)) {
                Bits.set(ready, next);
            }
        }
    }

    /** Does all that costs no set-up and nothing extra, and what becomes ready by it. */
    void close(long[] done, long[] ready, int clazz) {
        long[] free = freeIn[clazz];
        for (int w = 0; w < words; w++) {
            // what becomes ready has a higher number
            for (long bits = free[w] & ready[w]; bits != 0; bits = free[w] & ready[w]) {
                take(done, ready, (w << 6) + Long.numberOfTrailingZeros(bits));
            }
        }
    }

    boolean all(long[] done) {
        return Bits.count(done) == n;
    }
}
