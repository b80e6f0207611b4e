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
import reseat.console.sheet.Names;
import reseat.console.sheet.Terminal;
import reseat.device.PlanFile;
import reseat.device.PlanFiles;
import reseat.model.BadInputException;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.PlanDifference;
import reseat.plan.PlanRequest;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Compares two plans, or the plans of two variants, act by act. */
@Command(
        name = "compare",
        description = "Compare two plans, or one repair on two variants, act by act.",
        customSynopsis = {
            "reseat compare FILE PLAN PLAN [OPTIONS]",
            "       reseat compare FILE --variants ID,ID --free PART | --reach JOINT | --all [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat compare quill.yaml before.json after.json",
            "  reseat compare slate.yaml --variants base,lte --free cell",
            "",
            "base stands for the device without a variant. Lines begin with a blank (in both),",
            "- (in the first alone) or + (in the second alone)."
        })
final class CompareCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(
            index = "1..2",
            arity = "0..2",
            paramLabel = "PLAN",
            hideParamSyntax = true,
            description = "Two plans or lists of act ids.")
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
        out.println("--- " + first.title + ", " + first.totalMs() + " ms");
        out.println("+++ " + second.title + ", " + second.totalMs() + " ms");
        PlanDifference difference = PlanDifference.of(first.acts, second.acts);
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
                            + (change == 0
                                    ? ""
                                    : "  " + Names.difference(change).replace('\u00a0', ' ')));
        }
        out.println(
                difference.isEmpty()
                        ? "The same acts in the same order."
                        : "Second against first: "
                                + Names.difference(second.totalMs() - first.totalMs())
                                        .replace('\u00a0', ' '));
    }
}
