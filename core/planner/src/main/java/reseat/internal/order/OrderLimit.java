package reseat.internal.order;

import java.time.Duration;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * The limits of a solver: time, effort, or both, and a way to cancel it.
 *
 * <p>Under an effort limit alone the same problem gives the same answer, byte for byte, on any
 * machine; a time limit breaks that. Effort is counted in <em>expansions</em>: one is a state of
 * the search whose followers are tried, and other work is counted in shares that take about as long
 * (some microseconds).
 *
 * @param time maximum time, or a negative duration for no limit
 * @param expansions maximum effort; {@link Long#MAX_VALUE} for no limit
 * @param states how many states one layer of the search may hold; bounds the memory
 * @param cancelled polled now and then, from the solving thread; when it returns true, the solver
 *     ends with its best order
 */
public record OrderLimit(Duration time, long expansions, int states, BooleanSupplier cancelled) {

    private static final Duration NO_TIME_LIMIT = Duration.ofSeconds(-1);
    private static final int USUAL_STATES = 500_000;

    /** Validates the limits. */
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
     * Limits the time.
     *
     * @param time maximum time
     * @return the limit
     */
    public static OrderLimit ofTime(Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException("time must not be negative: " + time);
        }
        return new OrderLimit(time, Long.MAX_VALUE, USUAL_STATES, () -> false);
    }

    /**
     * Limits the effort, for reproducible answers.
     *
     * @param expansions maximum effort
     * @return the limit
     */
    public static OrderLimit ofExpansions(long expansions) {
        return new OrderLimit(NO_TIME_LIMIT, expansions, USUAL_STATES, () -> false);
    }

    /**
     * Adds a way to cancel.
     *
     * @param cancelled returns true to cancel
     * @return the combined limit
     */
    public OrderLimit orWhen(BooleanSupplier cancelled) {
        return new OrderLimit(time, expansions, states, cancelled);
    }

    /**
     * Bounds the memory: a state takes about a hundred bytes and an eighth of a byte for each act.
     *
     * @param states how many states one layer of the search may hold
     * @return the combined limit
     */
    public OrderLimit withStates(int states) {
        return new OrderLimit(time, expansions, states, cancelled);
    }
}
