package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/** The cheapest walk over tools and over postures that must still be visited. */
class VisitsTest {

    /** Hand, T5 and spudger face up, and the spudger face down. */
    private static final PlanRequest REQUEST =
            PlanRequest.of(
                    Toy.of(
                            "part lid",
                            "part board",
                            "joint screw holds lid frame tool t5",
                            "joint clip holds lid frame tool spudger posture face-down",
                            "joint latch holds board frame tool spudger"),
                    new Goal.Teardown());

    @Test
    void classesAreToldApartByToolAndByPosture() {
        Outset at = new Outset(REQUEST);
        Visits visits = new Visits(at.c);
        int hand = at.c.startClass;
        int screw = at.clazz("t5", "face-up");
        int clip = at.clazz("spudger", "face-down");
        int latch = at.clazz("spudger", "face-up");
        assertEquals(3, visits.toolChanges().length);
        assertEquals(2, visits.postureChanges().length);
        assertEquals(visits.toolOf[clip], visits.toolOf[latch]);
        assertEquals(visits.postureOf[hand], visits.postureOf[latch]);
        assertEquals(visits.postureOf[hand], visits.postureOf[screw]);
        assertEquals(200, visits.toolChanges()[visits.toolOf[hand]][visits.toolOf[screw]]);
        assertEquals(0, visits.toolChanges()[visits.toolOf[clip]][visits.toolOf[latch]]);
        assertEquals(300, visits.postureChanges()[visits.postureOf[clip]][visits.postureOf[latch]]);
        assertEquals(0, visits.postureChanges()[0][0]);
    }

    /** Both tools from the hand take two changes at 200; turning once takes 300. */
    @Test
    void toolsAndPosturesAreBoundedEachByItself() {
        Outset at = new Outset(REQUEST);
        Visits visits = new Visits(at.c);
        int hand = visits.toolOf[at.c.startClass];
        assertEquals(400, visits.tools(hand, 0b111 & ~(1L << hand)));
        assertEquals(400, visits.tools(hand, 0b111));
        assertEquals(200, visits.tools(hand, 1L << visits.toolOf[at.clazz("t5", "face-up")]));
        assertEquals(300, visits.postures(0, 0b11));
        assertEquals(0, visits.postures(0, 0b01));
    }

    @Test
    void eachAxisCanBeTakenAlone() {
        Outset at = new Outset(REQUEST);
        Visits visits = new Visits(at.c);
        Visits tools = visits.toolsAlone();
        assertArrayEquals(visits.toolChanges(), tools.toolChanges());
        assertArrayEquals(new int[] {0, 1, 2}, tools.toolOf);
        assertArrayEquals(new int[] {0, 0, 0}, tools.postureOf);
        assertEquals(0, tools.postures(0, 1));
        Visits postures = visits.posturesAlone();
        assertArrayEquals(visits.postureChanges(), postures.toolChanges());
        assertArrayEquals(new int[] {0, 1}, postures.toolOf);
    }

    /**
     * Places on a line, 10 a step, 1 more downwards. From 1 over 0, 2 and 3: first down (11), then
     * up three steps at 10 each. Up first (20) and then down three (33) would cost 53.
     */
    @Test
    void theCheapestOrderCounts() {
        long[][] line = new long[4][4];
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                line[a][b] = a < b ? 10 * (b - a) : 11 * (a - b);
            }
        }
        Visits visits = new Visits(line);
        assertEquals(41, visits.tools(1, 0b1101));
        assertEquals(0, visits.tools(1, 0b0010));
        assertEquals(0, visits.tools(2, 0));
        assertEquals(20, visits.tools(1, 0b1000));
    }

    @Test
    void fiveWithAnyChangesTakeTheCheapestOfAllOrders() {
        Random random = new Random(4);
        for (int k = 0; k < 20; k++) {
            long[][] change = metric(random, 5);
            Visits visits = new Visits(change);
            for (int at = 0; at < 5; at++) {
                for (int mask = 0; mask < 32; mask++) {
                    assertEquals(cheapest(change, at, mask & ~(1 << at)), visits.tools(at, mask));
                }
            }
        }
    }

    private static long cheapest(long[][] change, int at, int mask) {
        long least = mask == 0 ? 0 : Long.MAX_VALUE;
        for (int next = 0; next < change.length; next++) {
            if ((mask >> next & 1) == 1) {
                long rest = cheapest(change, next, mask & ~(1 << next));
                least = Math.min(least, change[at][next] + rest);
            }
        }
        return least;
    }

    /** Changes from 100 to 200: none is dearer than a detour. */
    private static long[][] metric(Random random, int places) {
        long[][] change = new long[places][places];
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                change[a][b] = a == b ? 0 : 100 + random.nextInt(100);
            }
        }
        return change;
    }

    /** Places on a ring: round all others from 0 takes one step less than there are places. */
    private static long[][] ring(int places) {
        long[][] change = new long[places][places];
        for (int a = 0; a < places; a++) {
            for (int b = 0; b < places; b++) {
                int apart = Math.abs(a - b);
                change[a][b] = 10 * Math.min(apart, places - apart);
            }
        }
        return change;
    }

    /** Of twelve on a ring, the far ones 3, 6 and 9 cost 90 from 0: three times three steps. */
    @Test
    void twelveAreExact() {
        assertEquals(90, new Visits(ring(12)).tools(0, 1 << 3 | 1 << 6 | 1 << 9));
    }

    /** Of thirteen, each but the one in hand counts the cheapest change into it: one step. */
    @Test
    void moreCountTheCheapestChangeIntoEach() {
        Visits visits = new Visits(ring(13));
        assertEquals(30, visits.tools(0, 1 << 3 | 1 << 6 | 1 << 9));
        assertEquals(20, visits.tools(3, 1 << 3 | 1 << 6 | 1 << 9));
        assertEquals(120, visits.tools(0, (1 << 13) - 1));
    }
}
