package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;
import static reseat.simulate.Sketch.way;

import java.util.List;
import org.junit.jupiter.api.Test;

class NotesTest {

    private final Sketch sketch =
            new Sketch()
                    .part("top-case")
                    .part("fan")
                    .cable("keyboard-cable", "top-case", "frame")
                    .joint("fan-screw", "fan", "frame")
                    .ways("fan-screw", way("usual", "t5", "face-down", 1, 1));

    @Test
    void turningTheDeviceWhileAPartHangsIsNoted() {
        assertEquals(
                List.of(
                        new Note(
                                Note.Kind.TURNED_WHILE_HANGING,
                                List.of("keyboard-cable"),
                                "The top case still hangs by the keyboard cable: support it while the device is turned face"
                                        + " down.")),
                run(sketch, move("top-case"), release("fan-screw")).steps().get(1).notes());
    }

    @Test
    void nothingIsNotedWhileThePostureStays() {
        assertEquals(
                List.of(),
                run(sketch, move("top-case"), release("keyboard-cable")).steps().get(1).notes());
    }

    @Test
    void nothingIsNotedOnceTheCableIsOff() {
        assertEquals(
                List.of(),
                run(sketch, move("top-case"), release("keyboard-cable"), release("fan-screw"))
                        .steps()
                        .get(2)
                        .notes());
    }

    @Test
    void turningTheDeviceWithLooseScrewsInItIsNoted() {
        Verdict verdict = run(sketch, release("fan-screw"), move("top-case"));
        assertEquals(
                List.of(
                        "A released screw may still stand in the holes of parts that lie in place (the fan screw):"
                                + " take it out before the device is turned face up."),
                verdict.steps().get(1).notes().stream().map(Note::sentence).toList());
    }

    @Test
    void screwsOfPartsThatHaveLeftAreNotLoose() {
        sketch.moved("fan", "hand", "face-down", 1, 1);
        Verdict verdict = run(sketch, release("fan-screw"), move("fan"), move("top-case"));
        assertEquals(List.of(), verdict.steps().get(2).notes());
    }

    @Test
    void onlyScrewsComeLoose() {
        sketch.joint("fan-clip", "fan", "frame")
                .ways("fan-clip", way("usual", "hand", "face-down", 1, 1));
        Verdict verdict = run(sketch, release("fan-clip"), move("top-case"));
        assertEquals(List.of(), verdict.steps().get(1).notes());
    }
}
