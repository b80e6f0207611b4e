package reseat.internal.planner;

import java.util.Arrays;

/**
 * Bounds a walk by how often it must enter sets. Where a change from a to b costs at least the sum
 * of the weights of all sets that have b and not a, a walk costs at least the sum of each set's
 * weight times the entries it needs. The best weights solve a linear program, done here by the
 * simplex method (Dantzig 1951): zero weights are a first solution, and each step only improves it,
 * so that it may end at any time.
 */
final class CutPacking {

    /** Up to this many places all sets are used; beyond, single places and all but one. */
    private static final int ALL_SETS = 6;

    private static final double LEAST_GAIN = 1e-6;
    private static final double LEAST_PIVOT = 1e-9;
    private static final int STEPS_PER_SET = 4;

    private CutPacking() {}

    /**
     * Returns the sets of places to use, as masks; never the empty or the full set.
     *
     * @param places number of places, at most 31
     */
    static int[] sets(int places) {
        int all = (1 << places) - 1;
        if (places <= ALL_SETS) {
            int[] sets = new int[Math.max(0, all - 1)];
            Arrays.setAll(sets, k -> k + 1);
            return sets;
        }
        int[] sets = new int[2 * places];
        for (int k = 0; k < places; k++) {
            sets[k] = 1 << k;
            sets[places + k] = all & ~(1 << k);
        }
        return sets;
    }

    /**
     * Finds good weights.
     *
     * @param change what a change from one place to another costs, in milliseconds
     * @param sets the sets, as masks of places
     * @param entries for each set, how often a walk must enter it
     * @return for each set its weight in whole milliseconds, at least 0
     */
    static long[] weights(long[][] change, int[] sets, int[] entries) {
        int places = change.length;
        int rows = places * (places - 1);
        int n = sets.length;
        double[][] table = new double[rows + 1][n + rows + 1];
        int[] basis = new int[rows];
        int row = 0;
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                if (a != b) {
                    for (int k = 0; k < n; k++) {
                        table[row][k] = enters(sets[k], a, b) ? 1 : 0;
                    }
                    table[row][n + row] = 1;
                    table[row][n + rows] = change[a][b];
                    basis[row] = n + row;
                    row++;
                }
            }
        }
        for (int k = 0; k < n; k++) {
            table[rows][k] = -entries[k];
        }
        for (int left = STEPS_PER_SET * (n + rows); left > 0 && step(table, basis); left--) {
            // each step improves the weights
        }
        long[] weights = new long[n];
        for (int i = 0; i < rows; i++) {
            if (basis[i] < n) {
                weights[basis[i]] = (long) Math.floor(table[i][n + rows] + LEAST_GAIN);
            }
        }
        return fit(change, sets, weights);
    }

    private static boolean enters(int set, int a, int b) {
        return (set >> b & 1) != 0 && (set >> a & 1) == 0;
    }

    /** Makes one change of basis; false if none improves the solution. */
    private static boolean step(double[][] table, int[] basis) {
        int rows = basis.length;
        double[] gains = table[rows];
        int last = gains.length - 1;
        int in = -1;
        double least = -LEAST_GAIN;
        for (int k = 0; k < last; k++) {
            if (gains[k] < least) {
                least = gains[k];
                in = k;
            }
        }
        if (in < 0) {
            return false;
        }
        int out = -1;
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i < rows; i++) {
            if (table[i][in] > LEAST_PIVOT && table[i][last] / table[i][in] < nearest) {
                nearest = table[i][last] / table[i][in];
                out = i;
            }
        }
        if (out < 0) {
            return false;
        }
        double[] pivot = table[out];
        double by = pivot[in];
        for (int k = 0; k <= last; k++) {
            pivot[k] /= by;
        }
        for (int i = 0; i <= rows; i++) {
            double times = table[i][in];
            if (i != out && times != 0) {
                double[] other = table[i];
                for (int k = 0; k <= last; k++) {
                    other[k] -= times * pivot[k];
                }
            }
        }
        basis[out] = in;
        return true;
    }

    /** Subtracts possible rounding errors, so that the weights give a valid bound. */
    static long[] fit(long[][] change, int[] sets, long[] weights) {
        for (int a = 0; a < change.length; a++) {
            for (int b = 0; b < change.length; b++) {
                long over = a == b ? 0 : -change[a][b];
                for (int k = 0; k < sets.length; k++) {
                    over += a != b && enters(sets[k], a, b) ? weights[k] : 0;
                }
                for (int k = 0; k < sets.length && over > 0; k++) {
                    if (enters(sets[k], a, b)) {
                        long off = Math.min(over, weights[k]);
                        weights[k] -= off;
                        over -= off;
                    }
                }
            }
        }
        return weights;
    }
}
