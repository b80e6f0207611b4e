package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import reseat.internal.graph.Bits;

/** How often sets of tools must be taken up, against all orders of small work. */
class EntriesTest {

    private static final int TRIES = 150;
    private static final long FAR = 1_000;

    /** From 0 to 1 costs 5, back 7. */
    private static final long[][] TWO = {{0, 5}, {7, 0}};

    private static int[] own(int places) {
        return IntStream.range(0, places).toArray();
    }

    /** Items in one class each, where each waits for all before it. */
    private static OrderWork inARow(long[][] change, int... classes) {
        int n = classes.length;
        long[][] needs = new long[n][1];
        int[][] each = new int[n][];
        for (int i = 0; i < n; i++) {
            needs[i][0] = (1L << i) - 1;
            each[i] = new int[] {classes[i]};
        }
        return work(change, each, needs);
    }

    private static OrderWork work(long[][] change, int[][] classes, long[][] needs) {
        int n = classes.length;
        long[][] extra = new long[n][];
        for (int i = 0; i < n; i++) {
            extra[i] = new long[classes[i].length];
        }
        long[] among = {(1L << n) - 1};
        return new OrderWork(own(n), classes, extra, needs, among, new Visits(change));
    }

    private static long ms(OrderWork work, long[][] change, int start) {
        Entries entries = new Entries(work, own(change.length), change, start);
        return entries.ms(entries.entries(start));
    }

    /** 1, 0, 1 in this order: from 0 in twice (5 each) and out once (7); from 1 one in less. */
    @Test
    void aRowThatGoesInAndOutIsPaidForEachTime() {
        OrderWork work = inARow(TWO, 1, 0, 1);
        assertEquals(17, ms(work, TWO, 0));
        assertEquals(12, ms(work, TWO, 1));
    }

    @Test
    void whatIsInHandNeedNotBeTakenUp() {
        assertEquals(0, ms(inARow(TWO, 0, 0), TWO, 0));
        assertEquals(7, ms(inARow(TWO, 0, 0), TWO, 1));
    }

    @Test
    void whatCanBeDoneWithEitherAsksForNoChange() {
        int[][] either = {{1}, {0, 1}, {1}};
        long[][] needs = {{0}, {1}, {3}};
        assertEquals(5, ms(work(TWO, either, needs), TWO, 0));
    }

    /** Without an order all of one class is done at once. */
    @Test
    void whatWaitsForNothingIsDoneTogether() {
        int[][] classes = {{1}, {0}, {1}, {0}};
        assertEquals(5, ms(work(TWO, classes, new long[4][1]), TWO, 0));
    }

    @Test
    void nothingIsBoundWhereOneToolDoesAll() {
        long[][] change = {{0, 5, 9}, {7, 0, 9}, {9, 9, 0}};
        Entries entries = new Entries(inARow(change, 1, 1), own(3), change, 1);
        assertEquals(0, entries.entries(1).length);
        assertEquals(0, Entries.NONE.ms(new short[0]));
    }

    /** 0 needs no change, 30 others take 1000 each; with one tool more nothing is bound. */
    @Test
    void upTo31ToolsAreLookedAt() {
        assertEquals(30_000, ms(inARow(all(31), own(31)), all(31), 0));
        assertEquals(0, ms(inARow(all(32), own(32)), all(32), 0));
    }

