package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.simulate.ReleaseRulesTest.assertAllowed;
import static reseat.simulate.ReleaseRulesTest.assertRefused;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;

class MoveRulesTest {

    @Test
    void theBaseStaysOnTheBench() {
        assertRefused(
                0,
                "The frame is the base and stays on the bench.",
                run(new Sketch(), move("frame")));
    }

    @Test
    void aRigidJointHolds() {
        Sketch lid =
                new Sketch()
                        .part("lid")
                        .joint("left-screw", "lid", "frame")
                        .joint("right-screw", "lid", "frame");
        assertRefused(
                0,
                "The lid is still held to the frame by the left screw and 1 more: release them first.",
                run(lid, move("lid")));
        assertRefused(
                1,
                "The lid is still held to the frame by the right screw: release it first.",
                run(lid, release("left-screw"), move("lid")));
        assertAllowed(run(lid, release("left-screw"), release("right-screw"), move("lid")));
    }

    @Test
    void aScrewThroughSeveralPartsHoldsThemAllAndIsReleasedOnce() {
        Sketch stack = new Sketch().part("fan").part("duct").joint("screw", "fan", "duct", "frame");
        assertRefused(
                0,
                "The fan is still held to the duct and the frame by the screw: release it first.",
                run(stack, move("fan")));
        assertAllowed(run(stack, release("screw"), move("fan"), move("duct")));
    }

    @Test
    void aPartInTheWayHasToLeaveFirst() {
        Sketch stack = new Sketch().part("lid").part("keyboard", "lid");
        assertRefused(
                0,
                "The lid is in the way of the keyboard: move the lid first.",
                run(stack, move("keyboard")));
        assertAllowed(run(stack, move("lid"), move("keyboard")));
    }

    @Test
    void aStackLiftedAsOneKeepsItsOwnCovers() {
        Sketch stack =
                new Sketch()
                        .part("cover")
                        .part("board", "cover")
                        .joint("cover-screw", "cover", "board");
        assertAllowed(run(stack, move("board", "cover")));
    }

    @Test
    void whatLiesElsewhereIsInNobodysWay() {
        Sketch ring =
                new Sketch()
                        .part("left", "right")
                        .part("right", "left")
                        .joint("pin", "left", "right");
        assertRefused(
                1,
                "The right is in the way of the left: move the right first.",
                run(ring, release("pin"), move("left")));
        assertAllowed(run(ring, move("left", "right")));
    }

    @Test
    void theBaseInTheWayNeverMoves() {
        Sketch stuck = new Sketch().part("core", "frame");
        assertRefused(
                0,
                "The frame is in the way of the core and never moves.",
                run(stuck, move("core")));
    }

    @Test
    void partsLeaveTogetherOnlyIfTheyHangTogether() {
        Sketch two = new Sketch().part("lid").part("keyboard");
        assertRefused(
                0,
                "No joint holds the lid and the keyboard together: move them one after the other.",
                run(two, move("lid", "keyboard")));
    }

    @Test
    void aSlackJointHangsPartsTogetherEvenFromTwoPlaces() {
        Sketch two = new Sketch().part("lid").part("keyboard").cable("ribbon", "keyboard", "lid");
        Verdict verdict = run(two, move("lid"), move("keyboard", "lid"));
        assertAllowed(verdict);
        assertEquals(List.of(Set.of("lid", "keyboard")), verdict.end().places());
    }

    @Test
    void partsMovedAsOneAgreeOnToolAndPosture() {
        Sketch two =
                new Sketch()
                        .part("lid")
                        .moved("board", "tweezers", "face-down", 1, 1)
                        .joint("clip", "board", "lid");
        assertRefused(
                0,
                "The lid is moved by hand in the posture face up, the board with the tweezers in the posture face down:"
                        + " they cannot be moved as one.",
                run(two, move("lid", "board")));
    }

    @Test
    void partsLieInANewPlaceAfterwards() {
        Sketch two = new Sketch().part("lid").part("board").joint("clip", "board", "lid");
        assertEquals(
                List.of(Set.of("lid", "board")), run(two, move("lid", "board")).end().places());
        assertEquals(
                List.of(Set.of("lid"), Set.of("board")),
                run(two, move("lid", "board"), release("clip"), move("board")).end().places());
    }

    @Test
    void partsMayBeMovedAgainAndToNoPurpose() {
        assertAllowed(run(new Sketch().part("lid"), move("lid"), move("lid")));
    }

    @Test
    void aPartOnACableIsLaidAsideAndFreeOnceTheCableIsOff() {
        Sketch display = new Sketch().part("display").cable("display-cable", "display", "frame");
        List<Step> steps = run(display, move("display"), release("display-cable")).steps();
        assertEquals(Optional.of(Step.Departure.LAID_ASIDE), steps.get(0).departure());
        assertEquals(List.of("display-cable"), steps.get(0).tethers());
        assertEquals(List.of(), steps.get(0).freed());
        assertEquals(Optional.empty(), steps.get(1).departure());
        assertEquals(List.of("display"), steps.get(1).freed());
    }

    @Test
    void aPartOnNoCableIsLiftedOff() {
        Step step = run(new Sketch().part("lid"), move("lid")).steps().get(0);
        assertEquals(Optional.of(Step.Departure.LIFTED_OFF), step.departure());
        assertEquals(List.of("lid"), step.freed());
    }

    @Test
    void theOrderOfThePartsDoesNotMatterAndTheActNamesThemAsTheDeviceDoes() {
        Sketch two = new Sketch().part("lid").part("board").joint("clip", "board", "lid");
        Act act = run(two, move("board", "lid")).acts().get(0).act();
        assertEquals("move:lid+board", act.id());
    }

    @Test
    void unknownAndRepeatedPartsAreNamed() {
        Sketch lid = new Sketch().part("lid");
        assertRefused(0, "The device has no part \"ldi\".", run(lid, move("ldi")));
        assertRefused(0, "The move names the lid twice.", run(lid, move("lid", "lid")));
    }
}
