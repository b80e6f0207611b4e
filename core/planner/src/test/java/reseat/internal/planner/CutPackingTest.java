package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Weights of sets of places: the best that a linear program has, found by hand or by its corners.
 */
class CutPackingTest {

    /**
     * A multiple of all determinants of six rows of ones and noughts: corners are whole numbers.
     */
    private static final long WHOLE = 2520;

    @Test
    void looksAtAllSetsOfFewPlacesAndAtOnesAndAllButOnesOfMany() {
        assertArrayEquals(new int[] {}, CutPacking.sets(1));
        assertArrayEquals(new int[] {1, 2}, CutPacking.sets(2));
        assertArrayEquals(new int[] {1, 2, 3, 4, 5, 6}, CutPacking.sets(3));
        assertEquals(62, CutPacking.sets(6).length);
        assertArrayEquals(
                new int[] {1, 2, 4, 8, 16, 32, 64, 126, 125, 123, 119, 111, 95, 63},
                CutPacking.sets(7));
    }

    /** Each set stands alone against one change: 7 into place 0, 5 into place 1. */
    @Test
    void ofTwoPlacesEachWeighsWhatTheChangeIntoItCosts() {
        long[][] change = {{0, 5}, {7, 0}};
        assertArrayEquals(
                new long[] {7, 5}, CutPacking.weights(change, new int[] {1, 2}, new int[] {2, 3}));
    }

    @Test
    void aSetThatNeedNotBeEnteredWeighsNothing() {
        long[][] change = {{0, 5}, {7, 0}};
        assertArrayEquals(
                new long[] {0, 5}, CutPacking.weights(change, new int[] {1, 2}, new int[] {0, 3}));
    }

    /**
     * From 0 to 1 costs 10, from 0 to 2 costs 30, between 1 and 2 20. A walk from 0 over 1 to 2
     * enters {1}, {2} and {1, 2} once each, and costs 30. {1} may weigh 10 at most with {1, 2}, for
     * both are entered from 0 to 1; {2} may weigh 20, entered from 1; together that is 30.
     */
    @Test
    void setsThatOneChangeEntersShareItsCost() {
        long[][] change = {{0, 10, 30}, {50, 0, 20}, {50, 20, 0}};
        int[] sets = {2, 4, 6};
        long[] weights = CutPacking.weights(change, sets, new int[] {1, 1, 1});
        assertEquals(30, weights[0] + weights[1] + weights[2]);
        assertTrue(weights[0] + weights[2] <= 10);
        assertEquals(20, weights[1]);
    }

    /** From seven places on, each alone: seven entries at 1000 each, and none may weigh more. */
    @Test
    void ofManyPlacesEachWeighsItsCheapestChange() {
        long[][] change = new long[7][7];
        for (int a = 0; a < 7; a++) {
            for (int b = 0; b < 7; b++) {
                change[a][b] = a == b ? 0 : 1000 + 10 * b;
            }
        }
        int[] sets = CutPacking.sets(7);
        int[] entries = IntStream.range(0, sets.length).map(k -> k < 7 ? 1 : 0).toArray();
        long[] weights = CutPacking.weights(change, sets, entries);
        assertArrayEquals(
                new long[] {1000, 1010, 1020, 1030, 1040, 1050, 1060, 0, 0, 0, 0, 0, 0, 0},
                weights);
    }

