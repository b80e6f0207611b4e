package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/** Large devices are planned with little effort: states, not time, are counted here. */
class LargeDevicesTest {

    private static final DeviceShape LARGE = DeviceShape.NOTEBOOK.sized(200, 600);
    private static final DeviceShape MIDDLE = DeviceShape.NOTEBOOK.sized(100, 300);

    @Test
    void aTargetInTwoHundredPartsComesNearTheBestPlan() {
        Device device = GeneratedDevice.of(LARGE, 3);
        for (String target : List.of("p100", "p166")) {
            Plan plan = plan(device, new Goal.Free(List.of(target)), 400);
            assertTrue(plan.gap() <= 0.03, () -> target + ": gap " + plan.gap());
        }
    }

    @Test
    void aFullTeardownOfAHundredPartsComesNearTheBestPlan() {
        for (long seed = 1; seed <= 2; seed++) {
            Plan plan = plan(GeneratedDevice.of(MIDDLE, seed), new Goal.Teardown(), 400);
            assertTrue(plan.gap() <= 0.02, () -> plan.request().device().id() + " " + plan.gap());
        }
    }

    @Test
    void theSameRequestGivesTheSamePlan() {
        Device device = GeneratedDevice.of(LARGE, 5);
        Goal goal = new Goal.Free(List.of("p140"));
        assertEquals(plan(device, goal, 100).acts(), plan(device, goal, 100).acts());
    }

    @Test
    void screwsAreAShareOfTheJoints() {
        Device device = GeneratedDevice.of(MIDDLE.withScrews(0.5), 1);
        long screws = device.joints().values().stream().filter(j -> j.seat().isPresent()).count();
        assertTrue(screws > 90 && screws < 180, () -> screws + " of 300 joints are screws");
        assertEquals(18, MIDDLE.setupClasses());
    }

    private static Plan plan(Device device, Goal goal, long expansions) {
        PlanRequest request = PlanRequest.of(device, goal).with(Effort.ofExpansions(expansions));
        Plan plan = assertInstanceOf(PlanResult.Found.class, new Planner().plan(request)).plan();
        Verdict verdict =
                Simulator.judge(
                        device,
                        State.closed(),
                        goal,
                        Rules.none(),
                        plan.acts().stream().map(CostedAct::act).toList());
        assertEquals(List.of(), verdict.sentences());
        assertEquals(plan.totalMs(), verdict.totalMs());
        return plan;
    }
}
