package reseat.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static reseat.simulate.Sketch.move;
import static reseat.simulate.Sketch.release;
import static reseat.simulate.Sketch.way;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

class GoalRulesTest {

    private static final Goal FREE_FAN = new Goal.Free(List.of("fan"));

    private final Sketch fan =
            new Sketch()
                    .part("fan")
                    .part("duct")
                    .joint("clip", "fan", "duct")
                    .cable("fan-plug", "fan", "frame");

    @Test
    void aFreePartIsConnectedToNothing() {
        assertMissing("The fan is still connected to the duct by the clip.", fan, FREE_FAN);
        assertMissing(
                "The fan is still connected to the frame by the fan plug.",
                fan,
                FREE_FAN,
                release("clip"),
                move("fan"));
    }

    @Test
    void aFreePartSharesItsPlaceWithNothing() {
        assertMissing(
                "The fan still lies with the frame and the duct.",
                fan,
                FREE_FAN,
                release("clip"),
                release("fan-plug"));
        assertHolds(fan, FREE_FAN, release("clip"), release("fan-plug"), move("fan"));
    }

    @Test
    void aPartLaidAsideIsFreeWithItsLastJoint() {
        assertHolds(fan, FREE_FAN, release("clip"), move("fan"), release("fan-plug"));
    }

    @Test
    void whatItsSpareUnitIncludesMayStayOnIt() {
        fan.includes("fan", "duct");
        assertHolds(fan, FREE_FAN, release("fan-plug"), move("fan", "duct"));
    }

    @Test
    void onlyJointsOfTheTargetItselfCount() {
        fan.includes("fan", "duct").cable("duct-tether", "duct", "frame");
        assertHolds(fan, FREE_FAN, release("fan-plug"), move("fan", "duct"));
    }

    @Test
    void eachOfSeveralTargetsIsFreeOfTheOthers() {
        Goal both = new Goal.Free(List.of("fan", "duct"));
        assertMissing(
                "The fan is still connected to the duct by the clip.",
                fan,
                both,
                release("fan-plug"),
                move("fan", "duct"));
        assertMissing(
                "The fan still lies with the duct.",
                fan,
                both,
                release("fan-plug"),
                move("fan", "duct"),
                release("clip"));
        assertHolds(
                fan, both, release("fan-plug"), move("fan", "duct"), release("clip"), move("fan"));
    }

    @Test
    void aJointIsReachedWhenItCouldBeReleasedNow() {
        fan.hiddenBy("fan-plug", "fan").needs("fan-plug", "cell").cuts("clip", "cell");
        Goal reach = new Goal.Reach("fan-plug");
        assertMissing("The fan still lies over the fan plug: move the fan first.", fan, reach);
        assertMissing(
                "The main cell is still on: release the clip before the fan plug.",
                fan,
                reach,
                move("fan", "duct"));
        assertHolds(fan, reach, move("fan", "duct"), release("clip"));
    }

    @Test
    void aReleasedJointCanNoLongerBeReached() {
        assertMissing(
                "The clip is already released.", fan, new Goal.Reach("clip"), release("clip"));
    }

    @Test
    void aJointIsNotReachedIfTheRulesLeaveNoWay() {
        fan.ways(
                "clip",
                way("cut", "tweezers", "face-up", 1, 1, "duct"),
                way("pry", "t5", "face-up", 1, 1));
        Goal reach = new Goal.Reach("clip");
        Rules rules = Rules.none().forbidTools(List.of("t5"));
        assertEquals(Optional.empty(), judge(fan, reach, Rules.none()).goalMissing());
        assertEquals(
                Optional.of("The rules leave no way to release the clip."),
                judge(fan, reach, rules).goalMissing());
        assertEquals(
                Optional.empty(),
                judge(fan, reach, rules.permitRuin(List.of("duct"))).goalMissing());
    }

    @Test
    void aFullTeardownReleasesEveryJointAndPartsEveryPlace() {
        Goal all = new Goal.Teardown();
        assertMissing("The clip and 1 more are not released yet.", fan, all);
        assertMissing("The fan plug is not released yet.", fan, all, release("clip"));
        assertMissing(
                "The frame still lies with the duct.",
                fan,
                all,
                release("clip"),
                release("fan-plug"),
                move("fan"));
        assertHolds(fan, all, release("clip"), release("fan-plug"), move("fan"), move("duct"));
    }

    @Test
    void theGoalMayHoldFromAHalfOpenStart() {
        State start = new State(Set.of("clip", "fan-plug"), List.of(Set.of("fan")));
        Verdict verdict = Simulator.judge(fan.device(), start, FREE_FAN, Rules.none(), List.of());
        assertEquals(List.of(), verdict.sentences());
        assertEquals(start, verdict.end());
    }

    @Test
    void aStartThatNoUnitCanBeInIsRefused() {
        assertFault(
                "The start releases joint \"x\", which the device does not have.",
                new State(Set.of("x"), List.of()));
        assertFault(
                "The start places part \"y\", which the device does not have.",
                new State(Set.of(), List.of(Set.of("y"))));
        assertFault(
                "The start places part \"fan\" twice.",
                new State(Set.of("clip"), List.of(Set.of("fan"), Set.of("fan"))));
        assertFault(
                "The fan and the duct lie apart at the start although the clip still holds them together.",
                new State(Set.of(), List.of(Set.of("fan"))));
    }

    @Test
    void aGoalThatTheDeviceDoesNotKnowIsRefused() {
        for (Goal goal :
                List.of(
                        new Goal.Free(List.of("frame")),
                        new Goal.Free(List.of("x")),
                        new Goal.Reach("x"))) {
            assertThrows(IllegalArgumentException.class, () -> judge(fan, goal, Rules.none()));
        }
    }

    private void assertFault(String sentence, State start) {
        assertEquals(List.of(sentence), Simulator.faultsOf(fan.device(), start));
        assertThrows(
                IllegalArgumentException.class,
                () -> Simulator.simulate(fan.device(), start, List.of()));
    }

    private static Verdict judge(Sketch sketch, Goal goal, Rules rules, Act... acts) {
        return Simulator.judge(sketch.device(), State.closed(), goal, rules, List.of(acts));
    }

    private static void assertMissing(String sentence, Sketch sketch, Goal goal, Act... acts) {
        assertEquals(List.of(sentence), judge(sketch, goal, Rules.none(), acts).sentences());
    }

    private static void assertHolds(Sketch sketch, Goal goal, Act... acts) {
        assertEquals(List.of(), judge(sketch, goal, Rules.none(), acts).sentences());
    }
}
