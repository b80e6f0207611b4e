package reseat.plan;

/**
 * Makes the rebuild of a plan: what has to be done to put a unit together again, in the valid order
 * with the least set-ups.
 *
 * <p>The planner module implements it ({@code reseat.planner.Planner}); a plan carries it, so that
 * every caller gets the same rebuild from {@link Plan#rebuild}. May be shared between threads.
 */
@FunctionalInterface
public interface Rebuilds {

    /**
     * Makes the rebuild of a plan. The same plan always gives the same rebuild.
     *
     * @throws IllegalStateException if the maker and the simulator disagree
     */
    Rebuild rebuild(Plan plan);
}
