package reseat.internal.order;

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
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

/** When a search has to end, and what it tells on the way. */
class LimitsTest {

    private static final Effort LONG = Effort.ofTime(Duration.ofDays(1));

    private static final long MILLI = 1_000_000;

    private final Watch watch = mock(Watch.class);

    /** The time that a test lets pass, in nanoseconds. */
    private long now = 5_000 * MILLI;

    private Limits limits(Effort effort) {
        return new Limits(effort, watch, () -> now);
    }

    private static void judge(Limits limits, int nodes) {
        for (int i = 0; i < nodes; i++) {
            limits.count();
        }
    }

    @Test
    void endsWhenAsManyNodesWereJudgedAsWereGiven() {
        Limits limits = limits(Effort.ofExpansions(3));
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
        Limits limits = limits(Effort.ofExpansions(8));
        assertEquals(0, limits.used());
        judge(limits, 2);
        assertEquals(0.25, limits.used());
    }

    @Test
    void endsWhenItsTimeIsOver() {
        Limits limits = limits(Effort.ofTime(Duration.ofMillis(40)));
        assertFalse(limits.over());
        assertEquals(0, limits.used());
        now += 10 * MILLI;
        assertEquals(0.25, limits.used());
        now += 30 * MILLI - 1;
        assertFalse(limits.over());
        now++;
        assertTrue(limits.over());
        assertEquals(Ended.TIME, limits.ended());
        assertEquals(1, limits.used());
    }

    @Test
    void usesOfTimeAndNodesWhicheverIsUsedMore() {
        Limits limits = limits(new Effort(Optional.of(Duration.ofMillis(40)), OptionalLong.of(10)));
        judge(limits, 5);
        now += 10 * MILLI;
        assertEquals(0.5, limits.used());
        now += 20 * MILLI;
        assertEquals(0.75, limits.used());
    }

    @Test
    void takesTheClockOfTheMachineUnlessItIsGivenAnother() {
        Limits limits = new Limits(LONG, watch);
        assertFalse(limits.over());
        assertTrue(new Limits(Effort.ofTime(Duration.ZERO), watch).over());
    }

    @Test
    void endsWhenItIsCancelledAndStaysEnded() {
        when(watch.cancelled()).thenReturn(false, true, false);
        Limits limits = limits(LONG);
        assertFalse(limits.over());
        assertTrue(limits.over());
        assertEquals(Ended.CANCELLED, limits.ended());
        assertTrue(limits.over());
        verify(watch, times(2)).cancelled();
    }

    @Test
    void endsWhenItsThreadIsInterrupted() {
        Limits limits = limits(LONG);
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
        Limits limits = limits(LONG);
        limits.memory();
        assertTrue(limits.over());
        assertEquals(Ended.MEMORY, limits.ended());
    }

    @Test
    void tellsEachTenthOfASecondHowManyNodesWereJudgedTheBestPlanAndTheBound() {
        Limits limits = limits(LONG);
        judge(limits, 7);
        limits.report(900, 800);
        now += 100 * MILLI - 1;
        assertFalse(limits.over());
        verify(watch, never()).progress(anyLong(), anyLong(), anyLong());
        now++;
        assertFalse(limits.over());
        assertFalse(limits.over());
        verify(watch, times(1)).progress(7, 900, 800);
        now += 100 * MILLI;
        assertFalse(limits.over());
        verify(watch, times(2)).progress(7, 900, 800);
    }

    @Test
    void tellsOfNoPlanBeforeThereIsOne() {
        Limits limits = limits(LONG);
        now += 100 * MILLI;
        assertFalse(limits.over());
        verify(watch, times(1)).progress(0, -1, 0);
    }
}