    @Test
    void threePlacesWeighAsMuchAsTheBestCornerOfAll() {
        Random random = new Random(11);
        for (int k = 0; k < 60; k++) {
            long[][] change = new long[3][3];
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    change[a][b] = a == b ? 0 : WHOLE * random.nextInt(20);
                }
            }
            int[] sets = CutPacking.sets(3);
            int[] entries = random.ints(sets.length, 0, 6).toArray();
            long[] weights = CutPacking.weights(change, sets, entries);
            assertTrue(Arrays.stream(weights).allMatch(weight -> weight >= 0));
            assertEquals(bestCorner(change, sets, entries), sum(weights, entries), "problem " + k);
        }
    }

    /**
     * No packing says more than a walk pays that makes just the entries. Measured, not worked out:
     * 1,290,791 of 1,368,597 ms, 94 %.
     */
    @Test
    void upToSixPlacesWeighNearlyWhatAWalkPays() {
        Random random = new Random(5);
        long all = 0;
        long known = 0;
        for (int k = 0; k < 40; k++) {
            int m = 4 + random.nextInt(3);
            long[][] change = new long[m][m];
            for (int a = 0; a < m; a++) {
                for (int b = 0; b < m; b++) {
                    change[a][b] = a == b ? 0 : 1000 + random.nextInt(1000);
                }
            }
            int[] walk = random.ints(30, 0, m).toArray();
            int[] sets = CutPacking.sets(m);
            int[] entries = new int[sets.length];
            for (int s = 1; s < walk.length; s++) {
                all += change[walk[s - 1]][walk[s]];
                for (int i = 0; i < sets.length; i++) {
                    entries[i] += enters(sets[i], walk[s - 1], walk[s]) ? 1 : 0;
                }
            }
            long[] weights = CutPacking.weights(change, sets, entries);
            assertBinds(change, sets, weights);
            known += sum(weights, entries);
        }
        assertTrue(known >= 1_290_791 && known <= all, known + " of " + all);
    }

    /** Rounding errors grow with the numbers, and whole weights must not pass a whole change. */
    @Test
    void hugeChangesBoundForCertainToo() {
        Random random = new Random(9);
        for (int k = 0; k < 40; k++) {
            int m = 4 + random.nextInt(3);
            long[][] change = new long[m][m];
            for (int a = 0; a < m; a++) {
                for (int b = 0; b < m; b++) {
                    change[a][b] = a == b ? 0 : (1L << 52) + (random.nextLong() >>> 13);
                }
            }
            int[] sets = CutPacking.sets(m);
            int[] entries = random.ints(sets.length, 0, 9).toArray();
            assertBinds(change, sets, CutPacking.weights(change, sets, entries));
        }
    }

    /** From 0 to 1 all three sets are entered, 8 too heavy: taken off the first ones first. */
    @Test
    void whatIsTooHeavyIsTakenOffOneSetAfterTheOther() {
        long[][] change = {{0, 10}, {10, 0}};
        long[] weights = CutPacking.fit(change, new int[] {2, 2, 2, 1}, new long[] {5, 6, 7, 10});
        assertArrayEquals(new long[] {0, 3, 7, 10}, weights);
    }

    @Test
    void whatFitsIsLeftAsItIs() {
        long[][] change = {{0, 10}, {10, 0}};
        long[] weights = CutPacking.fit(change, new int[] {2, 2, 1}, new long[] {4, 6, 10});
        assertArrayEquals(new long[] {4, 6, 10}, weights);
    }

    private static void assertBinds(long[][] change, int[] sets, long[] weights) {
        for (int a = 0; a < change.length; a++) {
            for (int b = 0; b < change.length; b++) {
                long sum = 0;
                for (int s = 0; s < sets.length; s++) {
                    sum += enters(sets[s], a, b) ? weights[s] : 0;
                }
                assertTrue(sum <= change[a][b], "from " + a + " to " + b);
            }
        }
    }

    private static boolean enters(int set, int a, int b) {
        return (set >> b & 1) == 1 && (set >> a & 1) == 0;
    }

    private static long sum(long[] weights, int[] entries) {
        return IntStream.range(0, entries.length).mapToLong(k -> weights[k] * entries[k]).sum();
    }

    /**
     * The linear program by trying all corners: of six weights and six slacks, six are nought, and
     * what is left is solved by elimination.
     */
    private static long bestCorner(long[][] change, int[] sets, int[] entries) {
        double[][] rows = new double[6][12];
        double[] right = new double[6];
        int row = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                if (a != b) {
                    for (int k = 0; k < 6; k++) {
                        rows[row][k] = enters(sets[k], a, b) ? 1 : 0;
                    }
                    rows[row][6 + row] = 1;
                    right[row++] = change[a][b];
                }
            }
        }
        long best = 0;
        for (int corner = 0; corner < 1 << 12; corner++) {
            if (Integer.bitCount(corner) == 6) {
                int chosen = corner;
                int[] kept = IntStream.range(0, 12).filter(k -> (chosen >> k & 1) == 1).toArray();
                double[] at = solve(rows, right, kept);
                if (at.length > 0 && Arrays.stream(at).allMatch(x -> x > -1e-6)) {
                    double sum = 0;
                    for (int k = 0; k < 6; k++) {
                        sum += kept[k] < 6 ? at[k] * entries[kept[k]] : 0;
                    }
                    best = Math.max(best, Math.round(sum));
                }
            }
        }
        return best;
    }

    /** Solves for the kept columns by elimination; empty if they do not tell the rows apart. */
    private static double[] solve(double[][] rows, double[] right, int[] kept) {
        double[][] m = new double[6][7];
        for (int i = 0; i < 6; i++) {
            for (int k = 0; k < 6; k++) {
                m[i][k] = rows[i][kept[k]];
            }
            m[i][6] = right[i];
        }
        for (int k = 0; k < 6; k++) {
            int pivot = k;
            for (int i = k + 1; i < 6; i++) {
                pivot = Math.abs(m[i][k]) > Math.abs(m[pivot][k]) ? i : pivot;
            }
            if (Math.abs(m[pivot][k]) < 1e-9) {
                return new double[0];
            }
            double[] swapped = m[k];
            m[k] = m[pivot];
            m[pivot] = swapped;
            for (int i = 0; i < 6; i++) {
                double times = i == k ? 0 : m[i][k] / m[k][k];
                for (int x = k; x < 7; x++) {
                    m[i][x] -= times * m[k][x];
                }
            }
        }
        return IntStream.range(0, 6).mapToDouble(k -> m[k][6] / m[k][k]).toArray();
    }
}
