package reseat.planner;

import java.util.ArrayList;
import java.util.List;
import reseat.internal.planner.Planning;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Plans;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Finds the cheapest way to a goal: what leaves together, by which way, and in which order. Each
 * plan is verified by the simulator before it is returned.
 *
 * <p>Stateless; safe to share between threads. With a limit on expansions the same request gives
 * the same plan; with a time limit it may not. The time grows exponentially in the worst case; the
 * result states how far a plan may be from the optimum.
 */
public final class Planner implements Plans {

    /** Creates a planner. */
    public Planner() {}

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        List<Problem> problems = request.problems();
        if (!problems.isEmpty()) {
            return new PlanResult.Refused(problems);
        }
        List<String> hopeless = hopeless(request);
        if (!hopeless.isEmpty()) {
            return new PlanResult.Impossible(hopeless);
        }
        PlanResult result = Planning.plan(request, watch);
        result.best().ifPresent(Planner::requireValid);
        return result;
    }

    /** Returns why a valid request is impossible: it requires what is already released. */
    private static List<String> hopeless(PlanRequest request) {
        List<String> reasons = new ArrayList<>();
        for (String joint : request.start().released()) {
            if (request.goal().equals(new Goal.Reach(joint))) {
                reasons.add("joint " + joint + " is already released, so it cannot be reached");
            }
            for (String way : request.device().joint(joint).ways().keySet()) {
                String id = new Act.Release(joint, way).id();
                if (request.rules().requiredActs().contains(id)) {
                    reasons.add(id + " is required, but " + joint + " is already released");
                }
            }
        }
        return reasons;
    }

    /**
     * Verifies a plan with the simulator.
     *
     * @throws IllegalStateException if the simulator disagrees: one of the two is wrong, and it is
     *     unknown which
     */
    static void requireValid(Plan plan) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        Verdict verdict =
                Simulator.judge(
                        request.device(), request.start(), request.goal(), request.rules(), acts);
        if (!verdict.valid()) {
            throw new IllegalStateException(
                    "planner and simulator disagree, so there is no plan: "
                            + String.join(" ", verdict.sentences()));
        }
        if (verdict.totalMs() != plan.totalMs() || !verdict.acts().equals(plan.acts())) {
            throw new IllegalStateException(
                    "planner and simulator disagree on the cost, so there is no plan: "
                            + plan.totalMs()
                            + " ms against "
                            + verdict.totalMs()
                            + " ms");
        }
    }
}
