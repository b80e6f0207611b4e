package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.model.CostedAct;
import reseat.plan.Plan;

/** No plan leaves through the door that the simulator has not passed. */
class DoorTest {

    private final Plan plan = Given.boardOut();

    @Test
    void passesAPlanThatHolds() {
        assertDoesNotThrow(() -> Planner.requireValid(plan));
    }

    @Test
    void stopsAPlanThatLacksAnAct() {
        List<CostedAct> acts = new ArrayList<>(plan.acts());
        acts.remove(acts.size() - 2);

        assertStopped(with(acts, plan.totalMs()), "so there is no plan: ");
    }

    @Test
    void stopsAPlanThatIsCheaperThanItsActs() {
        assertStopped(with(plan.acts(), plan.totalMs() - 1), "disagree on the cost");
    }

    private static void assertStopped(Plan wrong, String message) {
        IllegalStateException e =
                assertThrows(IllegalStateException.class, () -> Planner.requireValid(wrong));
        assertTrue(String.valueOf(e.getMessage()).contains(message), e::getMessage);
    }

    private Plan with(List<CostedAct> acts, long totalMs) {
        assertEquals(Plan.Ended.PROVED, plan.ended());
        return new Plan(plan.request(), acts, totalMs, 0, Plan.Ended.TIME, 1, Planner::rebuild);
    }
}
