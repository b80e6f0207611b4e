package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.State;
import reseat.simulate.Refusal;
import reseat.simulate.Simulator;
import reseat.simulate.Step;
import reseat.simulate.Verdict;
import reseat.text.TimeText;

/** Simulates the acts of a file and reports whether they hold. */
@Command(
        name = "judge",
        description = "Simulate a plan, and report whether it holds or which act does not.",
        customSynopsis = "reseat judge FILE PLAN [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat judge samples/quill/quill.yaml plan.json",
            "  reseat judge samples/tansy/tansy.yaml acts.yaml",
            "",
            "acts.yaml is a list with lines such as: - release:cover-screw.a/usual",
            "The goal is the one in the plan file, unless one is given here.",
            "The judge shares no code with the planner. Exit code 1: the plan does not hold."
        })
final class JudgeCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();
    @Mixin private GoalArgs goalArgs = new GoalArgs();

    @Parameters(
            index = "1",
            paramLabel = "PLAN",
            description = "Plan as plan --json prints it, or a list of act ids.")
    private Path planPath = Path.of("");

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        PlanFile plan = PlanFiles.readPlan(planPath);
        Device device =
                deviceArgs.read(
                        deviceArgs.variant().or(plan::variant), spec.commandLine().getErr());
        requireSameDevice(plan, device);
        Verdict verdict = judge(device, plan);
        List<String> wrong = wrong(plan, verdict);
        for (int at = 0; at < verdict.steps().size(); at++) {
            Step step = verdict.steps().get(at);
            for (var note : step.notes()) {
                out.println("note: act " + (at + 1) + ": " + note.sentence());
            }
        }
        if (wrong.isEmpty()) {
            out.println(
                    "valid: "
                            + verdict.steps().size()
                            + " acts, "
                            + TimeText.of(verdict.totalMs())
                            + " ("
                            + verdict.totalMs()
                            + " ms)");
            return 0;
        }
        wrong.forEach(sentence -> out.println("wrong: " + sentence));
        return 1;
    }

    private void requireSameDevice(PlanFile plan, Device device) {
        plan.device()
                .filter(id -> !id.equals(device.id()))
                .ifPresent(
                        id -> {
                            throw new BadInput(
                                    planPath
                                            + ": this is a plan for "
                                            + id
                                            + ", and the device is "
                                            + device.id()
                                            + ".");
                        });
    }

    private static List<String> wrong(PlanFile plan, Verdict verdict) {
        List<String> wrong = new ArrayList<>(verdict.sentences());
        if (verdict.refusal().isPresent()) {
            // A goal missed because the plan broke off is not a second error.
            verdict.goalMissing().ifPresent(wrong::remove);
            Refusal refusal = verdict.refusal().get();
            wrong.set(
                    0,
                    "Act "
                            + (refusal.index() + 1)
                            + ", "
                            + plan.acts().get(refusal.index()).id()
                            + ": "
                            + refusal.why());
        }
        if (wrong.isEmpty()
                && plan.totalMs().isPresent()
                && plan.totalMs().getAsLong() != verdict.totalMs()) {
            wrong.add(
                    "The file states a cost of "
                            + plan.totalMs().getAsLong()
                            + " ms; its acts cost "
                            + verdict.totalMs()
                            + " ms.");
        }
        return wrong;
    }

    private Verdict judge(Device device, PlanFile plan) {
        State start = StartArgs.checked(device, plan.start());
        try {
            if (goalArgs.given() || plan.goal().isPresent()) {
                Goal goal = goalArgs.given() ? goalArgs.goal() : plan.goal().orElseThrow();
                return Simulator.judge(device, start, goal, plan.rules(), plan.acts());
            }
            return Simulator.simulate(device, start, plan.acts());
        } catch (IllegalArgumentException e) {
            throw new BadInput(planPath + ": " + e.getMessage());
        }
    }
}
