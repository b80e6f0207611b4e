package reseat.plan;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How long a planner may think. Whatever ends first ends the search; the plan says which.
 *
 * @param time time on the clock; empty for no such limit
 * @param expansions states to expand, for runs that repeat exactly; empty for no such limit
 */
public record Effort(Optional<Duration> time, OptionalLong expansions) {

    /** The default: five seconds on the clock. */
    public static final Effort DEFAULT = ofTime(Duration.ofSeconds(5));

    /** Returns a limit on the clock. */
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
