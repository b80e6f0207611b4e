package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.planner.Given.move;
import static reseat.planner.Given.release;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.Rebuild;

class TestPlacesTest {

    private final Plan plan = Given.boardOut();
    private final Rebuild rebuild = Rebuild.of(plan);

    @Test
    void testsBeforeTheBondThatCannotBeOpenedAgain() {
        PlacedTest picture = placed("picture");

        assertEquals(Optional.of("display-bond"), picture.closing());
        assertEquals(
                "release:display-bond/usual",
                rebuild.acts().get(picture.before()).act().id(),
                "just before the bond");
    }

    @Test
    void powerIsBackWhenATestIsMadeEarly() {
        int power =
                rebuild.acts().stream()
                        .map(act -> act.act().id())
                        .toList()
                        .indexOf("release:cell-plug/usual");

        assertTrue(power >= 0 && power < placed("picture").before());
    }

    @Test
    void testsTheClosingItselfAtTheEnd() {
        PlacedTest glue = placed("glue");

        assertEquals(rebuild.acts().size(), glue.before());
        assertEquals(Optional.empty(), glue.closing());
    }

    @Test
    void asksForNoTestOfWhatWasNotTouched() {
        Plan open = Given.plan(plan.request().device(), new Goal.Reach("cell-plug"));

        assertEquals(
                List.of("picture", "glue"),
                Rebuild.of(open).tests().stream().map(test -> test.test().id()).toList());
    }

    /** The tests of the turned notebook, each with the act of the rebuild that it comes before. */
    private static List<String> times(Act... teardown) {
        return Rebuild.of(Given.acts(Given.turned(), teardown)).tests().stream()
                .map(test -> test.test().id() + " " + test.before())
                .toList();
    }

    /**
     * The lid clip cannot be opened again; the flap's flex is back by then, and so is the power.
     */
    @Test
    void aTestComesBeforeAClosingOnceAllThatItNeedsIsBack() {
        assertEquals(
                List.of("flex 2", "both 2"),
                times(release("lid-clip"), release("key-fit"), release("flap-flex")));
        assertEquals(
                List.of("flex 3", "both 3"),
                times(release("flap-flex"), release("key-fit"), release("lid-clip")),
                "the flex is made after the closing");
    }

    @Test
    void noTestIsMadeWhileTheSupplyIsCut() {
        assertEquals(
                List.of("flex 3", "both 3"),
                times(release("key-fit"), release("lid-clip"), release("flap-flex")));
    }

    @Test
    void aTestWaitsForWhatItNeedsBesides() {
        assertEquals(
                List.of("flex 1", "both 3"),
                times(release("deck-flex"), release("lid-clip"), release("flap-flex")));
    }

    @Test
    void aPartIsBackWhenItLiesInPlaceAndItsConnectorsAreMade() {
        assertEquals(
                List.of("deck 2"),
                times(release("lid-clip"), release("deck-flex"), move("deck", "flap")));
        assertEquals(
                List.of("deck 3"),
                times(release("deck-flex"), release("lid-clip"), move("deck", "flap")),
                "its flex is open at the closing");
        assertEquals(
                List.of("deck 1"),
                times(release("flap-tape"), release("lid-clip"), move("deck")),
                "a tape is no connector");
        assertEquals(
                List.of("deck 2"),
                times(move("deck", "flap"), release("lid-clip")),
                "it lies apart at the closing");
    }

    private PlacedTest placed(String id) {
        return rebuild.tests().stream()
                .filter(test -> test.test().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
