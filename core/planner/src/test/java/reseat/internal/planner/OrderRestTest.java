package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import reseat.internal.graph.Bits;

/** What is left to be paid, before any search: by the dearest chain, by visits, by entries. */
class OrderRestTest {

    /** From 0: 5 to 1, 6 to 2. From 1 to 2: 4; back: 3. To 0: 7 from 1, 8 from 2. */
    private static final long[][] THREE = {{0, 5, 6}, {7, 0, 4}, {8, 3, 0}};

    /** Work with given changes, each item in one class unless said otherwise. */
    private static final class Listed {
        private final int[][] classes;
        private final long[][] extra;
        private final long[][] needs;
        private final long[][] change;

        Listed(long[][] change, int... each) {
            int n = each.length;
            this.change = change;
            classes = new int[n][];
            extra = new long[n][];
            needs = new long[n][Bits.words(n)];
            for (int i = 0; i < n; i++) {
                classes[i] = new int[] {each[i]};
                extra[i] = new long[] {0};
            }
        }

        /** One item may also be done in a class at an extra cost. */
        Listed or(int item, int clazz, long ms) {
            classes[item] = new int[] {classes[item][0], clazz};
            extra[item] = new long[] {0, ms};
            return this;
        }

        /** Items follow each other. */
        Listed row(int... items) {
            for (int k = 1; k < items.length; k++) {
                Bits.addAll(needs[items[k]], needs[items[k - 1]]);
                Bits.set(needs[items[k]], items[k - 1]);
            }
            return this;
        }

        OrderWork work() {
            int n = classes.length;
            int[] names = IntStream.range(0, n).toArray();
            long[] among = new long[Bits.words(n)];
            IntStream.range(0, n).forEach(i -> Bits.set(among, i));
            return new OrderWork(names, classes, extra, needs, among, new Visits(change));
        }
    }

    private static long rest(Listed of, boolean packs, int clazz, int... itemsDone) {
        OrderWork work = of.work();
        OrderRest rest = new OrderRest(work, clazz, packs);
        long[] done = new long[work.words];
        for (int i = 0; i < work.n; i++) {
            int name = work.names[i];
            if (IntStream.of(itemsDone).anyMatch(item -> item == name)) {
                Bits.set(done, i);
            }
        }
        return rest.of(done, clazz, rest.tools(clazz), rest.postures(clazz));
    }

    private static Listed of(int... classes) {
        return new Listed(THREE, classes);
    }

    /** 0 to 1 (5), 1 to 0 (7), 0 to 1 (5). What is done is not paid again. */
    @Test
    void aChainIsPaidChangeByChange() {
        assertEquals(17, rest(of(1, 0, 1).row(0, 1, 2), false, 0));
        assertEquals(12, rest(of(1, 0, 1).row(0, 1, 2), false, 1));
        assertEquals(12, rest(of(1, 0, 1).row(0, 1, 2), false, 1, 0));
        assertEquals(5, rest(of(1, 0, 1).row(0, 1, 2), false, 0, 0, 1));
        assertEquals(0, rest(of(1, 0, 1).row(0, 1, 2), false, 1, 0, 1, 2));
    }

    /** 1, 0, 1 costs 17; 2, 0 costs 14, and 2 alone 6: of two chains the dearer counts. */
    @Test
    void ofTwoChainsTheDearerCounts() {
        assertEquals(17, rest(of(1, 0, 1, 2, 0).row(0, 1, 2).row(3, 4), false, 0));
        assertEquals(14, rest(of(2, 0, 1).row(0, 1), false, 0));
        assertEquals(14, rest(of(1, 2, 0).row(1, 2), false, 0));
    }

    /** Once 1, 0, 1 is done, 2 and 0 are left for 14 from 0. */
    @Test
    void ofWhatIsLeftTheDearestCounts() {
        assertEquals(14, rest(of(1, 0, 1, 2, 0).row(0, 1, 2).row(3, 4), false, 0, 0, 1, 2));
        assertEquals(6, rest(of(2, 1, 1, 1), false, 0, 1, 2, 3));
    }

    /** The cheapest way round 1 and 2 is 5 + 4 or 6 + 3; a chain alone would tell 6. */
    @Test
    void whatMustBeVisitedIsPaidForAsOneWalk() {
        assertEquals(9, rest(of(1, 2), false, 0));
        assertEquals(4, rest(of(1, 2), false, 1));
        assertEquals(6, rest(of(1, 2), false, 0, 0));
        assertEquals(5, rest(of(1, 2), false, 0, 1));
    }

    /** An item of 1 or 2 need not visit either: 5, and beside an item of 1 nothing more. */
    @Test
    void whatCanBeDoneInTwoClassesVisitsNone() {
        assertEquals(5, rest(of(1).or(0, 2, 0), false, 0));
        assertEquals(5, rest(of(1, 1).or(0, 2, 0), false, 0));
        assertEquals(6, rest(of(1, 2).or(0, 2, 0), false, 0));
    }

    /** In hand at 3 more, or after a change at 5; the cheaper counts, also within a chain. */
    @Test
    void whatCostsExtraCompetesWithAChange() {
        assertEquals(3, rest(of(1).or(0, 0, 3), false, 0));
        assertEquals(5, rest(of(1).or(0, 0, 8), false, 0));
        // 1 at a change of 5, then 2 at 4; or 0 at 3 more, then 2 at 6
        assertEquals(9, rest(of(1, 2).or(0, 0, 3).row(0, 1), false, 0));
        assertEquals(7, rest(of(1, 2).or(0, 0, 1).row(0, 1), false, 0));
    }

    /**
     * Two chains 1, 0, 1 and 2, 0, 2, all changes at 10. A chain alone takes three changes; but 1
     * and 2 must be taken up twice each and 0 once between, five in all.
     */
    @Test
    void entriesOfSetsAddUpIfAskedFor() {
        long[][] tens = {{0, 10, 10}, {10, 0, 10}, {10, 10, 0}};
        Listed both = new Listed(tens, 1, 0, 1, 2, 0, 2).row(0, 1, 2).row(3, 4, 5);
        assertEquals(30, rest(both, false, 0));
        assertEquals(50, rest(both, true, 0));
    }

    /** Items past the 64th: 70 in a row, the last of class 1, and one in class 2 beside them. */
    @Test
    void workOfMoreThanAWordIsBoundedAlike() {
        int[] classes = new int[71];
        classes[69] = 1;
        classes[70] = 2;
        Listed many = new Listed(THREE, classes).row(IntStream.range(0, 70).toArray());
        assertEquals(9, rest(many, false, 0));
        assertEquals(6, rest(many, false, 0, IntStream.range(0, 70).toArray()));
        assertEquals(5, rest(many, false, 0, 70));
    }

    /**
     * Of 66 classes the first 64 are kept in mind for visits: 1, 62 and 63 are, 64 and 65 are not.
     * Each change costs 10.
     */
    @Test
    void visitsAreCountedOfThe64FirstClasses() {
        long[][] change = new long[66][66];
        for (int a = 0; a < 66; a++) {
            for (int b = 0; b < 66; b++) {
                change[a][b] = a == b ? 0 : 10;
            }
        }
        assertEquals(30, rest(new Listed(change, 1, 62, 63, 64, 65), false, 0));
        assertEquals(10, rest(new Listed(change, 64, 65), false, 0));
    }
}
