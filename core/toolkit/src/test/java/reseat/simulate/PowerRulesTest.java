package reseat.simulate;

import static reseat.simulate.ReleaseRulesTest.assertAllowed;
import static reseat.simulate.ReleaseRulesTest.assertRefused;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;

import org.junit.jupiter.api.Test;
import reseat.model.Act;

/** Power comes off before anything inside is touched. The plug of the cell lies beneath the lid. */
class PowerRulesTest {

    private final Sketch sketch =
            new Sketch()
                    .part("lid")
                    .part("foot")
                    .part("cell")
                    .part("fan", "lid")
                    .part("sponge", "lid")
                    .joint("lid-screw", "lid", "frame")
                    .joint("foot-screw", "foot", "frame")
                    .joint("fan-screw", "fan", "frame")
                    .hiddenBy("fan-screw", "lid")
                    .cable("cell-plug", "cell", "frame")
                    .hiddenBy("cell-plug", "lid")
                    .cuts("cell-plug", "cell")
                    .cell("cell");

    private Verdict opened(Act... then) {
        Act[] acts = new Act[then.length + 2];
        acts[0] = release("lid-screw");
        acts[1] = move("lid");
        System.arraycopy(then, 0, acts, 2, then.length);
        return run(sketch, acts);
    }

    @Test
    void aJointInsideWaitsForTheIsolator() {
        sketch.silent();
        assertRefused(
                2,
                "The main cell is still on: release the cell plug before the fan screw"
                        + " (inside the device, power comes off first).",
                opened(release("fan-screw")));
    }

    @Test
    void aMoveInsideWaitsForTheIsolator() {
        sketch.silent();
        assertRefused(
                2,
                "The main cell is still on: release the cell plug before the sponge is moved"
                        + " (inside the device, power comes off first).",
                opened(move("sponge")));
    }

    @Test
    void whatIsOnTheWayToTheIsolatorComesUnderPowerAndTheRestAfterIt() {
        sketch.silent();
        assertAllowed(
                opened(
                        release("cell-plug"),
                        release("fan-screw"),
                        move("fan"),
                        move("sponge"),
                        move("cell")));
    }

    @Test
    void whatIsOutsideIsDoneUnderPower() {
        sketch.silent();
        assertAllowed(run(sketch, release("foot-screw"), move("foot")));
    }

    @Test
    void theCellIsNotMovedUnderPower() {
        sketch.silent();
        assertRefused(
                0,
                "The main cell is still on: release the cell plug before the cell is moved"
                        + " (the power comes from it).",
                run(sketch, move("cell")));
    }

    @Test
    void whatHoldsTheCellIsNotReleasedUnderPower() {
        sketch.joint("strap", "cell", "frame").silent();
        assertRefused(
                0,
                "The main cell is still on: release the cell plug before the strap"
                        + " (it holds the cell and the frame).",
                run(sketch, release("strap")));
    }

    @Test
    void severalPartsAreMovedUnderPowerOnlyIfAllAreOutside() {
        sketch.joint("clip", "foot", "sponge").silent();
        assertRefused(
                3,
                "The main cell is still on: release the cell plug before the foot and the sponge are moved"
                        + " (inside the device, power comes off first).",
                opened(release("foot-screw"), move("foot", "sponge")));
    }

    @Test
    void whatStatesThatItNeedsNothingIsDoneUnderPower() {
        assertAllowed(opened(release("fan-screw"), move("fan"), move("sponge"), move("cell")));
    }

    @Test
    void aStatedNeedOfAJointIsNotExplained() {
        sketch.needs("foot-screw", "cell");
        assertRefused(
                0,
                "The main cell is still on: release the cell plug before the foot screw.",
                run(sketch, release("foot-screw")));
    }
}
