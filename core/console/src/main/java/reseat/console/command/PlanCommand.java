package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.console.sheet.PlanSheet;
import reseat.console.sheet.ShortSheet;
import reseat.console.sheet.Terminal;
import reseat.files.PlanJson;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.planner.Planner;
import reseat.sheet.Names;
import reseat.sheet.Sheet;
import reseat.spi.Output;
import reseat.spi.Plugins;
import reseat.text.TimeText;

/** Plans a repair and prints it. */
@Command(
        name = "plan",
        description = "Find the cheapest way to a goal and back, and print it as a work sheet.",
        customSynopsis = {
            "reseat plan FILE --free PART[,PART] [OPTIONS]",
            "       reseat plan FILE --reach JOINT [OPTIONS]",
            "       reseat plan FILE --all [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat plan samples/tansy/tansy.yaml --free cell",
            "  reseat plan samples/quill/quill.yaml --free fan,keyboard",
            "  reseat plan samples/quill/quill.yaml --free fan --forbid-tool spudger",
            "  reseat plan samples/quill/quill.yaml --free fan --json > plan.json",
            "  reseat plan samples/quill/quill.yaml --reach storage-plug --after plan.json:5",
            "  reseat plan samples/tansy/tansy.yaml --all --time 20s",
            "  reseat plan samples/tansy/tansy.yaml --free cell --output needs-csv",
            "  reseat plan samples/quill/quill.yaml --free fan --output needs-csv --into out",
            "",
            "A plan is proved optimal, or states how much better one could be.",
            "Ctrl-C stops the search and prints the best plan so far."
        })
final class PlanCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();
    @Mixin private GoalArgs goal = new GoalArgs();
    @Mixin private RuleArgs rules = new RuleArgs();
    @Mixin private StartArgs start = new StartArgs();
    @Mixin private EffortArgs effort = new EffortArgs();
    @Mixin private OutputArgs output = new OutputArgs();
    @Mixin private PluginArgs added = new PluginArgs();

    @Option(names = "--json", description = "Print the plan as JSON; see core/docs/plan-json.md.")
    private boolean json;

    @Option(names = "--teardown-only", description = "Print only the teardown.")
    private boolean teardownOnly;

    @Option(names = "--rebuild-only", description = "Print only the rebuild.")
    private boolean rebuildOnly;

    @Option(names = "--short", description = "Print the sheet on one page of 60 lines.")
    private boolean onePage;

    @Option(
            names = "--leave-open",
            description =
                    "The rebuild leaves open what was open at the start; otherwise it closes the"
                            + " unit whole.")
    private boolean leaveOpen;

    @Option(
            names = "--other",
            paramLabel = "N",
            description =
                    "Also list up to N alternatives, cheapest first: each leaves at least one"
                            + " part of the plan in place.")
    private int other;

    @Override
    public Integer call() throws BadInputException, IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (teardownOnly && rebuildOnly) {
            throw new BadInput("reseat: give --teardown-only or --rebuild-only, not both.");
        }
        if (onePage && json) {
            throw new BadInput("reseat: give --short or --json, not both.");
        }
        if (other < 0) {
            throw new BadInput("reseat: --other: found " + other + ", expected 0 or more.");
        }
        Plugins plugins = OurPlugins.get(err);
        Optional<Output> wanted = added.output(plugins);
        if (wanted.isPresent() && onePage) {
            throw new BadInput("reseat: give --short or --output, not both.");
        }
        if (wanted.isPresent() && json) {
            throw new BadInput("reseat: give --json or --output, not both.");
        }
        Device device = deviceArgs.read(added.costs(plugins), err, plugins);
        PlanRequest request =
                new PlanRequest(
                        device,
                        goal.goal(),
                        start.start(device),
                        rules.rules(),
                        effort.effort(),
                        leaveOpen);
        Terminal terminal = output.terminal();
        try (Thinking thinking = new Thinking(err, terminal.interactive())) {
            Plan plan = Planned.plan(request, thinking);
            List<Plan> others = others(plan, thinking);
            thinking.done();
            if (wanted.isPresent()) {
                added.write(wanted.get(), plan, out);
            } else if (json) {
                out.print(PlanJson.write(plan));
            } else {
                Sheet sheet = Sheet.of(plan, extent());
                out.print(
                        onePage
                                ? ShortSheet.render(sheet, terminal)
                                : PlanSheet.render(sheet, terminal));
            }
            PrintWriter to = json || wanted.isPresent() ? err : out;
            if (other > 0) {
                print(plan, others, to);
            }
            out.flush();
            err.flush();
        }
        return 0;
    }

    private Sheet.Extent extent() {
        if (teardownOnly) {
            return Sheet.Extent.TEARDOWN;
        }
        return rebuildOnly ? Sheet.Extent.REBUILD : Sheet.Extent.WHOLE;
    }

    private List<Plan> others(Plan plan, Thinking thinking) {
        if (other == 0) {
            return List.of();
        }
        return new Planner().otherRoutes(plan, other, thinking);
    }

    private void print(Plan plan, List<Plan> others, PrintWriter to) {
        Names names = new Names(plan.request().device());
        to.println();
        to.println(
                others.isEmpty()
                        ? "No alternative: every part that comes off has to."
                        : "Alternatives, by what comes off:");
        for (Plan each : others) {
            List<String> stays = new ArrayList<>(plan.movedParts());
            stays.removeAll(each.movedParts());
            List<String> more = new ArrayList<>(each.movedParts());
            more.removeAll(plan.movedParts());
            to.println(
                    "  "
                            + TimeText.difference(each.totalMs() - plan.totalMs())
                            + ": leaves "
                            + names.parts(stays)
                            + " in place"
                            + (more.isEmpty() ? "" : ", takes off " + names.parts(more))
                            + (each.proved() ? "" : " (not proved)")
                            + "  --forbid-part "
                            + String.join(",", each.request().rules().forbiddenParts()));
        }
    }
}
