package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.given.Toy;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.State;
import reseat.oracle.SmallDevices;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;

/** Puts acts of toy devices in order; each change of tool takes 200 ms, each turn 300 ms. */
class ActOrderTest {

    /** A lid under two screws and a clip, above a board with a screw. */
    private static final Device LID =
            Toy.of(
                    "part lid",
                    "part board under lid",
                    "joint left holds lid frame tool t5",
                    "joint clip holds lid frame tool spudger",
                    "joint right holds lid frame tool t5",
                    "joint post holds board frame under lid tool t5");

    private static Act release(String joint) {
        return new Act.Release(joint, LID.joint(joint).ways().keySet().iterator().next());
    }

    private static Act move(String... parts) {
        return new Act.MoveParts(List.of(parts));
    }

    private static OrderAnswer find(OrderRequest request) {
        return ActOrder.find(request.with(Effort.ofExpansions(100_000)), Watch.NONE);
    }

    private static OrderAnswer.Found found(OrderRequest request) {
        return assertInstanceOf(OrderAnswer.Found.class, find(request));
    }

    private static OrderRequest lidOff(Act... acts) {
        return OrderRequest.of(LID, State.closed(), List.of(acts));
    }

    @Test
    void bringsActsWithTheSameToolTogether() {
        OrderAnswer.Found found =
                found(lidOff(release("left"), release("clip"), release("right"), move("lid")));
        assertTrue(found.proved());
        assertEquals(3 * 200, found.setupMs());
        assertEquals(4 * 1500, found.workMs());
        assertEquals(4 * 1500 + 3 * 200, found.totalMs());
        assertEquals(3, found.order().get(3));
    }

    @Test
    void rightsAnOrderThatIsNotAllowed() {
        OrderAnswer.Found found =
                found(
                        lidOff(
                                release("post"),
                                move("lid"),
                                release("right"),
                                release("left"),
                                release("clip")));
        assertEquals(0, found.order().get(4));
        assertEquals(1, found.order().get(3));
    }

    @Test
    void keepsThePairsOfTheCaller() {
        OrderRequest request =
                lidOff(release("left"), release("clip"), release("right"), move("lid"))
                        .before(0, 1)
                        .before(1, 2);
        OrderAnswer.Found found = found(request);
        assertEquals(List.of(0, 1, 2, 3), found.order());
        assertEquals(4 * 200, found.setupMs());
    }

    @Test
    void namesTheRulesThatCloseACircle() {
        OrderRequest request =
                lidOff(release("left"), release("clip"), release("right"), move("lid"))
                        .before(3, 1);
        OrderAnswer.Impossible no = assertInstanceOf(OrderAnswer.Impossible.class, find(request));
        assertEquals(2, no.reasons().size(), () -> no.reasons().toString());
        assertTrue(
                no.reasons()
                        .contains(
                                "move:lid must come before "
                                        + release("clip").id()
                                        + ": it is asked for."),
                () -> no.reasons().toString());
        assertTrue(
                no.reasons()
                        .contains(
                                release("clip").id()
                                        + " must come before move:lid: clip holds lid and frame."),
                () -> no.reasons().toString());
    }

    @Test
    void saysWhatNoneOfTheActsChanges() {
        OrderAnswer.Impossible no =
                assertInstanceOf(
                        OrderAnswer.Impossible.class, find(lidOff(release("left"), move("lid"))));
        assertEquals(
                List.of(
                        "move:lid: clip holds lid and frame, and none of the acts changes that",
                        "move:lid: right holds lid and frame, and none of the acts changes that"),
                no.reasons());
    }

    @Test
    void startsWhereTheUnitStands() {
        OrderAnswer.Found found =
                found(
                        OrderRequest.of(
                                LID,
                                new State(Set.of("left", "clip", "right"), List.of(Set.of("lid"))),
                                List.of(release("post"), move("board"))));
        assertEquals(List.of(0, 1), found.order());
    }

