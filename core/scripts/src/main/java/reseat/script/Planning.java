package reseat.script;

import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;

/** Plans for scripts: a plan, or an exception that explains why there is none. */
final class Planning {

    private Planning() {}

    static Plan plan(PlanRequest request) {
        PlanResult result = new Planner().plan(request);
        return result.best().orElseThrow(() -> new BenchException(why(result)));
    }

    private static String why(PlanResult result) {
        if (result instanceof PlanResult.Refused) {
            return String.join(".\n", result.reasons()) + ".";
        }
        String reasons = String.join("; ", result.reasons()) + ".";
        return result instanceof PlanResult.Impossible
                ? "There is no way to do it. " + reasons
                : "N" + reasons.substring(1);
    }
}
