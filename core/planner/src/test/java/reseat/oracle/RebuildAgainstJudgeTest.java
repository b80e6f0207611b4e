package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.planner.Planner;

/** Rebuilds of random devices against the judge, and against all orders where they are few. */
class RebuildAgainstJudgeTest {

    private static final int DEVICES = SmallDevices.most(400);
    private static final int MOST_ITEMS = 7;

    private final Map<String, Integer> seen = new HashMap<>();

    private static Optional<Plan> plan(long seed, Goal goal, State start) {
        Device device = RebuildCases.of(seed);
        return new Planner()
                .plan(
                        new PlanRequest(
                                device,
                                goal,
                                start,
                                Rules.none().permitRuin(device.parts().keySet()),
                                Effort.ofExpansions(20_000)))
                .best();
    }

    private static List<Plan> plans() {
        List<Plan> plans = new ArrayList<>();
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = RebuildCases.of(seed);
            List<String> parts = new ArrayList<>(device.parts().keySet());
            parts.remove(device.base());
            String part = parts.get(new Random(seed).nextInt(parts.size()));
            plan(seed, new Goal.Free(List.of(part)), State.closed()).ifPresent(plans::add);
            plan(seed, new Goal.Teardown(), State.closed()).ifPresent(plans::add);
        }
        return plans;
    }

    @Test
    void theJudgeFindsNothingInAnyRebuild() {
        List<Plan> plans = plans();
        List<String> wrong = new ArrayList<>();
        for (Plan plan : plans) {
            Rebuild rebuild = plan.rebuild();
            List<String> found = RebuildJudge.faults(plan, rebuild);
            if (!found.isEmpty()) {
                wrong.add(plan.request().device().id() + " " + plan.request().goal() + " " + found);
            }
            rebuild.acts().forEach(act -> seen.merge(act.kind().name(), 1, Integer::sum));
            if (!rebuild.proved()) {
                seen.merge("unproved", 1, Integer::sum);
            }
        }
        System.out.println(plans.size() + " rebuilds: " + seen);
        assertEquals(List.of(), wrong, () -> wrong.size() + " rebuilds of " + plans.size());
    }

    private static String told(Rebuild rebuild) {
        StringBuilder text = new StringBuilder();
        for (RebuildAct act : rebuild.acts()) {
            text.append(act.kind())
                    .append(' ')
                    .append(act.act().map(Object::toString).orElse(""))
                    .append(act.joints())
                    .append(act.test().map(t -> t.toString()).orElse(""))
                    .append(act.irreversible() ? " for good" : "")
                    .append(act.dwellMs() > 0 ? " " + act.rest() + act.dwellMs() : "")
                    .append('\n');
        }
        return text.toString();
    }
}
