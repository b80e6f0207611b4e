package reseat.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import reseat.device.DeviceFiles;
import reseat.device.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** Devices and plans that the tests of the rebuild start from. */
final class Given {

    private Given() {}

    static Device bonded() {
        Reading reading =
                DeviceFiles.read(
                        Path.of("src/test/resources/reseat/plan/bonded.yaml"),
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
}
