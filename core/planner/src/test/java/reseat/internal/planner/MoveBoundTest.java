package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.PlanRequest;

/**
 * Which moves must be paid for, each on its own. Moves take what the line says; a move of several
 * parts takes the largest of their times and of their restore times.
 */
class MoveBoundTest {

    private static Outset free(Device device, String... targets) {
        return new Outset(PlanRequest.of(device, new Goal.Free(List.of(targets))));
    }

    @Test
    void partsThatHangOnNothingCommonPayEachForThemselves() {
        Outset at =
                free(
                        Toy.of(
                                "part fan takes 700 300",
                                "part cell takes 1500 500",
                                "joint clip holds fan frame",
                                "joint glue holds cell frame"),
                        "fan",
                        "cell");
        assertEquals("cell 2000, fan 1000", at.owed());
        assertEquals(3000, at.moves().sum(at.moves().debts(at.needs, at.start.place)));
    }

    @Test
    void whatNeedNotMoveIsNotPaid() {
        Outset at =
                free(
                        Toy.of(
                                "part fan",
                                "part cell",
                                "joint clip holds fan frame",
                                "joint glue holds cell frame"),
                        "fan");
        assertEquals("fan 1500", at.owed());
    }

    /** Two covers of the board, linked by a hinge: one move may take both. */
    static String[] covers(String... more) {
        return lines(
                List.of(
                        "part board takes 100 0 under lid flap",
                        "part lid takes 700 300",
                        "part flap takes 600 500",
                        "joint glue holds board frame",
                        "joint hinge holds flap lid"),
                more);
    }

    static String[] lines(List<String> some, String... more) {
        return Stream.concat(some.stream(), Arrays.stream(more)).toArray(String[]::new);
    }

    @Test
    void twoCoversThatCanLeaveInOneMoveCostTheDearer() {
        assertEquals("flap 1100, board 100", free(Toy.of(covers()), "board").owed());
    }

    @Test
    void twoCoversOfDifferentToolsCostBoth() {
        Device device =
                Toy.of(
                        "part board takes 100 0 under lid flap",
                        "part lid takes 700 300",
                        "part flap takes 600 500 tool spudger",
                        "joint glue holds board frame",
                        "joint hinge holds flap lid");
        assertEquals("flap 1100, lid 1000, board 100", free(device, "board").owed());
    }

    /**
     * The hinge cuts the cell, which the lid's screw needs cut: it is parted before the lid goes.
     */
    @Test
    void twoCoversThatMustBePartedFirstCostBoth() {
        Device device =
                Toy.of(
                        "part board takes 100 0 under lid flap",
                        "part lid takes 700 300",
                        "part flap takes 600 500",
                        "joint glue holds board frame",
                        "joint hinge holds flap lid cuts cell",
                        "joint screw holds lid frame needs cell");
        assertEquals("flap 1100, lid 1000, board 100", free(device, "board").owed());
    }

    /**
     * Lid and flap hide the glue and are linked by a cord. The lid's screw lies under the flap: the
     * flap has moved before the lid can, so that their first moves are two, whoever is dearer.
     */
    private static Outset corded(int lid, int flap) {
        return free(
                Toy.of(
                        "part board takes 100 0",
                        "part lid takes " + lid + " 0",
                        "part flap takes " + flap + " 0",
                        "joint glue holds board frame under lid flap",
                        "joint cord holds flap lid slack",
                        "joint screw holds lid frame under flap"),
                "board");
    }

    @Test
    void ofTwoThatOneMoveCouldTakeButForTheirOrderBothArePaid() {
        assertEquals("flap 600, lid 500, board 100", corded(500, 600).owed());
        assertEquals("lid 700, flap 600, board 100", corded(700, 600).owed());
    }

    /**
     * The lid lies on the case, held by a clip, and hides a cable's plug on the case. Case and lid
     * may leave the board beneath together, but then the lid has to leave the case. The cable may
     * hang on the case when it goes, and is not paid beside it.
     */
    static final List<String> STACK =
            List.of(
                    "part board takes 100 0 under case",
                    "part case takes 1500 500 under lid",
                    "part lid takes 700 300",
                    "part cable takes 200 0",
                    "joint glue holds board frame",
                    "joint clip holds lid case",
                    "joint plug holds cable case under lid slack");

