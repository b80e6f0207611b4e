package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static reseat.simulate.ReleaseRulesTest.assertRefused;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.prepared;
import static reseat.simulate.Sketch.release;
import static reseat.simulate.Sketch.way;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.CostedAct;
import reseat.model.State;

class CostRulesTest {

    @Test
    void setUpsLieBetweenActsFromTheBareHandInTheUsualPosture() {
        Sketch sketch =
                new Sketch()
                        .part("lid")
                        .joint("screw", "lid", "frame")
                        .ways("screw", way("usual", "t5", "face-down", 500, 300));
        List<CostedAct> acts = run(sketch, release("screw"), move("lid")).acts();
        assertEquals(100 + 700, acts.get(0).setupMs());
        assertEquals(150 + 800, acts.get(1).setupMs());
        assertEquals("t5", acts.get(0).tool());
        assertEquals("face-down", acts.get(0).posture());
    }

    @Test
    void nothingIsChargedAtTheEnd() {
        Sketch sketch =
                new Sketch()
                        .part("lid")
                        .joint("screw", "lid", "frame")
                        .ways("screw", way("usual", "t5", "face-up", 500, 300));
        assertEquals(100 + 500 + 300, run(sketch, release("screw")).totalMs());
    }

    @Test
    void theWayThatIsTakenCounts() {
        Sketch sketch =
                new Sketch()
                        .part("lid")
                        .joint("clip", "lid", "frame")
                        .ways(
                                "clip",
                                way("pry", "hand", "face-up", 900, 90),
                                way("slide", "hand", "face-up", 300, 30));
        assertEquals(990, run(sketch, release("clip", "pry")).totalMs());
        assertEquals(330, run(sketch, release("clip", "slide")).totalMs());
    }

    @Test
    void partsMovedAsOneTakeTheLongestTimeAndTheLongestRestoreTime() {
        Sketch sketch =
                new Sketch()
                        .moved("lid", "hand", "face-up", 5000, 10)
                        .moved("board", "hand", "face-up", 100, 4000)
                        .joint("clip", "board", "lid");
        CostedAct act = run(sketch, move("lid", "board")).acts().get(0);
        assertEquals(5000, act.ms());
        assertEquals(4000, act.restoreMs());
    }

    private final Sketch prepared =
            new Sketch()
                    .part("lid")
                    .prepare("shut-down", "Shut the device down.", 20_000, 5_000)
                    .prepare("clean", "Clean the bench", 100, 0);

    @Test
    void prepareActsComeFirstAndCostTheirTimeWithoutSetUp() {
        Verdict verdict = run(prepared, prepared("clean"), prepared("shut-down"), move("lid"));
        assertTrue(verdict.valid());
        assertEquals(25_000 + 100 + 3_000, verdict.totalMs());
        assertEquals("hand", verdict.acts().get(0).tool());
        assertEquals("face-up", verdict.acts().get(0).posture());
    }

    @Test
    void noOtherActComesBeforeThem() {
        assertRefused(
                1,
                "\"Shut the device down\" must come before any other act.",
                run(prepared, prepared("clean"), move("lid")));
    }

    @Test
    void eachIsDoneOnce() {
        assertRefused(
                1,
                "\"Clean the bench\" is already done.",
                run(prepared, prepared("clean"), prepared("clean")));
    }

    @Test
    void noneComesAfterWorkHasBegun() {
        assertRefused(
                3,
                "\"Clean the bench\" must come before all work on the device.",
                run(
                        prepared,
                        prepared("clean"),
                        prepared("shut-down"),
                        move("lid"),
                        prepared("clean")));
    }

    @Test
    void anUnknownOneIsNamed() {
        assertRefused(
                0,
                "The device has no prepare act \"shutdown\".",
                run(prepared, prepared("shutdown")));
    }

    @Test
    void aPlanOfSomePrepareActsAloneLacksTheOthers() {
        Verdict verdict = run(prepared, prepared("clean"));
        assertTrue(verdict.allowed());
        assertFalse(verdict.valid());
        assertEquals(List.of("\"Shut the device down\" is missing."), verdict.sentences());
    }

    @Test
    void anEmptyPlanNeedsNone() {
        assertTrue(run(prepared).valid());
        assertEquals(0, run(prepared).totalMs());
    }

