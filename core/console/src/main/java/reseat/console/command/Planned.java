package reseat.console.command;

import java.util.stream.Collectors;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.sheet.Names;
import reseat.text.TimeText;

/** Plans for commands: a plan, or a failure with the reason and the remedy. */
final class Planned {

    private Planned() {}

    /** Plans, or fails the command with the obstacle. */
    static Plan plan(PlanRequest request, Watch watch) {
        PlanResult result = new Planner().plan(request, watch);
        return result.best().orElseThrow(() -> new BadInput(failure(request, result)));
    }

    /** Returns why there is no plan, as a message for the user. */
    static String failure(PlanRequest request, PlanResult result) {
        if (result instanceof PlanResult.Impossible) {
            return "reseat: there is no way to do it. " + String.join("; ", result.reasons()) + ".";
        }
        if (result instanceof PlanResult.Refused) {
            return result.reasons().stream()
                    .map(message -> "reseat: " + message + ".")
                    .collect(Collectors.joining("\n"));
        }
        PlanResult.Unfinished unfinished = (PlanResult.Unfinished) result;
        return "reseat: "
                + new Names(request.device()).goal(request.goal())
                + ": no plan was found before the "
                + switch (unfinished.ended()) {
                    case TIME -> "time limit was reached; raise it with --time";
                    case EXPANSIONS -> "effort limit was reached; raise it with --effort";
                    case MEMORY -> "memory ran out; give more with RESEAT_JAVA_OPTS=-Xmx4g";
                    default -> "search was cancelled";
                }
                + ". No plan costs less than "
                + TimeText.of(unfinished.lowerBoundMs())
                + ".";
    }
}