    @Test
    void doesOneOfTwoThingsBeforeWhereEitherWillDo() {
        // the plug is covered until cover or its site leaves
        Device device =
                Toy.of(
                        "part cover tool t5",
                        "part site tool spudger",
                        "joint plug holds site frame slack under cover tool spudger");
        Act plug = new Act.Release("plug", device.joint("plug").ways().keySet().iterator().next());
        OrderAnswer.Found found =
                found(
                        OrderRequest.of(
                                device,
                                State.closed(),
                                List.of(move("cover"), move("site"), plug)));
        assertTrue(found.proved());
        assertEquals(400, found.setupMs());
    }

    @Test
    void ordersARebuildSoThatItsReverseIsATeardown() {
        OrderRequest teardown =
                lidOff(move("lid"), release("left"), release("clip"), release("right"));
        OrderRequest rebuild =
                new OrderRequest(
                        teardown.setup(),
                        teardown.start(),
                        teardown.items(),
                        List.of(),
                        Optional.of(new OrderRequest.Unit(LID, State.closed(), true)),
                        teardown.effort());
        OrderAnswer.Found found = found(rebuild);
        assertEquals(0, found.order().get(0));
        assertEquals(400, found.setupMs());
    }

    @Test
    void ordersItemsThatKnowNoDevice() {
        OrderItem.Stance hand = new OrderItem.Stance("hand", "face-up");
        OrderItem.Stance bit = new OrderItem.Stance("t5", "face-up");
        OrderRequest request =
                OrderRequest.of(
                                LID.setup(),
                                hand,
                                List.of(
                                        item("bed", Optional.of(hand)),
                                        item("close", Optional.of(bit)),
                                        item("cure", Optional.empty()),
                                        item("test", Optional.of(hand)),
                                        item("seal", Optional.of(bit))))
                        .before(1, 2)
                        .before(2, 3);
        OrderAnswer.Found found = found(request);
        assertEquals(400, found.setupMs());
        assertEquals(List.of(0, 1, 2, 4, 3), found.order());
        assertEquals(50, found.workMs());
    }

    private static OrderItem item(String id, Optional<OrderItem.Stance> stance) {
        return new OrderItem(id, Optional.empty(), stance, 10);
    }

    @Test
    void ordersNothing() {
        OrderAnswer.Found found = found(lidOff());
        assertEquals(List.of(), found.order());
        assertTrue(found.proved());
    }

    @Test
    void refusesWhatMakesNoSense() {
        OrderRequest request = lidOff(release("left"), release("right"));
        assertThrows(IllegalArgumentException.class, () -> request.before(0, 0));
        assertThrows(IllegalArgumentException.class, () -> request.before(0, 2));
        assertThrows(
                IllegalArgumentException.class,
                () -> OrderRequest.of(LID.setup(), request.start(), request.items()));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        OrderRequest.of(
                                LID.setup(), new OrderItem.Stance("t9", "face-up"), List.of()));
    }

    @Test
    void sameEffortGivesTheSameOrder() {
        OrderRequest request =
                lidOff(release("left"), release("clip"), release("right"), move("lid"));
        assertEquals(find(request), find(request));
    }

    @Test
    void theActsOfAPlanNeverGetDearer() {
        int looked = 0;
        for (long seed = 1; seed <= 60; seed++) {
            PlanRequest request = SmallDevices.start(seed).request().with(Effort.ofExpansions(500));
            Optional<Plan> plan = new Planner().plan(request).best();
            if (plan.isEmpty()) {
                continue;
            }
            looked++;
            List<Act> acts = plan.get().acts().stream().map(CostedAct::act).toList();
            OrderAnswer.Found found =
                    found(OrderRequest.of(request.device(), request.start(), acts));
            assertTrue(found.totalMs() <= plan.get().totalMs(), "seed " + seed);
            assertTrue(
                    !plan.get().proved() || found.totalMs() == plan.get().totalMs(),
                    "seed " + seed);
        }
        assertTrue(looked > 20, looked + " plans");
    }
}
