package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
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

    private static final int DEVICES = SmallDevices.most(150);
    private static final int MOST_ITEMS = 6;

    private static final List<Plan> PLANS = made();

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
        return PLANS;
    }

    private static List<Plan> made() {
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
        assertEquals(List.of(), wrong, () -> wrong.size() + " rebuilds of " + plans.size());
        assertEquals(null, seen.get("unproved"), seen::toString);
        assertTrue(
                seen.keySet().containsAll(List.of("BED", "WAIT", "DOCK", "SWITCH_ON", "FOLD_BACK")),
                seen::toString);
    }

    @Test
    void aUnitThatArrivesHalfOpenIsClosedWhole() {
        int open = 0;
        int whole = 0;
        for (long seed = 1; seed <= DEVICES; seed++) {
            List<SmallDevices.Stand> walk = SmallDevices.walk(seed, 4);
            State start = walk.get(walk.size() - 1).request().start();
            Optional<Plan> plan = plan(seed, new Goal.Teardown(), start);
            if (plan.isPresent() && !start.released().isEmpty()) {
                Rebuild rebuild = plan.get().rebuild();
                open++;
                whole += rebuild.end().equals(State.closed()) ? 1 : 0;
                assertEquals(List.of(), RebuildJudge.faults(plan.get(), rebuild), plan::toString);
            }
        }
        assertTrue(open >= DEVICES / 4, "only " + open + " units");
        assertTrue(100 * whole >= 85 * open, whole + " of " + open + " are closed whole");
    }

    @Test
    void noOrderThatTheJudgeAcceptsHasLessSetups() {
        int compared = 0;
        int orders = 0;
        for (Plan plan : plans()) {
            Rebuild rebuild = plan.rebuild();
            List<RebuildAct> items = items(rebuild);
            if (items.size() > MOST_ITEMS || items.isEmpty()) {
                continue;
            }
            assertTrue(rebuild.proved(), plan::toString);
            Orders all = new Orders(plan, rebuild.end());
            all.permute(new ArrayList<>(), new ArrayList<>(items));
            assertEquals(all.leastMs, rebuild.setupMs(), plan::toString);
            compared++;
            orders += all.valid;
        }
        assertTrue(compared >= DEVICES / 8, "only " + compared + " rebuilds");
        assertTrue(orders > 2 * compared, "only " + orders + " valid orders");
    }

    private static List<RebuildAct> items(Rebuild rebuild) {
        return rebuild.acts().stream()
                .filter(act -> act.kind().isUndoing() || act.kind() == RebuildAct.Kind.BED)
                .toList();
    }

    /** All orders of a few items. */
    private static final class Orders {
        private final Plan plan;
        private final State end;
        private long leastMs = Long.MAX_VALUE;
        private int valid;

        Orders(Plan plan, State end) {
            this.plan = plan;
            this.end = end;
        }

        void permute(List<RebuildAct> done, List<RebuildAct> left) {
            if (left.isEmpty()) {
                long ms = RebuildJudge.setupMs(plan, end, done);
                if (RebuildJudge.orderFaults(plan, end, done).isEmpty()) {
                    valid++;
                    leastMs = Math.min(leastMs, ms);
                }
                return;
            }
            for (RebuildAct next : left) {
                List<RebuildAct> rest = new ArrayList<>(left);
                rest.remove(next);
                done.add(next);
                permute(done, rest);
                done.remove(done.size() - 1);
            }
        }
    }

    /** Swaps any two items: the judge objects, or the order is no better. */
    @Test
    void swappingTwoActsIsFoundOrGainsNothing() {
        int found = 0;
        int harmless = 0;
        for (Plan plan : plans().subList(0, 60)) {
            Rebuild rebuild = plan.rebuild();
            List<RebuildAct> items = items(rebuild);
            Random random = new Random(items.size());
            for (int k = 0; k < 6 && items.size() > 1; k++) {
                List<RebuildAct> swapped = new ArrayList<>(items);
                Collections.swap(
                        swapped, random.nextInt(items.size()), random.nextInt(items.size()));
                if (RebuildJudge.orderFaults(plan, rebuild.end(), swapped).isEmpty()) {
                    harmless++;
                    long ms = RebuildJudge.setupMs(plan, rebuild.end(), swapped);
                    assertTrue(ms >= rebuild.setupMs(), plan::toString);
                } else {
                    found++;
                }
            }
        }
        assertTrue(found > 2 * harmless, found + " against " + harmless);
    }

    /** A fault put into a rebuild, and in how many rebuilds it can be. */
    private record Mutant(String name, Function<List<RebuildAct>, List<RebuildAct>> change) {}

    private static final List<Mutant> MUTANTS =
            List.of(
                    new Mutant("no wait", acts -> without(acts, RebuildAct.Kind.WAIT)),
                    new Mutant("no bed", acts -> without(acts, RebuildAct.Kind.BED)),
                    new Mutant("not switched on", acts -> without(acts, RebuildAct.Kind.SWITCH_ON)),
                    new Mutant("left on", acts -> without(acts, RebuildAct.Kind.SWITCH_OFF)),
                    new Mutant("not docked", acts -> without(acts, RebuildAct.Kind.DOCK)),
                    new Mutant("left docked", acts -> without(acts, RebuildAct.Kind.UNDOCK)),
                    new Mutant("no test", acts -> without(acts, RebuildAct.Kind.TEST)),
                    new Mutant("bed last", acts -> last(acts, RebuildAct.Kind.BED)),
                    new Mutant("wait last", acts -> last(acts, RebuildAct.Kind.WAIT)),
                    new Mutant("test first", acts -> first(acts, RebuildAct.Kind.TEST)),
                    new Mutant("on first", acts -> first(acts, RebuildAct.Kind.SWITCH_ON)),
                    new Mutant("off last", acts -> last(acts, RebuildAct.Kind.SWITCH_OFF)));

    private static List<RebuildAct> without(List<RebuildAct> acts, RebuildAct.Kind kind) {
        List<RebuildAct> rest = new ArrayList<>(acts);
        last(acts, kind).stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .ifPresent(rest::remove);
        return rest;
    }

    private static List<RebuildAct> first(List<RebuildAct> acts, RebuildAct.Kind kind) {
        List<RebuildAct> moved = new ArrayList<>(acts);
        acts.stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .ifPresent(
                        act -> {
                            moved.remove(act);
                            moved.add(0, act);
                        });
        return moved;
    }

    private static List<RebuildAct> last(List<RebuildAct> acts, RebuildAct.Kind kind) {
        List<RebuildAct> moved = new ArrayList<>(acts);
        acts.stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .ifPresent(
                        act -> {
                            moved.remove(act);
                            moved.add(act);
                        });
        return moved;
    }

    @Test
    void faultsPutIntoRebuildsAreFound() {
        Map<String, Integer> found = new TreeMap<>();
        Map<String, Integer> missed = new TreeMap<>();
        for (Plan plan : plans()) {
            Rebuild rebuild = plan.rebuild();
            for (Mutant mutant : MUTANTS) {
                List<RebuildAct> acts = mutant.change.apply(rebuild.acts());
                if (acts.equals(rebuild.acts())) {
                    continue;
                }
                Rebuild wrong = Rebuild.of(plan, acts, 0, Plan.Ended.EXPANSIONS, rebuild.end());
                (RebuildJudge.faults(plan, wrong).isEmpty() ? missed : found)
                        .merge(mutant.name, 1, Integer::sum);
            }
        }
        assertEquals(Map.of(), missed);
        assertEquals(MUTANTS.size(), found.size(), found::toString);
    }
}
