package reseat.plan;

/**
 * The one door through which plans leave. Every plan that it hands out has been judged by the
 * simulator, which shares no code with the planner: the plan is valid, reaches its goal and costs
 * what it says. May be shared between threads.
 */
@FunctionalInterface
public interface Plans {

    /**
     * Plans.
     *
     * @param request what to plan
     * @param watch hears how it goes and may cancel
     * @return a judged plan, or the reason why there is none
     * @throws IllegalStateException if planner and simulator disagree: one of the two is wrong, so
     *     there is no plan to hand out
     */
    PlanResult plan(PlanRequest request, Watch watch);

    /** Plans without watching; see {@link #plan(PlanRequest, Watch)}. */
    default PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }
}
