package reseat.stock.desk;

import java.util.List;
import java.util.Optional;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;

/**
 * Whether a repair can be done with the stock.
 *
 * @param request the repair; if a detour was taken, with its rules
 * @param plan the plan that was evaluated; empty if none was found
 * @param availability what the stock has for that plan; empty if there is none
 * @param avoided missing items that the best plan needs and this plan avoids; empty if this is the
 *     best plan
 * @param reasons why there is no plan, as sentences; empty if there is one
 */
record CanDo(
        PlanRequest request,
        Optional<Plan> plan,
        Optional<Availability> availability,
        List<StockNeed> avoided,
        List<String> reasons) {

    public CanDo {
        avoided = List.copyOf(avoided);
        reasons = List.copyOf(reasons);
        if (plan.isPresent() != availability.isPresent()) {
            throw new IllegalArgumentException(
                    "availability must be present if and only if there is a plan");
        }
    }

    /** Returns whether there is a plan and everything that it needs. */
    public boolean yes() {
        return availability.isPresent() && availability.get().complete();
    }

    /** Returns the parts that the repair frees; empty for another goal. */
    public List<String> targets() {
        return request.goal() instanceof Goal.Free free ? free.targets() : List.of();
    }
}
