package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.planner.Given.move;
import static reseat.planner.Given.release;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.plan.PlacedTest;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;

class TestPlacesTest {

    private final Plan plan = Given.boardOut();
    private final Rebuild rebuild = plan.rebuild();

    @Test
    void testsBeforeTheBondThatCannotBeOpenedAgain() {
        assertEquals(Optional.of("display-bond"), placed("picture").closing());
        assertTrue(placed("picture").at() < placeOf("display-bond"));
    }

    @Test
    void powerIsBackWhenATestIsMadeEarly() {
        assertTrue(placeOf("cell-plug") < placed("picture").at());
        assertEquals(List.of("cell"), rebuild.acts().get(placed("picture").at()).on());
    }

    @Test
    void testsTheClosingItselfAtTheEnd() {
        assertTrue(placed("glue").at() > placeOf("display-bond"));
        assertEquals(Optional.empty(), placed("glue").closing());
    }

    @Test
    void switchesOnBeforeTestsAndOffAfter() {
        int picture = placed("picture").at();

        assertEquals(
                List.of(
                        RebuildAct.Kind.SWITCH_ON,
                        RebuildAct.Kind.TEST,
                        RebuildAct.Kind.TEST,
                        RebuildAct.Kind.SWITCH_OFF),
                rebuild.acts().subList(picture - 1, picture + 3).stream()
                        .map(RebuildAct::kind)
                        .toList());
    }

    @Test
    void asksForNoTestOfWhatWasNotTouched() {
        Plan open = Given.plan(plan.request().device(), new Goal.Reach("cell-plug"));

        assertEquals(
                List.of("picture", "glue"),
                open.rebuild().tests().stream().map(test -> test.test().id()).toList());
    }

    /** The rebuild of the turned notebook: what is made and placed, and tests where they come. */
    private static String order(Act... teardown) {
        return Given.acts(Given.turned(), teardown).rebuild().acts().stream()
                .filter(act -> act.kind().isUndoing() || act.kind() == RebuildAct.Kind.TEST)
                .map(
                        act ->
                                act.test()
                                        .map(test -> "test " + test.id())
                                        .orElseGet(() -> act.act().orElseThrow().id()))
                .map(id -> id.replace("release:", "").replace("/usual", ""))
                .collect(Collectors.joining(", "));
    }

    /** The lid clip cannot be opened again, so it waits for the flap's flex and its test. */
    @Test
    void aClosingForGoodWaitsForTestsThatCanBeMadeBefore() {
        for (List<Act> teardown :
                List.of(
                        List.of(release("lid-clip"), release("key-fit"), release("flap-flex")),
                        List.of(release("flap-flex"), release("key-fit"), release("lid-clip")))) {
            String order = order(teardown.toArray(Act[]::new));
            assertTrue(order.endsWith("test flex, test both, lid-clip"), order);
        }
    }

    @Test
    void aPartIsBackWhenItLiesInPlaceAndItsConnectorsAreMade() {
        assertEquals(
                "move:deck+flap, deck-flex, test deck, lid-clip",
                order(release("lid-clip"), release("deck-flex"), move("deck", "flap")));
    }

    private int placeOf(String joint) {
        for (int at = 0; at < rebuild.acts().size(); at++) {
            if (rebuild.acts().get(at).kind() == RebuildAct.Kind.MAKE
                    && rebuild.acts().get(at).joints().equals(List.of(joint))) {
                return at;
            }
        }
        throw new AssertionError(joint + " is not made");
    }

    private PlacedTest placed(String id) {
        return rebuild.tests().stream()
                .filter(test -> test.test().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
