package reseat.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.device.DeviceFiles;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Planner;

class ReasonsTest {

    private final Device device =
            DeviceFiles.read(
                            Path.of("src/test/resources/reseat/plan/bonded.yaml"),
                            Optional.empty(),
                            List.of())
                    .device()
                    .orElseThrow();
    private final Plan plan =
            ((PlanResult.Found)
                            new Planner()
                                    .plan(PlanRequest.of(device, new Goal.Free(List.of("cell")))))
                    .plan();

    @Test
    void everyActOfABestPlanIsNeededDownToTheGoal() {
        for (int at = 0; at < plan.acts().size(); at++) {
            List<Reasons.Link> links = Reasons.of(plan, at).links();

            assertEquals(at, links.get(0).act());
            assertTrue(links.get(links.size() - 1).forAct().isEmpty(), "ends at the goal");
            for (int i = 1; i < links.size(); i++) {
                assertEquals(links.get(i - 1).forAct().getAsInt(), links.get(i).act(), "unbroken");
            }
        }
    }
}
