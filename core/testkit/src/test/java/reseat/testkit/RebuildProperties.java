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
            for (RebuildAct each : Rebuild.of(plan).acts()) {
                if (each.kind() == RebuildAct.Kind.MAKE
                        && each.act() instanceof Act.Release release) {
                    Joint joint = device.joint(release.joint());
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
            Rebuild rebuild = Rebuild.of(plan);

            List<Integer> undone =
                    rebuild.acts().stream().map(RebuildAct::undoes).sorted().toList();
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
            Rebuild whole = Rebuild.of(plan);
            List<RebuildAct> half = whole.acts().subList(0, whole.acts().size() / 2);
            Tally tally =
                    Tally.of(
                            device,
                            plan.acts(),
                            new Rebuild(
                                    device,
                                    half,
                                    whole.fastenings(),
                                    whole.tests(),
                                    whole.consumables(),
                                    whole.spares(),
                                    whole.wear(),
                                    whole.leftOpen(),
                                    whole.leftApart()));
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
    void aHalfOpenUnitIsClosedAsFarAsItWasOpened() {
        for (long seed = 1; seed <= DEVICES; seed++) {
            Device device = GeneratedDevice.of(POWERED, seed);
            Plan plan = teardown(device);
            Set<String> first = new HashSet<>();
            List<CostedAct> acts = plan.acts();
            int n = 0;
            while (n < acts.size() / 3 && acts.get(n).act() instanceof Act.Release) {
                released(acts.get(n++), first);
            }
            State start = new State(first, List.of());
            Rebuild rebuild = Rebuild.of(device, start, acts.subList(n, acts.size()), List.of());

            assertEquals(acts.size() - n, rebuild.acts().size(), device.id());
            assertEquals(first, new HashSet<>(rebuild.leftOpen()), device.id());
        }
    }

    private static Plan teardown(Device device) {
        PlanRequest request =
                PlanRequest.of(device, new Goal.Teardown()).with(Effort.ofExpansions(3000));
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