    private static long[][] all(int places) {
        long[][] change = new long[places][places];
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                change[a][b] = a == b ? 0 : 1000;
            }
        }
        return change;
    }

    @Test
    void aChangeToTheSameChangesNothing() {
        Entries entries = new Entries(inARow(TWO, 1, 0, 1), own(2), TWO, 0);
        short[] before = entries.entries(0);
        assertSame(before, entries.after(before, 1, 1, new long[1]));
    }

    /**
     * Of two places the entries tell the optimum: at the start and after each change of an order
     * that does all that is ready.
     */
    @Test
    void ofTwoPlacesTheyAreExactAllTheWay() {
        for (long seed = 1; seed <= TRIES; seed++) {
            Random random = new Random(seed);
            OrderWork work = random(random, TWO);
            int start = random.nextInt(2);
            Entries entries = new Entries(work, own(2), TWO, start);
            short[] now = entries.entries(start);
            long[] done = new long[1];
            long[] ready = work.ready();
            int at = start;
            work.close(done, ready, at);
            while (true) {
                long rest = paid(work, done[0], at, own(2), 0b10) * 5;
                rest += paid(work, done[0], at, own(2), 0b01) * 7;
                assertEquals(rest, entries.ms(now), "seed " + seed);
                if (work.all(done)) {
                    break;
                }
                work.close(done, ready, 1 - at);
                now = entries.after(now, at, 1 - at, done);
                at = 1 - at;
            }
        }
    }

    /**
     * Of more places each set counts with the entries that it needs by itself, weighed by the
     * packing for the start. Two classes share each tool, and some tools are not asked for.
     */
    @Test
    void ofMorePlacesEachSetIsExactByItselfAllTheWay() {
        for (long seed = 1; seed <= TRIES; seed++) {
            Random random = new Random(seed);
            int tools = 3 + random.nextInt(2);
            long[][] change = metric(random, tools);
            int[] of = IntStream.range(0, 2 * tools).map(k -> k / 2).toArray();
            OrderWork work = random(random, metric(random, 2 * tools));
            int at = random.nextInt(2 * tools);
            Entries entries = new Entries(work, of, change, of[at]);
            int[] places = places(work, of, of[at]);
            if (places.length < 2) {
                continue;
            }
            int[] sets =
                    Arrays.stream(CutPacking.sets(places.length))
                            .map(set -> among(places, set))
                            .toArray();
            long[] weights = weights(work, of, at, change, places, sets);
            long[] done = new long[1];
            long[] ready = work.ready();
            work.close(done, ready, at);
            short[] now = entries.entries(of[at]);
            while (true) {
                long rest = 0;
                for (int k = 0; k < sets.length; k++) {
                    rest += weights[k] * paid(work, done[0], at, of, sets[k]);
                }
                assertEquals(rest, entries.ms(now), "seed " + seed);
                if (work.all(done)) {
                    break;
                }
                int item = Bits.next(ready, 0);
                int to = work.classes[item][0];
                work.close(done, ready, to);
                now = entries.after(now, of[at], of[to], done);
                at = to;
            }
        }
    }

    private static long[] weights(
            OrderWork work, int[] of, int start, long[][] change, int[] places, int[] sets) {
        long[][] between = new long[places.length][places.length];
        for (int a = 0; a < places.length; a++) {
            for (int b = 0; b < places.length; b++) {
                between[a][b] = change[places[a]][places[b]];
            }
        }
        int[] entries =
                Arrays.stream(sets).map(set -> (int) paid(work, 0, start, of, set)).toArray();
        return CutPacking.weights(between, CutPacking.sets(places.length), entries);
    }

    private static int[] places(OrderWork work, int[] of, int start) {
        return IntStream.concat(
                        IntStream.of(start),
                        Arrays.stream(work.classes).flatMapToInt(Arrays::stream).map(k -> of[k]))
                .distinct()
                .sorted()
                .toArray();
    }

    /** A set of places by their index, as a set of tools. */
    private static int among(int[] places, int set) {
        return IntStream.range(0, places.length)
                .filter(k -> (set >> k & 1) == 1)
                .map(k -> 1 << places[k])
                .sum();
    }

    private static long[][] metric(Random random, int places) {
        long[][] change = new long[places][places];
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                change[a][b] = a == b ? 0 : 100 + random.nextInt(100);
            }
        }
        return change;
    }

    private static OrderWork random(Random random, long[][] change) {
        int n = 1 + random.nextInt(8);
        int[][] classes = new int[n][];
        long[][] needs = new long[n][1];
        for (int i = 0; i < n; i++) {
            classes[i] =
                    random.ints(0, change.length).distinct().limit(1 + random.nextInt(2)).toArray();
            for (int k = 0; k < i; k++) {
                if (random.nextInt(3) == 0) {
                    needs[i][0] |= needs[k][0] | 1L << k;
                }
            }
        }
        return work(change, classes, needs);
    }

    /** The fewest times that a set of tools is taken up to do the rest, over all orders. */
    private static long paid(OrderWork work, long done, int at, int[] of, int set) {
        long[][] known = new long[1 << work.n][2];
        Arrays.stream(known).forEach(row -> Arrays.fill(row, -1));
        return paid(work, (int) done, set >> of[at] & 1, of, set, known);
    }

    private static long paid(
            OrderWork work, int done, int inside, int[] of, int set, long[][] known) {
        if (done == (1 << work.n) - 1) {
            return 0;
        }
        if (known[done][inside] < 0) {
            long least = FAR;
            for (int i = 0; i < work.n; i++) {
                if ((done >> i & 1) == 0 && (work.before[i][0] & ~done) == 0) {
                    for (int clazz : work.classes[i]) {
                        int then = set >> of[clazz] & 1;
                        long entered = then == 1 && inside == 0 ? 1 : 0;
                        least =
                                Math.min(
                                        least,
                                        entered + paid(work, done | 1 << i, then, of, set, known));
                    }
                }
            }
            known[done][inside] = least;
        }
        return known[done][inside];
    }
}
