package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.graph.StepDot;
import reseat.console.graph.StepText;
import reseat.graph.StepGraph;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Problem;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.PlanRequest;

/** Prints the step graph of a device. */
@Command(
        name = "graph",
        description = "Print the step graph, for a goal or in full: what must come before what.",
        customSynopsis = "reseat graph FILE [--free PART[,PART] | --reach JOINT | --all] [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat graph samples/quill/quill.yaml --free fan",
            "  reseat graph samples/quill/quill.yaml --reach cell-plug --dot > cell-plug.dot",
            "  reseat graph samples/tansy/tansy.yaml",
            "",
            "With a goal it prints what every way to it needs, or why there is none. Without",
            "one it prints everything, and what can leave together. Graphviz draws",
            "the output of --dot: dot -Tsvg cell-plug.dot -o cell-plug.svg"
        })
final class GraphCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();
    @Mixin private GoalArgs goal = new GoalArgs();
    @Mixin private RuleArgs rules = new RuleArgs();
    @Mixin private StartArgs start = new StartArgs();

    @Option(names = "--dot", description = "Print the graph in DOT, the language of Graphviz.")
    private boolean dot;

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        Device device = deviceArgs.read(spec.commandLine().getErr());
        Rules wanted = rules.rules();
        State stands = start.start(device);
        Goal asked = goal.given() ? goal.goal() : new Goal.Teardown();
        List<Problem> problems = PlanRequest.of(device, asked).from(stands).with(wanted).problems();
        if (!problems.isEmpty()) {
            throw new BadInput(
                    problems.stream()
                            .map(problem -> "reseat: " + problem.message() + ".")
                            .collect(Collectors.joining("\n")));
        }
        StepGraph graph = StepGraph.of(device, stands, wanted);
        if (goal.given()) {
            graph = graph.towards(asked);
        }
        out.print(dot ? StepDot.of(graph) : StepText.of(graph));
        return 0;
    }
}
