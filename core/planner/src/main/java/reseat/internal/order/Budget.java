package reseat.internal.order;

/**
 * Tracks effort and time for one call of the solver.
 *
 * <p>Work is done in slices; a slice ends after its share of effort, or with the whole budget.
 */
final class Budget {

    private static final long LOOK_EVERY = 1000;

    private final OrderLimit limit;
    private final long begun = System.nanoTime();
    private long spent;
    private long nextLook;
    private OrderResult.Ended ended = OrderResult.Ended.PROVED;

    Budget(OrderLimit limit) {
        this.limit = limit;
    }

    /** Counts work and returns whether any is left. */
    boolean spend(long effort) {
        spent += effort;
        if (over()) {
            return false;
        }
        if (spent >= limit.expansions()) {
            ended = OrderResult.Ended.EXPANSIONS;
        } else if (spent >= nextLook) {
            nextLook = spent + LOOK_EVERY;
            if (limit.cancelled().getAsBoolean()) {
                ended = OrderResult.Ended.CANCELLED;
            } else if (!limit.time().isNegative()
                    && System.nanoTime() - begun >= limit.time().toNanos()) {
                ended = OrderResult.Ended.TIME;
            }
        }
        return !over();
    }

    /** Returns whether the limit is reached. */
    boolean over() {
        return ended != OrderResult.Ended.PROVED;
    }

    /** Why the budget ended; {@code PROVED} while it has not. */
    OrderResult.Ended ended() {
        return ended;
    }

    long spent() {
        return spent;
    }

    /** About how much effort is left, judged by the pace so far when there is a clock. */
    long left() {
        long left = limit.expansions() - spent;
        if (limit.time().isNegative()) {
            return left;
        }
        long used = Math.max(1, System.nanoTime() - begun);
        return Math.min(left, (long) ((double) spent * (limit.time().toNanos() - used) / used));
    }

    int states() {
        return limit.states();
    }
}
