package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/** What choices cost besides what every plan needs: the cheaper side of each, nothing twice. */
class ChoiceBoundTest {

    private static Outset free(String target, String... facts) {
        return new Outset(PlanRequest.of(Toy.of(facts), new Goal.Free(List.of(target))));
    }

    private static Outset reach(String joint, String... facts) {
        return new Outset(PlanRequest.of(Toy.of(facts), new Goal.Reach(joint)));
    }

    private static long choices(Outset at) {
        MoveBound moves = at.moves();
        return new ChoiceBound(at.c, at.landmarks, moves)
                .of(at.needs, moves.debts(at.needs, at.start.place));
    }

    /**
     * The case must go: the strap is undone, or the tray comes along, whose bolt is undone then.
     */
    private static long strapOrBolt(int strap, int bolt) {
        return choices(
                free(
                        "board",
                        "part board under case",
                        "part case",
                        "part tray",
                        "joint glue holds board frame",
                        "joint strap holds case tray takes " + strap + " 0",
                        "joint bolt holds tray frame takes 0 " + bolt));
    }

    @Test
    void ofTwoReleasesOneOfWhichWillDoTheCheaperCounts() {
        assertEquals(400, strapOrBolt(900, 400));
        assertEquals(300, strapOrBolt(300, 400));
        assertEquals(0, strapOrBolt(0, 400));
        assertEquals(0, strapOrBolt(300, 0));
    }

    @Test
    void whereNothingIsLeftOpenNothingIsAdded() {
        assertEquals(
                0,
                choices(
                        free(
                                "board",
                                "part board under case",
                                "part case",
                                "joint glue holds board frame",
                                "joint bolt holds case frame")));
    }

    /** 400 for the one, 300 for the other. */
    @Test
    void choicesThatShareNothingAddUp() {
        assertEquals(
                700,
                choices(
                        free(
                                "board",
                                "part board under case lid",
                                "part case",
                                "part tray",
                                "part lid",
                                "part rim",
                                "joint glue holds board frame",
                                "joint strap holds case tray takes 900 0",
                                "joint bolt holds tray frame takes 400 0",
                                "joint clip holds lid rim takes 300 0",
                                "joint nail holds rim frame takes 800 0")));
    }

    /**
     * The bolt would do for both straps. The dearer choice counts, 500 against 600; then the bolt
     * stands for the other choice too, which adds nothing. The cheaper first would tell 200.
     */
    private static long twoStraps(int one, int other) {
        return choices(
                free(
                        "board",
                        "part board under case lid",
                        "part case",
                        "part tray",
                        "part lid",
                        "joint glue holds board frame",
                        "joint strap holds case tray takes " + one + " 0",
                        "joint band holds lid tray takes " + other + " 0",
                        "joint bolt holds tray frame takes 600 0"));
    }

    @Test
    void aReleaseThatWouldDoForTwoChoicesCountsOnceAndTheDearerComesFirst() {
        assertEquals(500, twoStraps(500, 200));
        assertEquals(500, twoStraps(200, 500));
        assertEquals(600, twoStraps(900, 800));
    }

    /**
     * The nut on the tray lies under the shade: shade and clip leave (700 + 200), or tray and bolt
     * (300 + 400).
     */
    @Test
    void releasesAndMovesOfOneSideAddUp() {
        String[] facts = {
            "part shade takes 700 0",
            "part tray takes 0 300",
            "part ring",
            "joint nut holds ring tray under shade",
            "joint clip holds shade frame takes 200 0",
            "joint bolt holds tray frame takes 400 0"
        };
        assertEquals(700, choices(reach("nut", facts)));
        facts[0] = "part shade takes 450 0";
        assertEquals(650, choices(reach("nut", facts)));
        // the shade is the first part then
        String[] frameLast = Arrays.copyOf(facts, 7);
        frameLast[6] = "part frame";
        assertEquals(650, choices(reach("nut", frameLast)));
    }

    /**
     * The ring is to be had: it leaves the frame by a move that may take the tray along, which is
     * paid for already. Of the tray's side the bolt alone is left, 400.
     */
    @Test
    void aMoveThatIsPaidForIsNotCountedAgain() {
        assertEquals(
                400,
                choices(
                        free(
                                "ring",
                                "part shade takes 700 0",
                                "part tray takes 0 300",
                                "part ring",
                                "joint nut holds ring tray under shade",
                                "joint clip holds shade frame takes 200 0",
                                "joint bolt holds tray frame takes 400 0")));
    }

    /**
     * Nut and pin on the tray lie under a shade (700) and an awning (200); the tray (600) would do
     * for both. It goes by another tool than the ring, whose move does not pay for it. The dearer
     * choice counts 600, the other nothing; the cheaper first would tell 200.
     */
    private static String[] twoNuts(int shade, int awning) {
        return new String[] {
            "part shade takes " + shade + " 0",
            "part awning takes 0 " + awning,
            "part tray takes 600 0 tool t5",
            "part ring",
            "joint nut holds ring tray slack under shade",
            "joint pin holds ring tray slack under awning"
        };
    }

    @Test
    void aMoveThatWouldDoForTwoChoicesCountsOnceAndTheDearerComesFirst() {
        assertEquals(600, choices(free("ring", twoNuts(700, 200))));
        assertEquals(600, choices(free("ring", twoNuts(200, 700))));
        assertEquals(500, choices(free("ring", twoNuts(500, 400))));
    }

    /**
     * Shade or tray for 600; awning or tray, of which the tray is counted, for nothing; awning or
     * desk for 450, since the awning was not counted.
     */
    @Test
    void aChoiceThatAddsNothingCountsForNoOther() {
        assertEquals(
                1050,
                choices(
                        free(
                                "ring",
                                "part shade takes 700 0",
                                "part awning takes 500 0",
                                "part tray takes 600 0 tool t5",
                                "part desk takes 450 0 tool spudger",
                                "part ring",
                                "joint nut holds ring tray slack under shade",
                                "joint pin holds ring tray slack under awning",
                                "joint peg holds ring desk slack under awning")));
    }

    /** The same with the tray listed first, and a bolt at 50 that it needs: 650 against 700. */
    @Test
    void itDoesNotMatterWhichSideOfAChoiceIsListedFirst() {
        String[] facts = Arrays.copyOf(twoNuts(700, 200), 7);
        String tray = facts[2];
        facts[2] = facts[0];
        facts[0] = tray;
        facts[6] = "joint bolt holds tray frame takes 50 0";
        assertEquals(650, choices(free("ring", facts)));
    }

    /**
     * The tray leaves by itself only after door and flap, 500 and 400, which a hinge links: one
     * move may take both. Against a shade of 2000 that side costs 300 + 500.
     */
    @Test
    void movesOfOneSideThatOneMoveMayMakeCountOnce() {
        String[] facts = {
            "part shade takes 2000 0",
            "part tray takes 300 0 under flap door",
            "part door takes 500 0",
            "part flap takes 400 0",
            "part ring",
            "joint hinge holds flap door",
            "joint nut holds ring tray under shade"
        };
        assertEquals(800, choices(reach("nut", facts)));
        facts[5] = "joint hinge holds flap frame takes 0 0";
        assertEquals(1200, choices(reach("nut", facts)));
    }
}
