package reseat.plan;

import java.util.ArrayList;
import java.util.List;
import reseat.internal.plan.Planning;
import reseat.model.Problem;

/**
 * Finds the cheapest way to a goal: what leaves together, by which way, and in which order.
 *
 * <p>Without state; may be shared between threads. With a limit on expansions the same request
 * gives the same plan, with a limit on the clock it may not. The time grows exponentially in the
 * worst case; the answer says how far a plan may be from the best.
 */
public final class Planner {

    /** Makes a planner. */
    public Planner() {}

    /**
     * Checks that a request makes sense for its device.
     *
     * @return what is wrong with it; empty if it can be planned
     */
    public static List<Problem> check(PlanRequest request) {
        return RequestCheck.check(request);
    }

    /** Plans without watching. */
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    /**
     * Plans.
     *
     * @param request what to plan
     * @param watch hears how it goes and may cancel
     * @return a plan, a proof that there is none, what was reached when the effort ended, or what
     *     is wrong with the request
     */
    public PlanResult plan(PlanRequest request, Watch watch) {
        List<Problem> problems = check(request);
        if (!problems.isEmpty()) {
            return new PlanResult.Refused(problems);
        }
        List<String> hopeless = RequestCheck.hopeless(request);
        if (!hopeless.isEmpty()) {
            return new PlanResult.Impossible(hopeless);
        }
        return Planning.plan(request, watch);
    }

    /**
     * Finds other routes: for each part that a plan moves, the best plan that leaves it where it
     * is, cheapest first. Two routes that move the same parts are one.
     *
     * @param plan the plan to differ from
     * @param most how many routes to return
     * @param watch hears how it goes and may cancel
     * @return other plans for the same goal, each of which leaves at least one part of the given
     *     plan in place
     */
    public List<Plan> otherRoutes(Plan plan, int most, Watch watch) {
        List<Plan> found = new ArrayList<>();
        for (String part : plan.movedParts()) {
            PlanRequest request =
                    plan.request().with(plan.request().rules().forbidParts(List.of(part)));
            if (!watch.cancelled()
                    && check(request).isEmpty()
                    && Planning.plan(request, watch) instanceof PlanResult.Found other
                    && found.stream()
                            .noneMatch(
                                    known ->
                                            known.movedParts().equals(other.plan().movedParts()))) {
                found.add(other.plan());
            }
        }
        found.sort((a, b) -> Long.compare(a.totalMs(), b.totalMs()));
        return List.copyOf(found.subList(0, Math.min(most, found.size())));
    }
}
