package reseat.internal.planner;

import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

/** Tracks the effort of a search and determines when it must end. */
final class Limits {

    private static final long REPORT_NANOS = 100_000_000L;

    private final Watch watch;
    private final LongSupplier clock;
    private final long startedNanos;
    private final long nanos;
    private final long most;
    private long nextReport;
    private long count;
    private @Nullable Ended ended;

    private long bestMs = -1;
    private long boundMs;

    Limits(Effort effort, Watch watch) {
        this(effort, watch, System::nanoTime);
    }

    /**
     * Creates limits with another clock.
     *
     * @param clock nanoseconds from an arbitrary origin, as {@link System#nanoTime}
     */
    Limits(Effort effort, Watch watch, LongSupplier clock) {
        this.watch = watch;
        this.clock = clock;
        startedNanos = clock.getAsLong();
        nextReport = startedNanos + REPORT_NANOS;
        nanos = effort.time().isPresent() ? effort.time().get().toNanos() : Long.MAX_VALUE;
        most = effort.expansions().orElse(Long.MAX_VALUE);
    }

    long expansions() {
        return count;
    }

    void count() {
        count++;
    }

    /** Records what to report. */
    void report(long best, long bound) {
        bestMs = best;
        boundMs = bound;
    }

    /** Returns which share of the effort is used up, from 0 to 1; 0 where there is no limit. */
    double used() {
        double byTime =
                nanos == Long.MAX_VALUE ? 0 : (clock.getAsLong() - startedNanos) / (double) nanos;
        double byCount = most == Long.MAX_VALUE ? 0 : count / (double) most;
        return Math.max(byTime, byCount);
    }

    /** Returns whether to end now. */
    boolean over() {
        if (ended != null) {
            return true;
        }
        if (count >= most) {
            ended = Ended.EXPANSIONS;
            return true;
        }
        long now = clock.getAsLong();
        if (now - startedNanos >= nanos) {
            ended = Ended.TIME;
        } else if (Thread.currentThread().isInterrupted() || watch.cancelled()) {
            ended = Ended.CANCELLED;
        } else if (now >= nextReport) {
            nextReport = now + REPORT_NANOS;
            watch.progress(count, bestMs, boundMs);
        }
        return ended != null;
    }

    /** Ends the search because its memory is used up. */
    void memory() {
        ended = Ended.MEMORY;
    }

    /** Returns why the search ended; null if nothing made it end. */
    @Nullable Ended ended() {
        return ended;
    }
}
