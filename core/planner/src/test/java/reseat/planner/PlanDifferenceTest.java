package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.CostedAct;

class PlanDifferenceTest {

    @Test
    void keepsWhatBothHaveAndMarksTheRest() {
        PlanDifference difference =
                PlanDifference.of(acts("lid", "fan", "board"), acts("lid", "cell", "board"));

        assertEquals(
                List.of(
                        "BOTH move:lid",
                        "FIRST_ALONE move:fan",
                        "SECOND_ALONE move:cell",
                        "BOTH move:board"),
                difference.lines().stream().map(line -> line.in() + " " + line.id()).toList());
        assertFalse(difference.isEmpty());
    }

    @Test
    void findsNothingBetweenEqualPlans() {
        assertTrue(PlanDifference.of(acts("lid", "fan"), acts("lid", "fan")).isEmpty());
        assertTrue(PlanDifference.of(acts(), acts()).isEmpty());
    }

    private static List<CostedAct> acts(String... parts) {
        return List.of(parts).stream()
                .map(part -> new CostedAct(new Act.MoveParts(List.of(part)), "hand", "up", 1, 1, 0))
                .toList();
    }
}
