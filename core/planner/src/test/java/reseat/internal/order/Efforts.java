package reseat.internal.order;

import java.time.Duration;
import reseat.plan.Effort;
import reseat.plan.Watch;

/** Limits that nobody watches. */
final class Efforts {

    private Efforts() {}

    static Limits of(long expansions) {
        return new Limits(Effort.ofExpansions(expansions), Watch.NONE);
    }

    static Limits ofTime(Duration time) {
        return new Limits(Effort.ofTime(time), Watch.NONE);
    }
}
