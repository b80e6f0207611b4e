package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.sheet.Terminal;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.planner.Explanation;
import reseat.planner.Necessity;
import reseat.planner.Planner;
import reseat.planner.Why;
import reseat.sheet.Names;
import reseat.text.TimeText;

/** Explains why something must come off. */
@Command(
        name = "why",
        description = "Explain why a part must come off or a joint must be released.",
        customSynopsis =
                "reseat why FILE THING --free PART[,PART] | --reach JOINT | --all [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat why samples/quill/quill.yaml storage-door --free fan",
            "  reseat why samples/sorrel/sorrel.yaml release:display-bond/cut --free cell",
            "",
            "Each line gives a reason and leads to the next, down to the goal.",
            "The last line gives the extra cost of doing without it, or says that there is no way."
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
        Terminal shown = Terminal.detect();
        try (Thinking thinking = new Thinking(err, shown.interactive())) {
            Plan plan = Planned.plan(request, thinking);
            OptionalInt at = find(plan);
            thinking.done();
            if (at.isEmpty()) {
                out.println("It need not: the plan leaves " + thing + " as it is.");
            } else {
                List<CostedAct> acts = plan.acts();
                int act = at.getAsInt();
                out.println(
                        shown.fitted(
                                "Act "
                                        + (act + 1)
                                        + " of "
                                        + acts.size()
                                        + ": "
                                        + told(acts.get(act))));
                Explanation explanation = Why.of(plan, new Planner()).explain(thing, thinking);
                thinking.done();
                explanation.links().forEach(link -> out.println(shown.fitted("  " + link)));
                out.println("Goal: " + new Names(device).goal(request.goal()));
                out.println(shown.fitted(necessity(explanation.necessity())));
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

    private static String necessity(Necessity necessity) {
        if (necessity instanceof Necessity.Avoidable avoidable) {
            return "It can be done without, for "
                    + TimeText.difference(avoidable.extraMs())
                    + (avoidable.proved() ? "." : " (not proved).");
        }
        return necessity.sentence();
    }

    /** An id also names what leaves together, but a long one does not fit on the line. */
    private String told(CostedAct act) {
        if (!(act.act() instanceof Act.MoveParts move) || move.parts().size() < 4) {
            return act.act().id();
        }
        String lead = move.parts().contains(thing) ? thing : move.parts().get(0);
        return "move "
                + lead
                + " together with "
                + (move.parts().size() - 1)
                + " others: "
                + move.parts().stream()
                        .filter(part -> !part.equals(lead))
                        .collect(Collectors.joining(", "));
    }
}
