package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.sheet.Terminal;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.model.BadInputException;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.PlanRequest;
import reseat.planner.PlanDifference;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;
import reseat.text.TimeText;

/** Compares two plans, or the plans of two variants, act by act. */
@Command(
        name = "compare",
        description = "Compare two plans, or one repair on two variants, act by act.",
        customSynopsis = {
            "reseat compare FILE PLAN PLAN [OPTIONS]",
            "       reseat compare FILE --variants ID,ID --free PART | --reach JOINT | --all"
                    + " [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat compare samples/quill/quill.yaml plan.json other.json",
            "  reseat compare samples/sorrel/sorrel.yaml --variants base,lte --free cell",
            "",
            "Two plans are two files as plan --json prints them, or two lists of act ids.",
            "The variant base is the device without any variant. Each line begins with",
            "a space if in both, - if only in the first, + if only in the second."
        })
final class CompareCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(
            index = "1..2",
            arity = "0..2",
            hideParamSyntax = true,
            paramLabel = "PLAN",
            description = "Two plans as plan --json prints them, or lists of act ids.")
    private List<Path> plans = new ArrayList<>();

    @Option(
            names = "--variants",
            paramLabel = "ID",
            split = ",",
            description = "Two variants to plan the same repair for.")
    private List<String> variants = new ArrayList<>();

    @Mixin private GoalArgs goal = new GoalArgs();
    @Mixin private RuleArgs rules = new RuleArgs();
    @Mixin private EffortArgs effort = new EffortArgs();

    /** One side of the comparison. */
    private record Side(String title, List<CostedAct> acts) {
        long totalMs() {
            return acts.stream().mapToLong(CostedAct::costMs).sum();
        }
    }

    @Override
    public Integer call() throws BadInputException {
        List<Side> sides = new ArrayList<>();
        if (plans.size() == 2 && variants.isEmpty()) {
            for (Path path : plans) {
                sides.add(read(path));
            }
        } else if (plans.isEmpty() && variants.size() == 2) {
            for (String variant : variants) {
                sides.add(plan(variant));
            }
        } else {
            throw new BadInput("reseat: give two plans, or --variants with two ids and a goal.");
        }
        print(sides.get(0), sides.get(1));
        return 0;
    }

    private Side read(Path path) throws BadInputException {
        PlanFile file = PlanFiles.readPlan(path);
        Device device =
                deviceArgs.read(
                        deviceArgs.variant().or(file::variant), spec.commandLine().getErr());
        Verdict verdict =
                Simulator.simulate(device, StartArgs.checked(device, file.start()), file.acts());
        verdict.refusal()
                .ifPresent(
                        refusal -> {
                            throw new BadInput(
                                    path
                                            + ": act "
                                            + (refusal.index() + 1)
                                            + " does not hold. "
                                            + refusal.why());
                        });
        return new Side(path.toString(), verdict.acts());
    }

    private Side plan(String variant) {
        PrintWriter err = spec.commandLine().getErr();
        Device device =
                deviceArgs.read(
                        variant.equals("base") ? Optional.empty() : Optional.of(variant), err);
        PlanRequest request =
                PlanRequest.of(device, goal.goal()).with(rules.rules()).with(effort.effort());
        try (Thinking thinking = new Thinking(err, Terminal.detect().interactive())) {
            return new Side(variant, Planned.plan(request, thinking).acts());
        }
    }

    private void print(Side first, Side second) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("--- " + first.title + ": " + cost(first));
        out.println("+++ " + second.title + ": " + cost(second));
        PlanDifference difference = PlanDifference.of(first.acts, second.acts);
        if (difference.isEmpty()) {
            out.println("The same acts in the same order.");
            return;
        }
        for (PlanDifference.Line line : difference.lines()) {
            String sign =
                    switch (line.in()) {
                        case BOTH -> " ";
                        case FIRST_ALONE -> "-";
                        case SECOND_ALONE -> "+";
                    };
            long change = line.secondMs() - line.firstMs();
            out.println(
                    sign
                            + " "
                            + line.id()
                            + (change == 0 ? "" : "  " + TimeText.difference(change)));
        }
        out.println(
                "Second against first: " + TimeText.difference(second.totalMs() - first.totalMs()));
    }

    private static String cost(Side side) {
        return side.acts.size()
                + " acts, "
                + TimeText.of(side.totalMs())
                + " ("
                + side.totalMs()
                + " ms)";
    }
}
