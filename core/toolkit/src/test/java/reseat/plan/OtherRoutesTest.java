package reseat.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import reseat.graph.Toy;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;

import java.util.List;
import java.util.Set;

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

    @Test
    void areGivenCheapestFirst() {
        PlanRequest both =
                PlanRequest.of(THREE_WAYS, REACH)
                        .with(
                                Rules.none()
                                        .forbidJoints(List.of("front-link"))
                                        .requireJoints(List.of("front-clip")));
        Plan side = Given.plan(both);
        List<Plan> others = new Planner().otherRoutes(side, 5, Watch.NONE);
        assertEquals(
                others.stream().map(Plan::totalMs).sorted().toList(),
                others.stream().map(Plan::totalMs).toList());
        assertEquals(List.of(Set.of("rear")), others.stream().map(Plan::movedParts).toList());
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
