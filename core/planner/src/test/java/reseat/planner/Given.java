package reseat.planner;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Devices and plans that the tests of the rebuild start from. */
final class Given {

    private Given() {}

    static Device bonded() {
        return read("bonded");
    }

    /** A notebook that is turned over while parts hang and lie loose. */
    static Device turned() {
        return read("turned");
    }

    private static Device read(String name) {
        Reading reading =
                DeviceFiles.read(
                        Path.of("src/test/resources/reseat/planner/" + name + ".yaml"),
                        Optional.empty(),
                        List.of());
        return reading.device()
                .orElseThrow(() -> new AssertionError(reading.problems().toString()));
    }

    static Plan plan(Device device, Goal goal) {
        return plan(
                new PlanRequest(
                        device,
                        goal,
                        State.closed(),
                        Rules.none().permitRuin(device.parts().keySet()),
                        Effort.ofExpansions(50_000)));
    }

    static Plan plan(PlanRequest request) {
        PlanResult result = new Planner().plan(request);
        if (result instanceof PlanResult.Found found) {
            return found.plan();
        }
        throw new AssertionError(request.goal() + ": " + result);
    }

    /** The plan that takes the board of the bonded slate out: everything comes off. */
    static Plan boardOut() {
        return plan(bonded(), new Goal.Free(List.of("board")));
    }

    /** These acts, in this order, as a plan; the simulator says what they cost. */
    static Plan acts(Device device, Act... acts) {
        Verdict verdict = Simulator.simulate(device, State.closed(), List.of(acts));
        if (!verdict.allowed()) {
            throw new AssertionError(verdict.sentences().toString());
        }
        long ms = verdict.totalMs();
        PlanRequest request = PlanRequest.of(device, new Goal.Teardown());
        return new Plan(request, verdict.acts(), ms, ms, Plan.Ended.PROVED, 0, Planner::rebuild);
    }

    static Act release(String joint) {
        return new Act.Release(joint, "usual");
    }

    static Act move(String... parts) {
        return new Act.MoveParts(List.of(parts));
    }
}
