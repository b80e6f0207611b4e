package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.check.Reasons;
import reseat.console.sheet.Names;
import reseat.console.sheet.Terminal;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Rules;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;

/** Says why something must come off. */
@Command(
        name = "why",
        description = "Say why a part must come off or a joint be released: the chain of facts.",
        customSynopsis =
                "reseat why FILE THING --free PART[,PART] | --reach JOINT | --all [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat why quill.yaml storage-door --free fan",
            "  reseat why quill.yaml release:cell-plug/usual --free mainboard",
            "",
            "Each line names what cannot be done without the line before, down to the goal.",
            "The last line tells what it costs to do without it, or that there is no other way."
        })
final class WhyCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(index = "1", paramLabel = "THING", description = "Id of a part, a joint or an act.")
    private String thing = "";

    @Mixin private GoalArgs goal = new GoalArgs();
    @Mixin private RuleArgs rules = new RuleArgs();
    @Mixin private StartArgs start = new StartArgs();
    @Mixin private EffortArgs effort = new EffortArgs();

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Device device = deviceArgs.read(err);
        known(device);
        PlanRequest request =
                new PlanRequest(
                        device, goal.goal(), start.start(device), rules.rules(), effort.effort());
        try (Thinking thinking = new Thinking(err, Terminal.detect().interactive())) {
            Plan plan = Planned.plan(request, thinking);
            OptionalInt at = find(plan);
            thinking.done();
            if (at.isEmpty()) {
                out.println("It need not: the plan leaves " + thing + " as it is.");
            } else {
                chain(plan, at.getAsInt(), out);
                without(plan, thinking, out);
            }
            out.flush();
        }
        return 0;
    }

    private void known(Device device) {
        boolean act = thing.contains(":");
        if (!act && !device.parts().containsKey(thing) && !device.joints().containsKey(thing)) {
            throw new BadInput(
                    "reseat: "
                            + device.id()
                            + " has no part and no joint \""
                            + thing
                            + "\"; 'reseat facts' lists them.");
        }
    }

    private OptionalInt find(Plan plan) {
        for (int at = 0; at < plan.acts().size(); at++) {
            Act act = plan.acts().get(at).act();
            boolean match =
                    act.id().equals(thing)
                            || (act instanceof Act.MoveParts move && move.parts().contains(thing))
                            || (act instanceof Act.Release release
                                    && release.joint().equals(thing));
            if (match) {
                return OptionalInt.of(at);
            }
        }
        return OptionalInt.empty();
    }

    private void chain(Plan plan, int at, PrintWriter out) {
        List<CostedAct> acts = plan.acts();
        out.println("Act " + (at + 1) + " of " + acts.size() + ": " + acts.get(at).act().id());
        Reasons reasons = Reasons.of(plan, at);
        if (reasons.links().isEmpty()) {
            out.println("  The plan holds without it.");
        }
        for (Reasons.Link link : reasons.links()) {
            out.println("  without it: " + link.why());
            if (link.forAct().isPresent()) {
                int next = link.forAct().getAsInt();
                out.println("needed for act " + (next + 1) + ": " + acts.get(next).act().id());
            } else {
                out.println(
                        "needed for the goal: "
                                + new Names(plan.request().device()).goal(plan.request().goal()));
            }
        }
    }

    private void without(Plan plan, Thinking thinking, PrintWriter out) {
        PlanRequest request = plan.request();
        Rules forbid = request.rules();
        Device device = request.device();
        if (thing.startsWith("prepare:")) {
            return;
        }
        forbid =
                device.parts().containsKey(thing)
                        ? forbid.forbidParts(List.of(thing))
                        : device.joints().containsKey(thing)
                                ? forbid.forbidJoints(List.of(thing))
                                : forbid.forbidActs(List.of(thing));
        PlanResult other = new Planner().plan(request.with(forbid), thinking);
        thinking.done();
        if (other instanceof PlanResult.Found found) {
            Plan cheapest = Planned.checked(found.plan());
            out.println(
                    "It can be done without, for "
                            + plain(Names.difference(cheapest.totalMs() - plan.totalMs()))
                            + (plan.proved() && cheapest.proved() ? "." : " (not proved)."));
        } else if (other instanceof PlanResult.Unfinished) {
            out.println("Whether it can be done without was not settled in the time allowed.");
        } else {
            out.println("Every way needs it.");
        }
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
