package reseat.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The effort limit of a planner. The first limit reached stops the search; the plan records which.
 *
 * @param time time limit; empty for none
 * @param expansions limit on the states expanded, for repeatable runs; empty for none
 */
public record Effort(Optional<Duration> time, OptionalLong expansions) {

    /** The default: five seconds. */
    public static final Effort DEFAULT = ofTime(Duration.ofSeconds(5));

    /** Returns a time limit. */
    public static Effort ofTime(Duration time) {
        return new Effort(Optional.of(time), OptionalLong.empty());
    }

    /**
     * Returns a limit on the number of states expanded; the same input then gives the same plan on
     * any machine.
     */
    public static Effort ofExpansions(long expansions) {
        return new Effort(Optional.empty(), OptionalLong.of(expansions));
    }
}
