package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import reseat.internal.graph.Bits;

/** Bounds on set-ups against the optimum over all orders of small random work. */
class OrderBoundTest {

    private static final int TRIES = Integer.getInteger("reseat.tries", 2_000);
    private static final int MOST_ITEMS = 11;
    private static final long FAR = Long.MAX_VALUE / 4;

    @Test
    void isExactWithEnoughEffortAndNeverAboveTheOptimumWithLess() {
        for (int seed = 1; seed <= TRIES; seed++) {
            Random random = new Random(seed * 0x9E3779B97F4A7C15L);
            long[][] change = metric(random, 2 + random.nextInt(7));
            OrderWork work = work(random, change);
            long best = optimum(work, change);
            String of = "seed " + seed;
            OrderBound bound = new OrderBound(change, seed % 2 == 0, () -> false);
            assertEquals(best, bound.bound(work, 0, 1_000_000), of);
            for (int effort : new int[] {0, 1, 5, 20}) {
                long low = bound.bound(work, 0, effort);
                assertTrue(low <= best, () -> of + ": " + low + " of " + best);
            }
            assertEquals(work.n, bound.order(work, 0, 5).size(), of);
        }
    }

    /**
     * These 62 items in 14 classes take more than 1,000 states. From that effort on sets are packed
     * even where the bound without a search does not; the more effort, the more is known.
     */
    @Test
    void packsWhereTheEffortIsWorthIt() {
        Random random = new Random(2);
        long[][] change = metric(random, 14);
        OrderWork work = work(random, change, 62);
        OrderBound plain = new OrderBound(change, false, () -> false);
        OrderBound packing = new OrderBound(change, true, () -> false);
        assertTrue(plain.bound(work, 0, 5) < plain.bound(work, 0, 999));
        assertTrue(plain.bound(work, 0, 999) < plain.bound(work, 0, 1_000));
        assertEquals(packing.bound(work, 0, 1_000), plain.bound(work, 0, 1_000));
    }

    /**
     * Seventy items in a row, by turns in two classes; only the 64th and the 65th are in the same.
     * From class 0 that makes 34 changes there, at 10, and 34 back, at 20; from 1 one more back.
     */
    @Test
    void isExactForMoreItemsThanAWordHasBits() {
        long[][] change = {{0, 10}, {20, 0}};
        int n = 70;
        int[][] classes = new int[n][];
        long[][] needs = new long[n][2];
        long[] among = new long[2];
        for (int i = 0; i < n; i++) {
            classes[i] = new int[] {i < 64 ? i % 2 : 1 - i % 2};
            Bits.set(among, i);
            for (int k = 0; k < i; k++) {
                Bits.set(needs[i], k);
            }
        }
        int[] names = IntStream.range(0, n).toArray();
        OrderWork work =
                new OrderWork(names, classes, new long[n][1], needs, among, new Visits(change));
        OrderBound bound = new OrderBound(change, false, () -> false);
        assertEquals(34 * 10 + 34 * 20, bound.bound(work, 0, 1_000_000));
        assertEquals(34 * 10 + 35 * 20, bound.bound(work, 1, 1_000_000));
        assertEquals(Arrays.stream(names).boxed().toList(), bound.order(work, 0, 5));
    }

    @Test
    void leavesOutWhatCanBeDoneBesideAnother() {
        Random random = new Random(7);
        int less = 0;
        for (int k = 0; k < 200; k++) {
            long[][] change = metric(random, 3);
            OrderWork work = work(random, change);
            OrderWork condensed = work.condensed();
            less += work.n - condensed.n;
            assertEquals(optimum(work, change), optimum(condensed, change));
        }
        assertTrue(less > 100, "left out: " + less);
    }

    @Test
    void packsSetsSoThatNoChangeCostsLessThanTheyWeigh() {
        Random random = new Random(3);
        for (int k = 0; k < 200; k++) {
            long[][] change = metric(random, 2 + random.nextInt(8));
            int[] sets = CutPacking.sets(change.length);
            int[] entries = Arrays.stream(sets).map(set -> random.nextInt(30)).toArray();
            long[] weights = CutPacking.weights(change, sets, entries);
            for (int a = 0; a < change.length; a++) {
                for (int b = 0; b < change.length; b++) {
                    long sum = 0;
                    for (int s = 0; s < sets.length; s++) {
                        boolean enters = (sets[s] >> b & 1) == 1 && (sets[s] >> a & 1) == 0;
                        sum += enters ? weights[s] : 0;
                    }
                    assertTrue(sum <= change[a][b], "from " + a + " to " + b);
                }
            }
        }
    }

    private static long[][] metric(Random random, int places) {
        long[][] change = new long[places][places];
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                change[a][b] = a == b ? 0 : 1000 + random.nextInt(1000);
            }
        }
        return change;
    }

    private static OrderWork work(Random random, long[][] change) {
        return work(random, change, 1 + random.nextInt(MOST_ITEMS));
    }

    private static OrderWork work(Random random, long[][] change, int n) {
        int[] names = new int[n];
        int[][] classes = new int[n][];
        long[][] extra = new long[n][];
        long[][] needs = new long[n][1];
        long[] among = new long[1];
        for (int i = 0; i < n; i++) {
            names[i] = i;
            Bits.set(among, i);
            int options = random.nextInt(4) == 0 ? 2 : 1;
            classes[i] = new int[options];
            extra[i] = new long[options];
            for (int o = 0; o < options; o++) {
                classes[i][o] = random.nextInt(change.length);
                extra[i][o] = o == 0 || random.nextBoolean() ? 0 : random.nextInt(2500);
            }
            for (int k = 0; k < i; k++) {
                if (random.nextInt(3) == 0) {
                    Bits.set(needs[i], k);
                    Bits.addAll(needs[i], needs[k]);
                }
            }
        }
        return new OrderWork(names, classes, extra, needs, among, new Visits(change));
    }

    /** Tries all orders: the least cost for each set of items done and each class in hand. */
    private static long optimum(OrderWork work, long[][] change) {
        int all = (1 << work.n) - 1;
        long[][] cost = new long[all + 1][change.length];
        for (long[] row : cost) {
            Arrays.fill(row, FAR);
        }
        cost[0][0] = 0;
        for (int done = 0; done < all; done++) {
            for (int i = 0; i < work.n; i++) {
                boolean ready = (work.before[i][0] & ~done) == 0 && (done >> i & 1) == 0;
                for (int o = 0; ready && o < work.classes[i].length; o++) {
                    int to = work.classes[i][o];
                    for (int at = 0; at < change.length; at++) {
                        long sum = cost[done][at] + change[at][to] + work.extra[i][o];
                        int after = done | 1 << i;
                        cost[after][to] = Math.min(cost[after][to], sum);
                    }
                }
            }
        }
        return Arrays.stream(cost[all]).min().orElse(0);
    }
}
