package reseat.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Creates plans. Every plan that it returns has been verified by the simulator, which shares no
 * code with the planner: the plan is valid, reaches its goal and costs what it says.
 *
 * <p>The planner module implements it ({@code reseat.planner.Planner}). Commands, the console,
 * scripts, assessments, stock and plugins all use it, so that no unverified plan is ever shown. May
 * be shared between threads.
 */
@FunctionalInterface
public interface Plans {

    /**
     * Plans.
     *
     * @param request what to plan
     * @param watch receives progress and may cancel
     * @return a verified plan, or the reason why there is none
     * @throws IllegalStateException if planner and simulator disagree: one of the two is wrong, so
     *     no plan can be returned
     */
    PlanResult plan(PlanRequest request, Watch watch);

    /** Plans without progress reports; see {@link #plan(PlanRequest, Watch)}. */
    default PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    /**
     * Finds other routes: for each part that a plan moves, the best plan that leaves it where it
     * is, cheapest first. Two routes that move the same parts are one. Takes as long as one more
     * plan for each part.
     *
     * @param plan the plan from which to differ
     * @param most how many routes to return; zero or more
     * @param watch receives progress and may cancel
     * @return verified plans for the same goal, each of which leaves at least one part of the given
     *     plan in place
     */
    default List<Plan> otherRoutes(Plan plan, int most, Watch watch) {
        List<Plan> found = new ArrayList<>();
        for (String part : plan.movedParts()) {
            if (watch.cancelled()) {
                break;
            }
            PlanRequest without =
                    plan.request().with(plan.request().rules().forbidParts(List.of(part)));
            plan(without, watch)
                    .best()
                    .filter(other -> found.stream().noneMatch(other::movesTheSameParts))
                    .ifPresent(found::add);
        }
        found.sort(Comparator.comparingLong(Plan::totalMs));
        return List.copyOf(found.subList(0, Math.min(most, found.size())));
    }
}
