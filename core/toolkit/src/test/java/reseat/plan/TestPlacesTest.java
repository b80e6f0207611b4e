package reseat.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.model.Goal;

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

    private PlacedTest placed(String id) {
        return rebuild.tests().stream()
                .filter(test -> test.test().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
