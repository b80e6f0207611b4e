package reseat.internal.order;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import reseat.plan.Effort;
import reseat.plan.Plan.Ended;
import reseat.plan.Watch;

/**
 * Counts the effort of a search and tells when it has to end: the planner's and the ordering
 * solver's alike.
 *
 * <p>Effort is counted in expansions. What one expansion is, each search says for itself; in the
 * ordering solver it takes some microseconds.
 */
public final class Limits {

    private static final long REPORT_NANOS = 100_000_000L;

    /** Effort that is spent between two looks at the clock. */
    private static final long LOOK_EVERY = 1000;

    private final Watch watch;
    private final LongSupplier clock;
    private final long startedNanos;
    private final long nanos;
    private final long most;
    private long nextReport;
    private long nextLook;
    private long count;
    private @Nullable Ended ended;

    private long bestMs = -1;
    private long boundMs;

    public Limits(Effort effort, Watch watch) {
        this(effort, watch, System::nanoTime);
    }

    /**
     * Counts by another clock.
     *
     * @param clock nanoseconds from any moment, as {@link System#nanoTime}
     */
    Limits(Effort effort, Watch watch, LongSupplier clock) {
        this.watch = watch;
        this.clock = clock;
        startedNanos = clock.getAsLong();
        nextReport = startedNanos + REPORT_NANOS;
        nanos = effort.time().isPresent() ? effort.time().get().toNanos() : Long.MAX_VALUE;
        most = effort.expansions().orElse(Long.MAX_VALUE);
    }

    public long expansions() {
        return count;
    }

    /** Counts one expansion, without a look at the limits. */
    public void count() {
        count++;
    }

    /**
     * Counts effort. Looks at the clock only now and then, so it may be called often.
     *
     * @return whether some effort is left
     */
    public boolean spend(long effort) {
        count += effort;
        if (ended == null && count >= most) {
            ended = Ended.EXPANSIONS;
        } else if (ended == null && count >= nextLook) {
            nextLook = count + LOOK_EVERY;
            look();
        }
        return ended == null;
    }

    /** Remembers what to report. */
    public void report(long best, long bound) {
        bestMs = best;
        boundMs = bound;
    }

    /** Returns which share of the effort is used up, from 0 to 1; 0 where there is no limit. */
    public double used() {
        double byTime =
                nanos == Long.MAX_VALUE ? 0 : (clock.getAsLong() - startedNanos) / (double) nanos;
        double byCount = most == Long.MAX_VALUE ? 0 : count / (double) most;
        return Math.max(byTime, byCount);
    }

    /** Returns about how much effort is left, judged by the pace so far if there is a clock. */
    long left() {
        long left = most - count;
        if (nanos == Long.MAX_VALUE) {
            return left;
        }
        long passed = Math.max(1, clock.getAsLong() - startedNanos);
        return Math.min(left, (long) ((double) count * (nanos - passed) / passed));
    }

    /**
     * Returns limits for a part of the work: the time that is left, and so much effort at most.
     * What the part spends has to be counted here as well.
     */
    Limits part(long expansions) {
        Optional<Duration> time =
                nanos == Long.MAX_VALUE
                        ? Optional.empty()
                        : Optional.of(
                                Duration.ofNanos(
                                        Math.max(0, startedNanos + nanos - clock.getAsLong())));
        long part = Math.max(0, Math.min(expansions, most - count));
        Watch cancelling =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return watch.cancelled();
                    }
                };
        return new Limits(new Effort(time, OptionalLong.of(part)), cancelling, clock);
    }

    /** Tells whether to end now. */
    public boolean over() {
        if (ended == null && count >= most) {
            ended = Ended.EXPANSIONS;
        } else if (ended == null) {
            look();
        }
        return ended != null;
    }

    private void look() {
        long now = clock.getAsLong();
        if (now - startedNanos >= nanos) {
            ended = Ended.TIME;
        } else if (Thread.currentThread().isInterrupted() || watch.cancelled()) {
            ended = Ended.CANCELLED;
        } else if (now >= nextReport) {
            nextReport = now + REPORT_NANOS;
            watch.progress(count, bestMs, boundMs);
        }
    }

    /** Ends the search because its memory is used up. */
    public void memory() {
        ended = Ended.MEMORY;
    }

    /** Returns why the search ended; null if nothing made it end. */
    public @Nullable Ended ended() {
        return ended;
    }
}
