package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.planner.Given.move;
import static reseat.planner.Given.release;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.plan.Advice;
import reseat.plan.Advice.Kind;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;

/** What is told when a notebook is turned over while it is half apart, there and back. */
class TurningNotesTest {

    private static PlanNotes notes(Act... acts) {
        Plan plan = Given.acts(Given.turned(), acts);
        return PlanNotes.of(plan, plan.rebuild());
    }

    /** The advice of one kind with the place of its act: "1 Deck still hangs ...". */
    private static List<String> said(List<List<Advice>> advice, Kind kind) {
        List<String> all = new ArrayList<>();
        IntStream.range(0, advice.size())
                .forEach(
                        at ->
                                advice.get(at).stream()
                                        .filter(each -> each.kind() == kind)
                                        .forEach(each -> all.add(at + " " + each.text())));
        return all;
    }

    @Test
    void aPartThatHangsIsSupportedWhileTheDeviceIsTurned() {
        PlanNotes notes = notes(release("flap-tape"), move("flap"), release("bottom-screw.a"));
        String hangs = " Flap still hangs by Flap flex: support it while you turn the device";
        assertEquals(List.of("2" + hangs + " (face down)"), said(notes.teardown(), Kind.HANGING));
        // back: the screw is driven in face down, then the flap is folded back face up
        assertEquals(List.of("1" + hangs + " (face up)"), said(notes.rebuild(), Kind.HANGING));
    }

    @Test
    void severalThatHangAreNamedTogether() {
        PlanNotes notes = notes(move("deck", "flap"), release("lid-clip"), move("lid"));
        assertEquals(
                List.of(
                        "1 Deck and Flap still hang by Deck flex and Flap flex:"
                                + " support them while you"
                                + " turn the device (lid at 90°)"),
                said(notes.teardown(), Kind.HANGING));
    }

    @Test
    void screwsThatStandLooseAreTakenOutBeforeTurning() {
        assertEquals(
                List.of(
                        "1 A released screw may still stand in its hole (Bottom screw"
                                + " a): take it out"
                                + " before you turn the device (face up)"),
                said(
                        notes(release("bottom-screw.a"), release("flap-tape")).teardown(),
                        Kind.LOOSE_SCREWS));
        PlanNotes two =
                notes(release("bottom-screw.a"), release("bottom-screw.b"), release("flap-tape"));
        assertEquals(
                List.of(
                        "2 2 released screws may still stand in their holes (Bottom"
                                + " screw a and Bottom"
                                + " screw b): take them out before you turn the device (face up)"),
                said(two.teardown(), Kind.LOOSE_SCREWS));
        assertEquals(
                List.of(), said(two.rebuild(), Kind.LOOSE_SCREWS), "they are not in it by then");
    }

    @Test
    void aPartThatNothingHoldsAnyMoreIsHeldWhileTheDeviceIsTurned() {
        PlanNotes notes =
                notes(release("bottom-screw.a"), release("bottom-screw.b"), release("lid-clip"));
        assertEquals(
                List.of(
                        "2 Bottom lies loose in the device: hold it in place while you"
                                + " turn it (lid at"
                                + " 90°)"),
                said(notes.teardown(), Kind.LOOSE_PARTS));
        assertEquals(
                List.of(
                        "0 Lid and Bottom lie loose in the device: hold them in place"
                                + " while you turn it (face down)",
                        "2 Lid lies loose in the device: hold it in place while you turn"
                                + " it (lid at 90°)"),
                said(notes.rebuild(), Kind.LOOSE_PARTS));
    }

    @Test
    void severalThatLieLooseAreNamedTogether() {
        assertEquals(
                List.of(
                        "2 Bottom lies loose in the device: hold it in place while you"
                                + " turn it (lid at"
                                + " 90°)",
                        "3 Lid and Bottom lie loose in the device: hold them in place"
                                + " while you turn"
                                + " it (face up)"),
                said(
                        notes(
                                        release("bottom-screw.a"),
                                        release("bottom-screw.b"),
                                        release("lid-clip"),
                                        release("flap-tape"))
                                .teardown(),
                        Kind.LOOSE_PARTS));
    }

    @Test
    void whatIsLaidAsideHangsByNothingHeavierThanItsCable() {
        assertEquals(
                List.of(
                        "0 Still connected by Deck flex and Flap flex: lay it so that"
                                + " no cable carries"
                                + " its weight"),
                said(notes(move("deck", "flap"), release("deck-flex")).teardown(), Kind.TETHER));
        assertEquals(
                List.of(), said(notes(release("lid-clip"), move("lid")).teardown(), Kind.TETHER));
        assertEquals(
                1,
                said(
                                notes(move("deck", "flap"), release("lid-clip"), move("lid"))
                                        .teardown(),
                                Kind.TETHER)
                        .size(),
                "the lid does not hang, though the deck does");
    }

    /** Both kinds are good for 20 makings: the deck's was made 20 times before, the flap's 19. */
    @Test
    void aJointThatWillHaveBeenMadeTooOftenIsNamedWhenItIsMade() {
        PlanNotes notes = notes(release("deck-flex"), release("flap-flex"), release("lid-clip"));
        assertEquals(
                List.of(
                        "1 Deck flex will have been made 21 times; its kind is rated"
                                + " for 20: inspect it"
                                + " closely or replace it"),
                said(notes.rebuild(), Kind.WEAR));
    }

    @Test
    void aMoveSaysHowToHandleThePartAndWhatToLookAt() {
        List<List<Advice>> notes =
                notes(release("flap-tape"), move("flap"), move("deck")).teardown();
        assertEquals(
                List.of("1 Lay it on a soft mat", "2 Mind the hooks at its rear"),
                said(notes, Kind.HANDLING).subList(1, 3));
        assertEquals(List.of("2 Look for bent tabs"), said(notes, Kind.INSPECT));
    }

    /** The flap leaves on the deck: nobody takes it in hand. */
    @Test
    void aCoverThatLeavesWithWhatItCoversIsNotHandledByItself() {
        assertEquals(
                List.of("0 Mind the hooks at its rear"),
                said(notes(move("deck", "flap")).teardown(), Kind.HANDLING));
    }

    @Test
    void whatWasSaidBeforeIsMarked() {
        List<List<Advice>> notes =
                notes(
                                release("lid-clip"),
                                move("lid"),
                                release("bottom-screw.a"),
                                release("bottom-screw.b"),
                                move("bottom"))
                        .teardown();
        assertEquals(
                List.of(false),
                notes.get(1).stream().map(Advice::again).toList(),
                "the first cover on the mat");
        assertEquals(
                List.of(true), notes.get(4).stream().map(Advice::again).toList(), "the second");
    }
}