    @Test
    void aCoverThatHasToLeaveWhatItLiesOnIsPaidByItself() {
        Outset at = free(Toy.of(lines(STACK)), "board", "cable");
        assertEquals("case 2000, lid 1000, board 100", at.owed());
        assertEquals(at.c.part("case"), at.debt("lid").below());
    }

    /** Without the cable nothing asks the lid to leave the case: both go at the price of one. */
    @Test
    void aCoverThatMayStayOnWhatItLiesOnIsNotPaidByItself() {
        Outset at =
                free(
                        Toy.of(
                                lines(
                                        STACK,
                                        "part fan takes 20 0 under lid",
                                        "joint pin holds fan frame")),
                        "board",
                        "fan");
        assertEquals("case 2000, board 100, fan 20", at.owed());
    }

    /** Once the lid lies elsewhere than the case, its next move leaves nothing behind. */
    @Test
    void aCoverThatHasLeftIsNotAskedToLeaveAgain() {
        Outset at = free(Toy.of(lines(STACK)), "board", "cable");
        char[] apart = at.start.place.clone();
        apart[at.c.part("lid")] = (char) at.c.part("lid");
        long[] needs = at.works("case", "lid", "plug");
        at.compute(apart);
        assertEquals("case 2000", at.owed(needs, apart));
        at.compute(at.start.place);
        assertEquals("case 2000, lid 1000", at.owed(needs, at.start.place));
    }

    /** A target that lies on the case must leave it, so that the case is no company for it. */
    @Test
    void aTargetHasToLeaveWhatItLiesOn() {
        Outset at = free(Toy.of(lines(STACK)), "lid");
        assertEquals(at.c.part("case"), at.debt("lid").below());
        assertEquals("lid", at.company(at.debt("lid")));
    }

    /** The other way round: what lies on the target has to leave it, and the target the board. */
    @Test
    void whatLiesOnATargetHasToLeaveIt() {
        Device device =
                Toy.of(
                        "part board under case",
                        "part case takes 1500 500 under lid",
                        "part lid takes 700 300",
                        "joint clip holds lid case",
                        "joint glue holds board frame");
        Outset at = free(device, "case");
        assertEquals("case 2000, lid 1000", at.owed());
        assertEquals(at.c.part("case"), at.debt("lid").below());
        assertEquals(at.c.part("board"), at.debt("case").below());
    }

    @Test
    void aDebtTellsWhoMayGoAlong() {
        Outset at = free(Toy.of(covers()), "board");
        assertEquals("flap lid", at.company(at.debt("flap")));
        MoveBound.Debt lid = at.moves().debt(at.c.part("lid"));
        assertEquals(1000, lid.ms());
        assertEquals(-1, lid.below());
        assertEquals("flap lid", at.company(lid));
    }

    /**
     * A cord links duct and bracket, a plug that cuts the cell bracket and fan. The duct's screw
     * needs the cell cut, so the plug is pulled before the duct can go: no move of the duct takes
     * the fan, though one of the fan might take the duct. One of the two is enough, whoever is
     * dearer.
     */
    private static Outset oneSided(int duct, int fan) {
        return free(
                Toy.of(
                        "part board takes 10 0 under duct fan",
                        "part duct takes " + duct + " 0",
                        "part bracket takes 30 0",
                        "part fan takes " + fan + " 0",
                        "joint glue holds board frame",
                        "joint screw holds duct frame needs cell",
                        "joint cord holds duct bracket slack",
                        "joint plug holds fan bracket cuts cell"),
                "board");
    }

    @Test
    void partsOfWhichOneCannotTakeTheOtherAlongPayBoth() {
        assertEquals("duct 500, fan 400, board 10", oneSided(500, 400).owed());
        assertEquals("fan 400, duct 300, board 10", oneSided(300, 400).owed());
    }

    @Test
    void onlyDebtsThatNoMovePaysTwoOfArePaidApart() {
        Outset at = free(Toy.of(covers()), "board");
        MoveBound moves = at.moves();
        MoveBound.Debt lid = moves.debt(at.c.part("lid"));
        MoveBound.Debt flap = moves.debt(at.c.part("flap"));
        MoveBound.Debt board = moves.debt(at.c.part("board"));
        assertTrue(moves.paidApart(lid, List.of()));
        assertTrue(moves.paidApart(lid, List.of(board)));
        assertFalse(moves.paidApart(lid, List.of(board, flap)));
    }
}
