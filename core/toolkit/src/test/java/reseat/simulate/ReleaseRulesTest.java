package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.State;

class ReleaseRulesTest {

    private final Sketch covered =
            new Sketch()
                    .part("top-case")
                    .part("fan", "top-case")
                    .part("shield")
                    .joint("fan-plug", "fan", "frame")
                    .hiddenBy("fan-plug", "top-case");

    @Test
    void aPartOverTheSiteHidesTheJoint() {
        assertRefused(
                0,
                "The top case still lies over the fan plug: move the top case first.",
                run(covered, release("fan-plug")));
    }

    @Test
    void aCoverThatWasMovedHidesNothing() {
        assertAllowed(run(covered, move("top-case"), release("fan-plug")));
    }

    @Test
    void severalCoversAreNamedTogether() {
        covered.hiddenBy("fan-plug", "top-case", "shield");
        assertRefused(
                0,
                "The top case and the shield still lie over the fan plug: move the top case and the shield first.",
                run(covered, release("fan-plug")));
    }

    @Test
    void whereTheCoverLiesCountsAgainstTheSiteNotAgainstTheOtherParts() {
        Sketch book =
                new Sketch()
                        .part("display")
                        .part("lid")
                        .cable("display-cable", "display", "frame")
                        .hiddenBy("display-cable", "display");
        assertRefused(
                0,
                "The display still lies over the display cable: move the display first.",
                run(book, release("display-cable")));
        assertAllowed(run(book, move("display"), release("display-cable")));
    }

    @Test
    void aSocketOnTheUndersideIsReachedByMovingItsPartOffTheBase() {
        Sketch lid =
                new Sketch()
                        .part("lid")
                        .part("antenna")
                        .joint("antenna-plug", "antenna", "lid")
                        .hiddenBy("antenna-plug", "frame");
        assertRefused(
                0,
                "The frame still lies over the antenna plug: move the lid first.",
                run(lid, release("antenna-plug")));
        assertAllowed(run(lid, move("lid", "antenna"), release("antenna-plug")));
    }

    @Test
    void aJointIsReleasedOnce() {
        Sketch one = new Sketch().part("lid").joint("lid-screw", "lid", "frame");
        assertRefused(
                1,
                "The lid screw is already released.",
                run(one, release("lid-screw"), release("lid-screw")));
    }

    @Test
    void aJointReleasedAtTheStartCannotBeReleasedAgain() {
        Sketch one = new Sketch().part("lid").joint("lid-screw", "lid", "frame");
        State start = new State(Set.of("lid-screw"), List.of());
        Verdict verdict = Simulator.simulate(one.device(), start, List.of(release("lid-screw")));
        assertRefused(0, "The lid screw is already released.", verdict);
    }

    @Test
    void aSupplyIsLiveUntilAnIsolatorIsReleased() {
        Sketch live =
                new Sketch()
                        .part("display")
                        .part("cell")
                        .joint("display-cable", "display", "frame")
                        .needs("display-cable", "cell")
                        .joint("cell-plug", "cell", "frame")
                        .cuts("cell-plug", "cell");
        assertRefused(
                0,
                "The main cell is still on: release the cell plug before the display cable.",
                run(live, release("display-cable")));
        assertAllowed(run(live, release("cell-plug"), release("display-cable")));
    }

    @Test
    void oneOfSeveralIsolatorsIsEnough() {
        Sketch live =
                new Sketch()
                        .part("display")
                        .part("cell")
                        .joint("display-cable", "display", "frame")
                        .needs("display-cable", "cell")
                        .joint("cell-plug", "cell", "frame")
                        .cuts("cell-plug", "cell")
                        .joint("fuse", "cell", "frame")
                        .cuts("fuse", "cell");
        assertRefused(
                0,
                "The main cell is still on: release the cell plug or the fuse before the display cable.",
                run(live, release("display-cable")));
        assertAllowed(run(live, release("fuse"), release("display-cable")));
    }

    @Test
    void everySupplyHasToBeCut() {
        Sketch two =
                new Sketch()
                        .part("display")
                        .part("cell")
                        .joint("display-cable", "display", "frame")
                        .needs("display-cable", "cell", "dock")
                        .joint("cell-plug", "cell", "frame")
                        .cuts("cell-plug", "cell");
        assertRefused(
                1,
                "The dock is always on, because no joint cuts it: the display cable cannot be released.",
                run(two, release("cell-plug"), release("display-cable")));
    }

    @Test
    void unknownJointsAndWaysAreNamed() {
        assertRefused(
                0, "The device has no joint \"fan-plgu\".", run(covered, release("fan-plgu")));
        assertRefused(
                0,
                "The fan plug is not released by \"pry\": take \"usual\".",
                run(covered, release("fan-plug", "pry")));
    }

    @Test
    void theActsBeforeTheRefusedOneCount() {
        Sketch one = new Sketch().part("lid").joint("lid-screw", "lid", "frame");
        Verdict verdict = run(one, release("lid-screw"), release("lid-screw"), move("lid"));
        assertEquals(1, verdict.acts().size());
        assertEquals(800, verdict.totalMs());
        assertEquals(Set.of("lid-screw"), verdict.end().released());
    }

    static Verdict run(Sketch sketch, Act... acts) {
        return Simulator.simulate(sketch.device(), State.closed(), List.of(acts));
    }

    static void assertRefused(int index, String why, Verdict verdict) {
        assertEquals(Optional.of(new Refusal(index, why)), verdict.refusal());
    }

    static void assertAllowed(Verdict verdict) {
        assertTrue(verdict.allowed(), () -> verdict.sentences().toString());
    }
}
