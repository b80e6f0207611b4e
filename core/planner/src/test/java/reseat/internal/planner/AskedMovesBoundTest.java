package reseat.internal.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.plan.PlanRequest;

/** What moves cost where some moves of given parts are asked for. */
class AskedMovesBoundTest {

    private static Outset together(Device device, String target, String... moves) {
        Rules rules = Rules.none().requireActs(List.of(moves));
        return new Outset(PlanRequest.of(device, new Goal.Free(List.of(target))).with(rules));
    }

    /** 700 and 500: the largest time and the largest restore time. The board still moves alone. */
    @Test
    void aMoveThatIsAskedForIsPaidAsAWhole() {
        Outset at = together(Toy.of(MoveBoundTest.covers()), "board", "move:flap+lid");
        assertEquals("lid 1200, board 100", at.owed());
        MoveBound.Debt move = at.debt("lid");
        assertTrue(move.exactly());
        assertEquals("flap lid", at.company(move));
    }

    /** A third cover, which the move does not take, pays for itself. */
    @Test
    void aMoveThatIsAskedForPaysForNoOther() {
        Outset at =
                together(
                        Toy.of(
                                "part board takes 100 0 under lid flap door",
                                "part lid takes 700 300",
                                "part flap takes 600 500",
                                "part door takes 400 0",
                                "joint glue holds board frame",
                                "joint hinge holds flap lid",
                                "joint bolt holds door lid"),
                        "board",
                        "move:flap+lid");
        assertEquals("lid 1200, door 400, board 100", at.owed());
    }

    @Test
    void eachMoveThatIsAskedForIsPaid() {
        Outset at = together(Toy.of(MoveBoundTest.covers()), "board", "move:flap+lid", "move:flap");
        assertEquals("lid 1200, flap 1100, board 100", at.owed());
    }

    /** The lid has to leave the case for the plug's sake: a move of both does not pay for that. */
    @Test
    void aMoveOfBothDoesNotPartThem() {
        Outset at =
                together(
                        Toy.of(MoveBoundTest.lines(MoveBoundTest.STACK)), "cable", "move:case+lid");
        assertEquals("case 2000, lid 1000, cable 200", at.owed());
    }

    /** A move of the lid alone does part it, and is what the plug needs. */
    @Test
    void aMoveOfTheCoverAlonePaysForItsLeaving() {
        Outset at = together(Toy.of(MoveBoundTest.lines(MoveBoundTest.STACK)), "cable", "move:lid");
        assertEquals("lid 1000, cable 200", at.owed());
    }
}
