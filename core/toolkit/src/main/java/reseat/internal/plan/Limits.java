package reseat.internal.plan;

import org.jspecify.annotations.Nullable;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

/** Counts the effort of a search and tells when it has to end. */
final class Limits {

    private static final long REPORT_NANOS = 100_000_000L;

    private final Watch watch;
    private final long startedNanos = System.nanoTime();
    private final long nanos;
    private final long most;
    private long nextReport = startedNanos + REPORT_NANOS;
    private long count;
    private @Nullable Ended ended;

    private long bestMs = -1;
    private long boundMs;

    Limits(Effort effort, Watch watch) {
        this.watch = watch;
        nanos = effort.time().isPresent() ? effort.time().get().toNanos() : Long.MAX_VALUE;
        most = effort.expansions().orElse(Long.MAX_VALUE);
    }

    long expansions() {
        return count;
    }

    void count() {
        count++;
    }

    /** Remembers what to report. */
    void report(long best, long bound) {
        bestMs = best;
        boundMs = bound;
    }

    /** Returns which share of the effort is used up, from 0 to 1; 0 where there is no limit. */
    double used() {
        double byTime =
                nanos == Long.MAX_VALUE ? 0 : (System.nanoTime() - startedNanos) / (double) nanos;
        double byCount = most == Long.MAX_VALUE ? 0 : count / (double) most;
        return Math.max(byTime, byCount);
    }

    /** Tells whether to end now. */
    boolean over() {
        if (ended != null) {
            return true;
        }
        if (count >= most) {
            ended = Ended.EXPANSIONS;
            return true;
        }
        long now = System.nanoTime();
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
