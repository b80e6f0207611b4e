package reseat.internal.planner;

import java.util.Arrays;
import reseat.internal.graph.Bits;

/**
 * How often sets of tools, or of postures, must be taken up to do work: as often as the chain of
 * items that goes in and out of the set most often. Exact for each set separately, as with two
 * classes doing all that is ready is best; a {@link CutPacking packing} adds the sets up.
 */
final class Entries {

    private static final int MOST_PLACES = 31;

    /** No sets. */
    static final Entries NONE = new Entries();

    private final int words;

    /** For each tool or posture that the work has its place among these. */
    private final int[] placeOf;

    private int[] chosen = new int[0];
    private long[] weights = new long[0];

    /** For each chosen set, outside or in it, and for each count less one: items that need more. */
    private long[][][][] needing = new long[0][][][];

    private Entries() {
        words = 0;
        placeOf = new int[0];
    }

    /**
     * Prepares a bound for work.
     *
     * @param of for each class its tool or posture
     * @param change the changes
     * @param start the tool or posture in hand
     */
    Entries(OrderWork work, int[] of, long[][] change, int start) {
        words = work.words;
        placeOf = new int[change.length];
        int[] places = places(work, of, start);
        if (places.length < 2 || places.length > MOST_PLACES) {
            return;
        }
        long[][] between = new long[places.length][places.length];
        for (int a = 0; a < places.length; a++) {
            for (int b = 0; b < places.length; b++) {
                between[a][b] = change[places[a]][places[b]];
            }
        }
        int[] may = new int[work.n];
        for (int i = 0; i < work.n; i++) {
            for (int clazz : work.classes[i]) {
                may[i] |= 1 << placeOf[of[clazz]];
            }
        }
        int[] sets = CutPacking.sets(places.length);
        int[] entries = new int[sets.length];
        int[][] count = new int[2][work.n];
        for (int k = 0; k < sets.length; k++) {
            count(sets[k], may, work.justBefore, count);
            entries[k] = most(count[sets[k] >> placeOf[start] & 1]);
        }
        choose(sets, CutPacking.weights(between, sets, entries));
        needing = new long[chosen.length][2][][];
        for (int k = 0; k < chosen.length; k++) {
            count(chosen[k], may, work.justBefore, count);
            needing[k][0] = needing(count[0]);
            needing[k][1] = needing(count[1]);
        }
    }

    private int[] places(OrderWork work, int[] of, int start) {
        boolean[] has = new boolean[placeOf.length];
        has[start] = true;
        for (int[] classes : work.classes) {
            for (int clazz : classes) {
                has[of[clazz]] = true;
            }
        }
        int[] places = new int[has.length];
        int n = 0;
        for (int k = 0; k < has.length; k++) {
            if (has[k]) {
                placeOf[k] = n;
                places[n++] = k;
            }
        }
        return Arrays.copyOf(places, n);
    }

    private void choose(int[] sets, long[] weightOf) {
        chosen = new int[sets.length];
        weights = new long[sets.length];
        int n = 0;
        for (int k = 0; k < sets.length; k++) {
            if (weightOf[k] > 0) {
                chosen[n] = sets[k];
                weights[n++] = weightOf[k];
            }
        }
        chosen = Arrays.copyOf(chosen, n);
        weights = Arrays.copyOf(weights, n);
    }

    /** Counts, from outside and from inside, the entries to do each item and what follows it. */
    private static void count(int set, int[] may, int[][] justBefore, int[][] count) {
        int[] outside = count[0];
        int[] inside = count[1];
        Arrays.fill(outside, 0);
        Arrays.fill(inside, 0);
        for (int i = may.length - 1; i >= 0; i--) {
            if ((may[i] & set) == 0) {
                inside[i] = outside[i];
            } else if ((may[i] & ~set) == 0) {
                outside[i] = inside[i] + 1;
            }
            for (int k : justBefore[i]) {
                outside[k] = Math.max(outside[k], outside[i]);
                inside[k] = Math.max(inside[k], inside[i]);
            }
        }
    }

    private static int most(int[] counts) {
        int most = 0;
        for (int count : counts) {
            most = Math.max(most, count);
        }
        return most;
    }

    private long[][] needing(int[] count) {
        long[][] needing = new long[most(count)][words];
        for (int i = 0; i < count.length; i++) {
            for (int level = 0; level < count[i]; level++) {
                Bits.set(needing[level], i);
            }
        }
        return needing;
    }

    /** Returns for each chosen set how often it must be entered to do all the work. */
    short[] entries(int at) {
        short[] entries = new short[chosen.length];
        for (int k = 0; k < chosen.length; k++) {
            entries[k] = (short) needing[k][inside(k, at)].length;
        }
        return entries;
    }

    /**
     * Returns how often each chosen set must still be entered after a change. Where the change
     * neither enters nor leaves a set, nothing about it changes; else it changes by one at most.
     */
    short[] after(short[] before, int from, int to, long[] done) {
        if (from == to || chosen.length == 0) {
            return before;
        }
        short[] after = before.clone();
        for (int k = 0; k < chosen.length; k++) {
            int was = inside(k, from);
            int is = inside(k, to);
            if (was != is) {
                int least = before[k] - is;
                after[k] = (short) (needMore(needing[k][is], least, done) ? least + 1 : least);
            }
        }
        return after;
    }

    private static boolean needMore(long[][] needing, int count, long[] done) {
        return count < 0 || (count < needing.length && !Bits.subset(needing[count], done));
    }

    private int inside(int chosenSet, int at) {
        return chosen[chosenSet] >> placeOf[at] & 1;
    }

    /** Returns a lower bound on the changes that make some entries, in milliseconds. */
    long ms(short[] entries) {
        long sum = 0;
        for (int k = 0; k < entries.length; k++) {
            sum += weights[k] * entries[k];
        }
        return sum;
    }
}
