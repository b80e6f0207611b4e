package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.simulate.ReleaseRulesTest.assertAllowed;
import static reseat.simulate.ReleaseRulesTest.assertRefused;
import static reseat.simulate.ReleaseRulesTest.run;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** Spring contacts and pads that merely cling let go when their parts come apart. */
class GivingJointsTest {

    private final Sketch lid =
            new Sketch()
                    .part("lid")
                    .part("display")
                    .gives("contact", "lid", "frame")
                    .joint("cell-plug", "display", "frame")
                    .cuts("cell-plug", "cell");

    @Test
    void theMoveReleasesThemAndTakesTheirTimeToo() {
        Verdict verdict = run(lid, move("lid"));
        Step step = verdict.steps().get(0);
        assertEquals(List.of("contact"), step.gave());
        assertEquals(Optional.of(Step.Departure.LIFTED_OFF), step.departure());
        assertEquals(List.of("lid"), step.freed());
        assertEquals(2000 + 500, step.costed().ms());
        assertEquals(1000 + 300, step.costed().restoreMs());
        assertEquals(Set.of("contact"), verdict.end().released());
    }

    @Test
    void theyMayBeReleasedByAnActOfTheirOwnBefore() {
        Verdict verdict = run(lid, release("contact"), move("lid"));
        assertAllowed(verdict);
        assertEquals(List.of(), verdict.steps().get(1).gave());
        assertEquals(2000, verdict.acts().get(1).ms());
    }

    @Test
    void betweenPartsThatMoveAsOneTheyHold() {
        lid.gives("pad", "display", "lid");
        lid.joint("cell-plug", "lid", "display");
        Verdict verdict = run(lid, move("lid", "display"));
        assertEquals(List.of("contact"), verdict.steps().get(0).gave());
    }

    @Test
    void whatTheyNeedThemselvesIsCutBefore() {
        lid.needs("contact", "cell");
        assertRefused(
                0,
                "The main cell is still on: release the cell plug before the contact,"
                        + " which lets go when the lid is moved.",
                run(lid, move("lid")));
        assertAllowed(run(lid, release("cell-plug"), move("lid")));
    }

    @Test
    void aSupplyThatIsAlwaysOnKeepsThemTogether() {
        lid.needs("contact", "dock");
        assertRefused(
                0,
                "The dock is always on, because no joint cuts it:"
                        + " the lid cannot be moved, because the contact lets go.",
                run(lid, move("lid")));
    }

    @Test
    void theyCutTheirSupplyFromTheMoveOn() {
        lid.joint("cell-plug", "display", "frame")
                .cuts("contact", "cell")
                .needs("cell-plug", "cell");
        assertAllowed(run(lid, move("lid"), release("cell-plug")));
    }

    @Test
    void aPartOnACableBesidesIsLaidAside() {
        lid.cable("ribbon", "lid", "frame").layAside(70);
        Step step = run(lid, move("lid")).steps().get(0);
        assertEquals(Optional.of(Step.Departure.LAID_ASIDE), step.departure());
        assertEquals(List.of("ribbon"), step.tethers());
        assertEquals(List.of("contact"), step.gave());
        assertEquals(List.of(), step.freed());
        CostedAct act = step.costed();
        assertEquals(2000 + 500 + 70, act.ms());
        assertEquals(1000 + 300, act.restoreMs());
    }

    @Test
    void aPartLaidAsideEarlierIsFreedWhenItsLastContactGives() {
        lid.part("flap").gives("pad", "lid", "flap").cable("ribbon", "lid", "frame");
        lid.joint("hinge", "flap", "lid");
        List<Step> steps = run(lid, move("lid", "flap"), release("hinge"), move("flap")).steps();
        assertEquals(List.of("pad"), steps.get(2).gave());
        assertEquals(List.of("flap"), steps.get(2).freed());
    }

    @Test
    void oneThatMustNotBeReleasedKeepsTheMoveFromBeingValid() {
        assertEquals(
                List.of(
                        new Breach(
                                Breach.Kind.FORBIDDEN_JOINT,
                                "contact",
                                OptionalInt.of(0),
                                "The contact lets go when the lid is moved,"
                                        + " and must not be released.")),
                judge(Rules.none().forbidJoints(List.of("contact"))).breaches());
    }

    @Test
    void aJointThatGaveIsReleasedButItsActAndToolWereNotUsed() {
        assertEquals(List.of(), judge(Rules.none().requireJoints(List.of("contact"))).breaches());
        assertEquals(
                List.of("The act \"release:contact/usual\" is required but missing."),
                judge(Rules.none().requireActs(List.of("release:contact/usual"))).sentences());
    }

    @Test
    void noUnitStartsWithItsPartsApart() {
        assertEquals(
                List.of(
                        "The lid and the frame lie apart at the start although the contact still"
                                + " holds them together."),
                Simulator.faultsOf(lid.device(), new State(Set.of(), List.of(Set.of("lid")))));
    }

    @Test
    void springContactsAreReleasedByNoActOfTheirOwn() {
        Sketch pack = new Sketch().part("cell").gives("cell-plug", "cell", "frame");
        assertRefused(
                0,
                "Nothing but moving the cell away releases the cell plug.",
                run(pack, release("cell-plug")));
        assertEquals(List.of("cell-plug"), run(pack, move("cell")).steps().get(0).gave());
    }

    @Test
    void aSupplyThatSpringContactsCutIsCutByMovingItsCellAway() {
        Sketch pack =
                new Sketch()
                        .part("cell")
                        .part("fan")
                        .joint("fan-screw", "fan", "frame")
                        .gives("cell-plug", "cell", "frame")
                        .cuts("cell-plug", "cell")
                        .needs("fan-screw", "cell");
        assertRefused(
                0,
                "The main cell is still on: move the cell away before the fan screw.",
                run(pack, release("fan-screw")));
        assertAllowed(run(pack, move("cell"), release("fan-screw")));
    }

    @Test
    void noUnitStartsWithSpringContactsReleasedThatWereNotTakenApart() {
        Sketch pack = new Sketch().part("cell").gives("cell-plug", "cell", "frame");
        Set<String> open = Set.of("cell-plug");
        assertEquals(
                List.of(
                        "The cell plug cannot be released at the start while the cell and the"
                                + " frame lie together."),
                Simulator.faultsOf(pack.device(), new State(open, List.of())));
        assertEquals(
                List.of(),
                Simulator.faultsOf(pack.device(), new State(open, List.of(Set.of("cell")))));
    }

    private Verdict judge(Rules rules) {
        List<Act> acts = List.of(move("lid"));
        return Simulator.judge(
                lid.device(), State.closed(), new Goal.Free(List.of("lid")), rules, acts);
    }
}
