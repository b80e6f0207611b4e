package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.PlanFile;
import reseat.files.PlanFiles;
import reseat.files.PlanJson;
import reseat.files.Reading;
import reseat.given.Samples;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Advice;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;
import reseat.simulate.Note;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Every single part of every sample, in every variant: out and back. */
class SampleRepairsTest {

    /** Some plan is enough here: whether it is the best is the business of other tests. */
    private static final long QUICK = 300;

    private static final long LONG = 30_000;

    @TempDir private Path folder;

    @TestFactory
    List<DynamicTest> everyPartComesOutAndGoesBack() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : Samples.devices()) {
            Reading base = DeviceFiles.read(file, Optional.empty(), Samples.families());
            List<Optional<String>> variants = new ArrayList<>(List.of(Optional.empty()));
            base.variants().forEach(variant -> variants.add(Optional.of(variant)));
            for (Optional<String> variant : variants) {
                Reading reading = DeviceFiles.read(file, variant, Samples.families());
                if (reading.device().isEmpty()) {
                    throw new AssertionError(reading.problems().toString());
                }
                Device device = reading.device().get();
                for (String part : device.parts().keySet()) {
                    if (!part.equals(device.base())) {
                        tests.add(
                                DynamicTest.dynamicTest(
                                        device + " " + part, () -> outAndBack(device, part)));
                    }
                }
            }
        }
        return tests;
    }

    private void outAndBack(Device device, String part) throws Exception {
        PlanRequest request =
                new PlanRequest(
                        device,
                        new Goal.Free(List.of(part)),
                        State.closed(),
                        Rules.none().permitRuin(device.parts().keySet()),
                        Effort.ofExpansions(QUICK));
        PlanResult result = new Planner().plan(request);
        if (result instanceof PlanResult.Unfinished) {
            result = new Planner().plan(request.with(Effort.ofExpansions(LONG)));
        }
        assertTrue(result instanceof PlanResult.Found, "" + result);
        Plan plan = ((PlanResult.Found) result).plan();
        Verdict verdict = judged(plan);
        Rebuild rebuild = plan.rebuild();
        assertTrue(Tally.of(plan, rebuild).closes());
        assertEquals(plan.acts().size(), rebuild.acts().size());
        makesNothingLive(device, rebuild);
        agreesOnTurning(verdict, PlanNotes.of(plan, rebuild));
        comesBackFromItsFile(plan);
    }

    private static Verdict judged(Plan plan) {
        List<Act> acts = plan.acts().stream().map(CostedAct::act).toList();
        PlanRequest request = plan.request();
        Verdict verdict =
                Simulator.judge(
                        request.device(), request.start(), request.goal(), request.rules(), acts);
        assertEquals(List.of(), verdict.sentences());
        assertEquals(plan.totalMs(), verdict.totalMs());
        return verdict;
    }

    private static void makesNothingLive(Device device, Rebuild rebuild) {
        Set<String> open = new java.util.LinkedHashSet<>();
        rebuild.acts().stream()
                .filter(act -> act.kind().isUndoing())
                .forEach(act -> open.addAll(act.joints()));
        for (RebuildAct act : rebuild.acts()) {
            if (act.kind() == RebuildAct.Kind.MAKE) {
                String made = act.joints().get(0);
                open.remove(made);
                for (String supply : device.power().needs(device.joint(made))) {
                    assertTrue(
                            open.stream().anyMatch(id -> device.joint(id).cuts().contains(supply)),
                            made);
                }
            }
        }
    }

    /** The notes of the plan and those of the simulator come from different code. */
    private static void agreesOnTurning(Verdict verdict, PlanNotes notes) {
        for (int at = 0; at < verdict.steps().size(); at++) {
            List<Note.Kind> judged =
                    verdict.steps().get(at).notes().stream().map(Note::kind).toList();
            List<Advice.Kind> planned =
                    notes.teardown().get(at).stream().map(Advice::kind).toList();
            assertEquals(
                    judged.contains(Note.Kind.TURNED_WHILE_HANGING),
                    planned.contains(Advice.Kind.HANGING));
            assertEquals(
                    judged.contains(Note.Kind.TURNED_WITH_LOOSE_SCREWS),
                    planned.contains(Advice.Kind.LOOSE_SCREWS));
        }
    }

    private void comesBackFromItsFile(Plan plan) throws Exception {
        Path file = folder.resolve("plan.json");
        write(file, PlanJson.write(plan));
        PlanFile read = PlanFiles.readPlan(file);
        assertEquals(plan.request().goal(), read.goal().orElseThrow());
        assertEquals(plan.request().start(), read.start());
        assertEquals(plan.request().rules(), read.rules());
        assertEquals(plan.acts().stream().map(CostedAct::act).toList(), read.acts());
        assertEquals(plan.totalMs(), read.totalMs().orElseThrow());
    }

    private static void write(Path file, String text) throws IOException {
        Files.writeString(file, text);
    }
}
