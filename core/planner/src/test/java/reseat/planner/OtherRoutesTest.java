package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;

/** Other routes: the best plans that leave in place a part that the given plan moves. */
class OtherRoutesTest {

    /**
     * The fan plug needs the cell cut. That takes the front (one clip), the side (one screw) or the
     * rear (two screws); the fan itself comes off on every route.
     */
    private static final Device THREE_WAYS =
            Toy.of(
                    "part front",
                    "part side",
                    "part rear",
                    "part fan",
                    "joint front-clip holds front frame",
                    "joint side-screw holds side frame tool t5",
                    "joint rear-screw holds rear frame tool t5",
                    "joint rear-screw-2 holds rear frame tool t5",
                    "joint front-link holds fan frame under front cuts cell slack",
                    "joint side-link holds fan frame under side cuts cell slack",
                    "joint rear-link holds fan frame under rear cuts cell slack",
                    "joint fan-plug holds fan frame needs cell");

    private static final Goal REACH = new Goal.Reach("fan-plug");

    private static Plan best() {
        return Given.plan(PlanRequest.of(THREE_WAYS, REACH));
    }

    @Test
    void leaveOutWhatThePlanMoves() {
        Plan best = best();
        assertEquals(Set.of("front"), best.movedParts());
        List<Plan> others = new Planner().otherRoutes(best, 5, Watch.NONE);
        assertEquals(1, others.size());
        assertEquals(Set.of("side"), others.get(0).movedParts());
        assertTrue(others.get(0).proved() && others.get(0).totalMs() > best.totalMs());
    }

    /**
     * Two supplies: the cell is cut behind a or behind b, which costs two screws; the dock behind c
     * or behind d, which costs one.
     */
    private static final Device TWO_SUPPLIES =
            Toy.of(
                    "part a",
                    "part b",
                    "part c",
                    "part d",
                    "joint b-screw holds b frame tool t5",
                    "joint b-screw-2 holds b frame tool t5",
                    "joint d-screw holds d frame tool t5",
                    "joint a-link holds a frame under a cuts cell slack",
                    "joint b-link holds b frame under b cuts cell slack",
                    "joint c-link holds c frame under c cuts dock slack",
                    "joint d-link holds d frame under d cuts dock slack",
                    "joint plug holds a c frame slack needs cell dock");

    @Test
    void areGivenCheapestFirst() {
        Plan best = Given.plan(PlanRequest.of(TWO_SUPPLIES, new Goal.Reach("plug")));
        assertEquals(List.of("a", "c"), List.copyOf(best.movedParts()));
        List<Plan> others = new Planner().otherRoutes(best, 5, Watch.NONE);
        assertEquals(
                List.of(Set.of("a", "d"), Set.of("b", "c")),
                others.stream().map(Plan::movedParts).toList(),
                "without c first, though a is moved first");
        assertEquals(1, new Planner().otherRoutes(best, 1, Watch.NONE).size());
    }

    /** Leaving the front or leaving the flap both mean the rear: that is one route. */
    @Test
    void thatMoveTheSamePartsAreOne() {
        Device twoCovers =
                Toy.of(
                        "part front",
                        "part flap",
                        "part rear",
                        "joint rear-screw holds rear frame tool t5",
                        "joint rear-screw-2 holds rear frame tool t5",
                        "joint rear-screw-3 holds rear frame tool t5",
                        "joint front-link holds front frame under front flap cuts cell slack",
                        "joint flap-cord holds flap frame slack",
                        "joint rear-link holds rear frame under rear cuts cell slack",
                        "joint plug holds rear frame slack needs cell");
        Plan best = Given.plan(PlanRequest.of(twoCovers, new Goal.Reach("plug")));
        assertEquals(Set.of("front", "flap"), best.movedParts());
        assertEquals(
                List.of(Set.of("rear")),
                new Planner()
                        .otherRoutes(best, 5, Watch.NONE).stream().map(Plan::movedParts).toList());
    }

    @Test
    void areNoMoreThanAskedFor() {
        assertEquals(List.of(), new Planner().otherRoutes(best(), 0, Watch.NONE));
    }

    @Test
    void areNotLookedForOnceCancelled() {
        Watch cancelled =
                new Watch() {
                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                };
        assertEquals(List.of(), new Planner().otherRoutes(best(), 5, cancelled));
    }
}
