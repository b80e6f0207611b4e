package reseat.internal.planner;

import java.util.Arrays;
import reseat.internal.graph.Bits;

/**
 * What must at least be paid to finish work in order. Set-ups are a change of tool plus a change of
 * posture, so it is bounded for each of the two separately: by the most expensive chain of items
 * that follow each other, by the cheapest walk over what must be visited, and by how often sets of
 * them must be taken up.
 */
final class OrderRest {

    private final OrderWork work;
    private final Visits visits;
    private final Chains toolChains;
    private final Chains postureChains;
    private final Entries tools;
    private final Entries postures;

    /**
     * Prepares.
     *
     * @param start class in hand at the start
     * @param packs whether to count how often sets must be taken up
     */
    OrderRest(OrderWork work, int start, boolean packs) {
        this.work = work;
        visits = work.visits;
        toolChains = new Chains(visits.toolOf, visits.toolChanges(), true);
        postureChains = new Chains(visits.postureOf, visits.postureChanges(), false);
        tools = entries(visits.toolOf, visits.toolChanges(), start, packs);
        postures = entries(visits.postureOf, visits.postureChanges(), start, packs);
    }

    private Entries entries(int[] of, long[][] change, int start, boolean packs) {
        return packs ? new Entries(work, of, change, of[start]) : Entries.NONE;
    }

    /** Returns how often sets of tools must be taken up from the start on. */
    short[] tools(int clazz) {
        return tools.entries(visits.toolOf[clazz]);
    }

    /** Returns how often sets of tools must be taken up after a change of class. */
    short[] tools(short[] before, int from, int clazz, long[] done) {
        return tools.after(before, visits.toolOf[from], visits.toolOf[clazz], done);
    }

    /** Returns how often sets of postures must be taken up from the start on. */
    short[] postures(int clazz) {
        return postures.entries(visits.postureOf[clazz]);
    }

    /** Returns how often sets of postures must be taken up after a change of class. */
    short[] postures(short[] before, int from, int clazz, long[] done) {
        return postures.after(before, visits.postureOf[from], visits.postureOf[clazz], done);
    }

    /**
     * Returns what must still be paid at least, for set-ups and extra costs, in milliseconds.
     *
     * @param done what is done
     * @param clazz class in hand
     * @param ofTools how often sets of tools must still be taken up
     * @param ofPostures the same for postures
     */
    long of(long[] done, int clazz, short[] ofTools, short[] ofPostures) {
        int tool = visits.toolOf[clazz];
        int posture = visits.postureOf[clazz];
        long byTool =
                Math.max(
                        toolChains.dearest(tool, done), visits.tools(tool, toolChains.still(done)));
        long byPosture =
                Math.max(
                        postureChains.dearest(posture, done),
                        visits.postures(posture, postureChains.still(done)));
        return Math.max(byTool, tools.ms(ofTools)) + Math.max(byPosture, postures.ms(ofPostures));
    }

    /** Chains of items in one of the two tables of changes. */
    private final class Chains {
        private final long[][] dearest;
        private final int[][] dearestFirst;
        private final long[][] must;

        Chains(int[] of, long[][] change, boolean withExtra) {
            int n = work.n;
            int[][] classes = work.classes;
            long[][] extra = work.extra;
            int m = change.length;
            dearest = new long[m][n];
            must = new long[Math.min(64, m)][work.words];
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
                for (int k : work.justBefore[i]) {
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
            int n = value.length;
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

        /** Returns which tools or postures every way to do what is left visits. */
        long still(long[] done) {
            long mask = 0;
            for (int k = 0; k < must.length; k++) {
                for (int w = 0; w < work.words; w++) {
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
