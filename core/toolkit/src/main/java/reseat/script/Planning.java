package reseat.script;

import java.util.List;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Problem;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Plans that may be handed out: each one has passed the simulator. */
final class Planning {

    private Planning() {}

    static Plan plan(PlanRequest request) {
        PlanResult result = new Planner().plan(request);
        if (result instanceof PlanResult.Found found) {
            return checked(found.plan());
        }
        if (result instanceof PlanResult.Impossible impossible) {
            throw new BenchException(
                    "There is no way to do it. " + String.join("; ", impossible.reasons()) + ".");
        }
        if (result instanceof PlanResult.Refused refused) {
            throw new BenchException(
                    String.join(
                            "\n",
                            refused.problems().stream()
                                    .map(Problem::message)
                                    .map(message -> message + ".")
                                    .toList()));
        }
        throw new BenchException(
                "No plan was found before the thinking ended ("
                        + ((PlanResult.Unfinished) result).ended()
                        + ").");
    }

    private static Plan checked(Plan plan) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        Verdict verdict =
                Simulator.judge(
                        request.device(), request.start(), request.goal(), request.rules(), acts);
        if (!verdict.valid() || verdict.totalMs() != plan.totalMs()) {
            throw new IllegalStateException(
                    "planner and simulator disagree, so there is no plan: "
                            + String.join(" ", verdict.sentences()));
        }
        return plan;
    }
}
