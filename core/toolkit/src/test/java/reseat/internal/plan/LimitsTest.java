package reseat.internal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

/** When a search has to end, and what it tells on the way. */
class LimitsTest {

    private static final Effort LONG = Effort.ofTime(Duration.ofDays(1));

    private final Watch watch = mock(Watch.class);

    private static void judge(Limits limits, int nodes) {
        for (int i = 0; i < nodes; i++) {
            limits.count();
        }
    }

    @Test
    void endsWhenAsManyNodesWereJudgedAsWereGiven() {
        Limits limits = new Limits(Effort.ofExpansions(3), watch);
        judge(limits, 2);
        assertFalse(limits.over());
        assertNull(limits.ended());
        judge(limits, 1);
        assertTrue(limits.over());
        assertEquals(Ended.EXPANSIONS, limits.ended());
        assertEquals(3, limits.expansions());
    }

    @Test
    void tellsTheShareOfTheNodesThatIsUsed() {
        Limits limits = new Limits(Effort.ofExpansions(8), watch);
        assertEquals(0, limits.used());
        judge(limits, 2);
        assertEquals(0.25, limits.used());
    }

    @Test
    void endsAtOnceWhenThereIsNoTime() {
        Limits limits = new Limits(Effort.ofTime(Duration.ZERO), watch);
        assertTrue(limits.over());
        assertEquals(Ended.TIME, limits.ended());
    }

    @Test
    void usesNextToNothingOfADay() {
        Limits limits = new Limits(LONG, watch);
        judge(limits, 1_000);
        assertFalse(limits.over());
        assertTrue(limits.used() >= 0 && limits.used() < 0.5, "a test takes no half a day");
    }

    @Test
    void usesUpTimeAsItPasses() throws InterruptedException {
        Limits limits = new Limits(Effort.ofTime(Duration.ofMillis(1)), watch);
        Thread.sleep(2);
        assertTrue(limits.used() >= 1);
    }

    @Test
    void endsWhenItIsCancelledAndStaysEnded() {
        when(watch.cancelled()).thenReturn(false, true, false);
        Limits limits = new Limits(LONG, watch);
        assertFalse(limits.over());
        assertTrue(limits.over());
        assertEquals(Ended.CANCELLED, limits.ended());
        assertTrue(limits.over());
        verify(watch, times(2)).cancelled();
    }

    @Test
    void endsWhenItsThreadIsInterrupted() {
        Limits limits = new Limits(LONG, watch);
        Thread.currentThread().interrupt();
        try {
            assertTrue(limits.over());
        } finally {
            Thread.interrupted();
        }
        assertEquals(Ended.CANCELLED, limits.ended());
    }

    @Test
    void endsWhenMemoryIsUsedUp() {
        Limits limits = new Limits(LONG, watch);
        limits.memory();
        assertTrue(limits.over());
        assertEquals(Ended.MEMORY, limits.ended());
    }

    @Test
    void tellsNowAndThenHowManyNodesWereJudgedTheBestPlanAndTheBound() throws InterruptedException {
        Limits limits = new Limits(LONG, watch);
        judge(limits, 7);
        limits.report(900, 800);
        assertFalse(limits.over());
        verify(watch, never()).progress(anyLong(), anyLong(), anyLong());
        Thread.sleep(120); // each tenth of a second there is something to tell
        assertFalse(limits.over());
        assertFalse(limits.over());
        verify(watch, times(1)).progress(7, 900, 800);
    }

    @Test
    void tellsOfNoPlanBeforeThereIsOne() throws InterruptedException {
        Limits limits = new Limits(LONG, watch);
        Thread.sleep(120);
        assertFalse(limits.over());
        verify(watch, times(1)).progress(0, -1, 0);
    }
}
