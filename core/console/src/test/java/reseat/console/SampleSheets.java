package reseat.console;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.console.load.OurPlugins;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;

/**
 * Plans for the parts of every sample in every variant, and for taking all of it apart: for every
 * third goal, others in each variant, or with {@code -Dreseat.all=true} for every goal.
 */
final class SampleSheets {

    /** Whether every goal is planned for. */
    static final boolean ALL = Boolean.getBoolean("reseat.all");

    private static final int USUAL = 3;
    private static final long EFFORT = 1_000;
    private static final Path SAMPLES = Path.of("../../samples");

    private SampleSheets() {}

    /** Returns the plans by device, variant and target; where no plan is found there is none. */
    static Map<String, Plan> plans() throws Exception {
        Map<String, Plan> plans = new LinkedHashMap<>();
        for (String name : List.of("bramble", "quill", "sorrel", "tansy")) {
            Path file = SAMPLES.resolve(name).resolve(name + ".yaml");
            Reading base = DeviceFiles.read(file, Optional.empty(), families());
            List<Optional<String>> variants = new ArrayList<>(List.of(Optional.empty()));
            base.variants().forEach(variant -> variants.add(Optional.of(variant)));
            for (Optional<String> variant : variants) {
                Device device = DeviceFiles.read(file, variant, families()).orThrow();
                List<Goal> goals = goals(device);
                int step = ALL ? 1 : USUAL;
                for (int i = variants.indexOf(variant) % step; i < goals.size(); i += step) {
                    Goal goal = goals.get(i);
                    plan(device, goal).ifPresent(p -> plans.put(device + " " + goal, p));
                }
            }
        }
        return plans;
    }

    private static List<DeviceFamily> families() {
        return OurPlugins.quietly().families();
    }

    private static List<Goal> goals(Device device) {
        List<Goal> goals = new ArrayList<>();
        for (String part : device.parts().keySet()) {
            if (!part.equals(device.base())) {
                goals.add(new Goal.Free(List.of(part)));
            }
        }
        goals.add(new Goal.Teardown());
        return goals;
    }

    private static Optional<Plan> plan(Device device, Goal goal) {
        PlanRequest request =
                new PlanRequest(
                        device,
                        goal,
                        State.closed(),
                        Rules.none().permitRuin(device.parts().keySet()),
                        Effort.ofExpansions(EFFORT));
        return new Planner().plan(request) instanceof PlanResult.Found found
                ? Optional.of(found.plan())
                : Optional.empty();
    }
}