    private final Sketch book =
            new Sketch()
                    .part("lid")
                    .cable("ribbon", "lid", "frame")
                    .part("fan")
                    .joint("fan-screw", "fan", "frame")
                    .ways("fan-screw", way("usual", "hand", "face-down", 500, 300));

    @Test
    void layingAPartAsideTakesMoreThanLiftingItOff() {
        book.layAside(90);
        assertEquals(2000 + 90, run(book, move("lid")).acts().get(0).ms());
        assertEquals(1000, run(book, move("lid")).acts().get(0).restoreMs());
        assertEquals(2000, run(book, release("ribbon"), move("lid")).acts().get(1).ms());
    }

    @Test
    void movingWhatLiesAsideLaysItAsideAgain() {
        book.layAside(90);
        assertEquals(2000 + 90, run(book, move("lid"), move("lid")).acts().get(1).ms());
    }

    @Test
    void turningTheDeviceWhileAPartLiesAsideCostsMore() {
        book.turnOpen(40);
        assertEquals(
                700 + 40, run(book, move("lid"), release("fan-screw")).acts().get(1).setupMs());
        assertEquals(
                700,
                run(book, move("lid"), release("ribbon"), release("fan-screw"))
                        .acts()
                        .get(2)
                        .setupMs());
        assertEquals(0, run(book, move("lid"), release("ribbon")).acts().get(1).setupMs());
    }

    @Test
    void aPartThatLiesAsideAtTheStartCountsForTheFirstTurn() {
        book.turnOpen(40);
        State start = new State(Set.of(), List.of(Set.of("lid")));
        Verdict verdict = Simulator.simulate(book.device(), start, List.of(release("fan-screw")));
        assertEquals(700 + 40, verdict.acts().get(0).setupMs());
    }

    @Test
    void whatThePartsAreLaidAsideWithDoesNotMakeTheTurnToItDearer() {
        book.turnOpen(40).moved("lid", "hand", "face-down", 2000, 1000);
        assertEquals(700, run(book, move("lid")).acts().get(0).setupMs());
    }

    private final Sketch inside =
            new Sketch()
                    .part("lid")
                    .part("fan", "lid")
                    .joint("fan-plug", "fan", "frame")
                    .hiddenBy("fan-plug", "lid")
                    .prepareInside("drain", "Drain it.", 50, 5);

    @Test
    void somePrepareActsAreNeededOnlyForWorkInside() {
        assertTrue(run(inside).valid());
        assertTrue(run(inside.part("foot"), move("foot")).valid());
        assertRefused(
                0,
                "\"Drain it\" must come before any act inside the device.",
                run(inside, move("lid")));
        Verdict verdict = run(inside, prepared("drain"), move("lid"));
        assertTrue(verdict.valid());
        assertEquals(50 + 5 + 3000, verdict.totalMs());
    }

    @Test
    void theyMayBeDoneForWorkOutsideTooAndCostTheirTime() {
        assertEquals(
                55 + 3000, run(inside.part("foot"), prepared("drain"), move("foot")).totalMs());
    }

    @Test
    void noneComesAfterWorkOutsideEither() {
        assertRefused(
                1,
                "\"Drain it\" must come before all work on the device.",
                run(inside.part("foot"), move("foot"), prepared("drain")));
    }

    @Test
    void whatIsPreparedAtTheStartIsNotNeededAndNotDoneAgain() {
        State start = new State(Set.of(), List.of(), Set.of("shut-down", "clean"));
        Verdict verdict = Simulator.simulate(prepared.device(), start, List.of(move("lid")));
        assertTrue(verdict.valid());
        assertEquals(3000, verdict.totalMs());
        assertEquals(Set.of("shut-down", "clean"), verdict.end().prepared());
        assertRefused(
                0,
                "\"Clean the bench\" is already done.",
                Simulator.simulate(prepared.device(), start, List.of(prepared("clean"))));
    }

    @Test
    void whatIsPreparedBelongsToTheStateAtTheEnd() {
        Verdict verdict = run(prepared, prepared("clean"));
        assertEquals(Set.of("clean"), verdict.end().prepared());
    }

    @Test
    void anUnknownOneAtTheStartIsAFault() {
        assertEquals(
                List.of(
                        "The start has prepare act \"dust\" done, which the device does not"
                                + " have."),
                Simulator.faultsOf(
                        prepared.device(), new State(Set.of(), List.of(), Set.of("dust"))));
    }
}
