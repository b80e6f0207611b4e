package reseat.internal.order;

import java.time.Duration;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * How long a solver may work: by the clock, by effort, or both, and who may stop it.
 *
 * <p>Under an effort limit alone the same problem gives the same answer, byte for byte, on any
 * machine; the clock breaks that. Effort is counted in <em>expansions</em>: one is a state of the
 * search whose followers are tried, and other work is counted in shares that take about as long
 * (some microseconds).
 *
 * @param time how long at most, or a negative duration for no limit
 * @param expansions how much effort at most; {@link Long#MAX_VALUE} for no limit
 * @param states how many states one layer of the search may hold; bounds the memory
 * @param cancelled asked now and then, from the thread that solves; when it says true, the solver
 *     ends with what it has
 */
public record OrderLimit(Duration time, long expansions, int states, BooleanSupplier cancelled) {

    private static final Duration NO_TIME_LIMIT = Duration.ofSeconds(-1);
    private static final int USUAL_STATES = 500_000;

    /** Checks the parts. */
    public OrderLimit {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(cancelled, "cancelled");
        if (expansions < 0) {
            throw new IllegalArgumentException("expansions must not be negative: " + expansions);
        }
        if (states < 1) {
            throw new IllegalArgumentException("states must be 1 or more: " + states);
        }
    }

    /**
     * Limits the time by the clock.
     *
     * @param time how long at most
     * @return the limit
     */
    public static OrderLimit ofTime(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException("time must not be negative: " + time);
        }
        return new OrderLimit(time, Long.MAX_VALUE, USUAL_STATES, () -> false);
    }

    /**
     * Limits the effort, for answers that can be repeated.
     *
     * @param expansions how much at most
     * @return the limit
     */
    public static OrderLimit ofExpansions(long expansions) {
        return new OrderLimit(NO_TIME_LIMIT, expansions, USUAL_STATES, () -> false);
    }

    /**
     * Adds somebody who may stop the work.
     *
     * @param cancelled says true to stop
     * @return this limit and that
     */
    public OrderLimit orWhen(BooleanSupplier cancelled) {
        return new OrderLimit(time, expansions, states, cancelled);
    }

    /**
     * Bounds the memory: a state takes about a hundred bytes and an eighth of a byte for each act.
     *
     * @param states how many states one layer of the search may hold
     * @return this limit and that
     */
    public OrderLimit withStates(int states) {
        return new OrderLimit(time, expansions, states, cancelled);
    }
}
