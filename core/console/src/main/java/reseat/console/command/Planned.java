package reseat.console.command;

import java.util.List;
import java.util.stream.Collectors;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Problem;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;
import reseat.plan.Watch;
import reseat.sheet.Names;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;
import reseat.text.TimeText;

/** Plans that may be shown: each one has passed the simulator. */
final class Planned {

    private Planned() {}

    /** Plans, or ends the command with what stands in the way. */
    static Plan plan(PlanRequest request, Watch watch) {
        PlanResult result = new Planner().plan(request, watch);
        if (result instanceof PlanResult.Found found) {
            return checked(found.plan());
        }
        throw new BadInput(failure(request, result));
    }

    /** Returns why there is no plan, as lines for the user. */
    static String failure(PlanRequest request, PlanResult result) {
        if (result instanceof PlanResult.Impossible impossible) {
            return "reseat: there is no way to do it. "
                    + String.join("; ", impossible.reasons())
                    + ".";
        }
        if (result instanceof PlanResult.Refused refused) {
            return refused.problems().stream()
                    .map(Problem::message)
                    .map(message -> "reseat: " + message + ".")
                    .collect(Collectors.joining("\n"));
        }
        PlanResult.Unfinished unfinished = (PlanResult.Unfinished) result;
        return "reseat: "
                + new Names(request.device()).goal(request.goal())
                + ": no plan was found before the "
                + switch (unfinished.ended()) {
                    case TIME -> "time to think was up; give more with --time";
                    case EXPANSIONS -> "effort was used up; give more with --effort";
                    case MEMORY -> "memory was used up; give more with RESEAT_JAVA_OPTS=-Xmx4g";
                    default -> "search was cancelled";
                }
                + ". No plan costs less than "
                + TimeText.of(unfinished.lowerBoundMs())
                + ".";
    }

    /**
     * Returns a plan that the simulator agrees with.
     *
     * @throws IllegalStateException if it does not: one of the two is wrong, and we do not know
     *     which
     */
    static Plan checked(Plan plan) {
        PlanRequest request = plan.request();
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        Verdict verdict =
                Simulator.judge(
                        request.device(), request.start(), request.goal(), request.rules(), acts);
        if (!verdict.valid()) {
            throw new IllegalStateException(
                    "planner and simulator disagree, so no plan is printed: "
                            + String.join(" ", verdict.sentences()));
        }
        if (verdict.totalMs() != plan.totalMs() || !verdict.acts().equals(plan.acts())) {
            throw new IllegalStateException(
                    "planner and simulator disagree on the cost, so no plan is printed: "
                            + plan.totalMs()
                            + " ms against "
                            + verdict.totalMs()
                            + " ms");
        }
        return plan;
    }
}
