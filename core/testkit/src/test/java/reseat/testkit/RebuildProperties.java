package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;
import reseat.planner.Planner;

/** What holds of the rebuild of any plan on any device. */
class RebuildProperties {

    private static final int DEVICES = 60;
    private static final DeviceShape POWERED =
            new DeviceShape(8, 16, 1.2, 3, 2, 0.2, 0.2, 2, 2).withScrews(0.5);

    @Test
    void whatNeedsASupplyCutIsMadeWhileItIsCut() {
        int seen = 0;
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = GeneratedDevice.of(POWERED, seed);
            Plan plan = teardown(device);
            Set<String> open = new HashSet<>();
            plan.acts().forEach(each -> released(each, open));
            for (RebuildAct each : plan.rebuild().acts()) {
                if (each.kind() == RebuildAct.Kind.MAKE) {
                    Joint joint = device.joint(each.joints().get(0));
                    for (String supply : device.power().needs(joint)) {
                        seen++;
                        String what = device.id() + ": " + joint.id() + " is made while live";
                        assertTrue(isCut(device, supply, open, joint.id()), what);
                    }
                    open.remove(joint.id());
                }
            }
            assertEquals(Set.of(), open, device.id());
        }
        assertTrue(seen >= DEVICES, "only " + seen + " joints that need a supply cut");
    }

    @Test
    void everyActIsUndoneOnceAndTheTallyCloses() {
        int screws = 0;
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = GeneratedDevice.of(POWERED, seed);
            Plan plan = teardown(device);
            Rebuild rebuild = plan.rebuild();

            List<Integer> undone =
                    rebuild.acts().stream()
                            .filter(act -> act.kind().isUndoing())
                            .map(act -> act.undoes().orElseThrow())
                            .sorted()
                            .toList();
            assertEquals(plan.acts().size(), undone.size(), device.id());
            assertEquals(plan.acts().size(), new HashSet<>(undone).size(), device.id());
            Tally tally = Tally.of(plan, rebuild);
            assertTrue(tally.closes(), device.id());
            assertEquals(0, tally.left(), device.id());
            long seats =
                    device.joints().values().stream().filter(j -> j.seat().isPresent()).count();
            assertEquals(seats, tally.screwsOut(), device.id());
            screws += tally.screwsOut();
        }
        assertTrue(screws >= 5 * DEVICES, "only " + screws + " screws");
    }

    @Test
    void theTallyOfAPlanCutShortTellsWhatIsStillOut() {
        int open = 0;
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = GeneratedDevice.of(POWERED, seed);
            Plan plan = teardown(device);
            Rebuild whole = plan.rebuild();
            List<RebuildAct> half = whole.acts().subList(0, whole.acts().size() / 2);
            Tally tally =
                    Tally.of(
                            plan,
                            Rebuild.of(
                                    plan, half, 0, Plan.Ended.TIME, State.closed()));
            open += tally.left();
            assertEquals(tally.left() == 0, tally.closes(), device.id());
        }
        assertTrue(open > DEVICES, "only " + open + " screws left out");
    }

    @Test
    void screwsChangeNoPlan() {
        for (long seed = 1; seed <= 10; seed++) {
            Plan with = teardown(GeneratedDevice.of(POWERED, seed));
            Plan without = teardown(GeneratedDevice.of(POWERED.withScrews(0), seed));
            assertEquals(without.acts(), with.acts());
        }
    }

    @Test
    void aHalfOpenUnitIsClosedWholeUnlessAskedOtherwise() {
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = GeneratedDevice.of(POWERED, seed);
            List<CostedAct> acts = teardown(device).acts();
            Set<String> first = new HashSet<>();
            int n = 0;
            while (n < acts.size() / 3 && acts.get(n).act() instanceof Act.Release) {
                released(acts.get(n++), first);
            }
            PlanRequest request = request(device).from(new State(first, List.of()));
            Rebuild whole = plan(request).rebuild();
            Rebuild half = plan(request.leavingOpen()).rebuild();

            assertEquals(List.of(), whole.leftOpen(), device.id());
            assertEquals(first, new HashSet<>(half.leftOpen()), device.id());
            assertEquals(
                    first.size(),
                    whole.acts().stream()
                            .filter(act -> act.kind() == RebuildAct.Kind.MAKE)
                            .filter(act -> act.undoes().isEmpty())
                            .count());
            assertTrue(Tally.of(plan(request), whole).closes(), device.id());
        }
    }

    private static Plan teardown(Device device) {
        return plan(request(device));
    }

    private static PlanRequest request(Device device) {
        return PlanRequest.of(device, new Goal.Teardown()).with(Effort.ofExpansions(3000));
    }

    private static Plan plan(PlanRequest request) {
        return assertInstanceOf(PlanResult.Found.class, new Planner().plan(request)).plan();
    }

    private static void released(CostedAct act, Set<String> open) {
        if (act.act() instanceof Act.Release release) {
            open.add(release.joint());
        }
    }

    private static boolean isCut(Device device, String supply, Set<String> open, String but) {
        return open.stream()
                .filter(id -> !id.equals(but))
                .anyMatch(id -> device.joint(id).cuts().contains(supply));
    }
}
