package reseat.console.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.device.DeviceFiles;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;

/** No plan leaves the house that the simulator has not passed. */
class PlannedTest {

    private static final Path FILE = Path.of("src/test/resources/reseat/console/bonded.yaml");

    private final Device device =
            DeviceFiles.read(FILE, Optional.empty(), List.of()).device().orElseThrow();
    private final Plan plan =
            Planned.plan(PlanRequest.of(device, new Goal.Free(List.of("cell"))), Watch.NONE);

    @Test
    void passesAPlanThatHolds() {
        assertSame(plan, Planned.checked(plan));
    }

    @Test
    void stopsAPlanThatLacksAnAct() {
        List<CostedAct> acts = new ArrayList<>(plan.acts());
        acts.remove(acts.size() - 2);

        assertStopped(with(acts, plan.totalMs()), "so no plan is printed: ");
    }

    @Test
    void stopsAPlanThatIsCheaperThanItsActs() {
        assertStopped(with(plan.acts(), plan.totalMs() - 1), "disagree on the cost");
    }

    private static void assertStopped(Plan wrong, String message) {
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> Planned.checked(wrong));
        assertTrue(String.valueOf(e.getMessage()).contains(message), e::getMessage);
    }

    private Plan with(List<CostedAct> acts, long totalMs) {
        assertEquals(Plan.Ended.PROVED, plan.ended());
        return new Plan(plan.request(), acts, totalMs, 0, Plan.Ended.TIME, 1);
    }
}
