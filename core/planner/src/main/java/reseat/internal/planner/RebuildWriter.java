package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Way;
import reseat.plan.Plan;
import reseat.plan.RebuildAct;
import reseat.plan.Stand;

/**
 * Writes the acts of a rebuild down in their order, and adds what takes the device as it is: waits,
 * tests, switching on and off, the dock.
 */
public final class RebuildWriter {

    private final RebuildItems items;
    private final RebuildTests tests;
    private final Device device;
    private final List<RebuildAct> acts = new ArrayList<>();
    private final Rests rests;
    private final Set<Integer> done = new LinkedHashSet<>();
    private final Set<FunctionTest> made = new LinkedHashSet<>();
    private final Set<String> notYetFresh = new LinkedHashSet<>();
    private String tool;
    private String posture;

    public RebuildWriter(Plan plan, RebuildItems items, RebuildTests tests) {
        this.items = items;
        this.tests = tests;
        this.device = items.device();
        this.rests = new Rests(device);
        this.tool = device.hand();
        this.posture = endPosture(plan);
        plan.acts().stream()
                .map(costed -> costed.act())
                .filter(Act.Release.class::isInstance)
                .map(Act.Release.class::cast)
                .forEach(
                        release ->
                                Optional.ofNullable(
                                                device.joint(release.joint())
                                                        .ways()
                                                        .get(release.way()))
                                        .ifPresent(way -> notYetFresh.addAll(way.ruins())));
    }

    /** Returns how the device lies when the teardown is done. */
    public static String endPosture(Plan plan) {
        return plan.acts().isEmpty()
                ? plan.request().device().usualPosture()
                : plan.acts().get(plan.acts().size() - 1).posture();
    }

    /** Returns the acts of a valid order of the items. */
    public List<RebuildAct> write(List<Integer> order) {
        List<Stand> stands = items.stands(order);
        for (int k = 0; k < order.size(); k++) {
            Undoing item = items.get(order.get(k));
            Stand before = stands.get(k);
            Closing closing = closing(item, before, stands.get(k + 1));
            boolean forGood =
                    closing.irreversible() || sticksForGood(item, before, stands.get(k + 1));
            if (item.kind().isUndoing() && (forGood || closing.dwellMs() > 0)) {
                testsBefore(forGood, before);
                if (turns(item)) {
                    rests.cure().ifPresent(wait -> rest(wait, before));
                    testsBefore(forGood, before);
                }
            }
            item(item, before, stands.get(k + 1));
            done.add(order.get(k));
        }
        Stand end = stands.get(stands.size() - 1);
        List<FunctionTest> left =
                tests.due().stream().filter(test -> !made.contains(test)).toList();
        test(left.stream().filter(t -> !t.leak() && !rests.isDisturbedBy(t)).toList(), end);
        test(left.stream().filter(t -> !t.leak() && !made.contains(t)).toList(), end);
        rests.cure().ifPresent(wait -> rest(wait, end));
        test(left.stream().filter(FunctionTest::leak).toList(), end);
        return List.copyOf(acts);
    }

    private boolean turns(Undoing item) {
        return !item.posture().orElse(posture).equals(posture);
    }

    /** Returns whether a placing brings parts onto a bed that holds them for good. */
    private boolean sticksForGood(Undoing item, Stand before, Stand after) {
        return item.kind().isPlacing()
                && device.joints().values().stream()
                        .filter(joint -> items.sticksForGood(joint))
                        .anyMatch(joint -> before.isApart(joint) && !after.isApart(joint));
    }

    private void testsBefore(boolean forGood, Stand now) {
        List<FunctionTest> ready = readyFor(forGood, now);
        while (!ready.isEmpty()) {
            test(ready, now);
            ready = readyFor(forGood, now);
        }
    }

    private List<FunctionTest> readyFor(boolean forGood, Stand now) {
        return tests.due().stream()
                .filter(test -> !test.leak() && !made.contains(test))
                .filter(test -> tests.isReady(test, done, now))
                .filter(test -> forGood || !rests.isDisturbedBy(test))
                .toList();
    }

    private void item(Undoing item, Stand before, Stand after) {
        String nextTool = item.tool().orElse(tool);
        String nextPosture = item.posture().orElse(posture);
        Closing closing = closing(item, before, after);
        List<Joint> closed = closing.joints();
        if (turns(item)) {
            rests.cure().ifPresent(wait -> rest(wait, before));
        }
        if (item.kind().isUndoing() && closed.stream().anyMatch(Joint::isIsolator)) {
            rests.dry().ifPresent(wait -> rest(wait, before));
        }
        boolean aside = !before.tethers().isEmpty();
        long setup = device.setup().setupMs(tool, posture, nextTool, nextPosture, aside);
        tool = nextTool;
        posture = nextPosture;
        List<String> fresh =
                item.kind().isUndoing()
                        ? involved(item).stream().filter(notYetFresh::contains).toList()
                        : List.of();
        notYetFresh.removeAll(fresh);
        RebuildAct act =
                new RebuildAct(
                        kindOf(item, before),
                        item.undoes(),
                        Optional.of(item.act()),
                        closed.stream().map(Joint::id).toList(),
                        Optional.empty(),
                        item.kind() == RebuildAct.Kind.MAKE
                                ? brings(closed.get(0), before)
                                : List.of(),
                        tool,
                        posture,
                        closing.ms(),
                        setup,
                        0,
                        Optional.empty(),
                        closing.consumes(),
                        closing.irreversible(),
                        fresh,
                        on(before));
        acts.add(act);
        rests.passed(act.ms() + act.setupMs());
        rests.begin(act, closing.dwellMs(), item.isFlammable(device));
    }

    private RebuildAct.Kind kindOf(Undoing item, Stand before) {
        if (!(item.kind().isPlacing() && item.act() instanceof Act.MoveParts move)) {
            return item.kind();
        }
        boolean hangs =
                before.tethers().stream()
                        .anyMatch(joint -> joint.holds().stream().anyMatch(move.parts()::contains));
        return hangs ? RebuildAct.Kind.FOLD_BACK : RebuildAct.Kind.PUT_BACK;
    }

    /** Parts of a joint that lie apart from its site and hang by nothing until it is made. */
    private List<String> brings(Joint joint, Stand open) {
        List<String> brought = new ArrayList<>();
        for (String part : joint.holds()) {
            boolean tethered =
                    open.tethers().stream()
                            .anyMatch(
                                    other ->
                                            other.holds().stream()
                                                    .anyMatch(p -> open.together(p, part)));
            if (!open.withBase(part) && open.isApart(joint) && !tethered) {
                brought.add(part);
            }
        }
        return brought;
    }

    private static List<String> involved(Undoing item) {
        if (item.act() instanceof Act.MoveParts move) {
            return move.parts();
        }
        return item.joints().stream().flatMap(joint -> joint.holds().stream()).toList();
    }

    private List<String> on(Stand stand) {
        return device.supplies().keySet().stream().filter(s -> !stand.isCut(s)).toList();
    }

    /** Makes tests: switched off first, then on the bench, then where the device has to be set. */
    private void test(List<FunctionTest> all, Stand now) {
        Set<String> places = new LinkedHashSet<>(Set.of(FunctionTest.BENCH));
        all.forEach(test -> places.add(test.at()));
        for (String place : places) {
            List<FunctionTest> here = all.stream().filter(t -> t.at().equals(place)).toList();
            if (here.isEmpty()) {
                continue;
            }
            if (here.stream().anyMatch(rests::isDisturbedBy)) {
                rests.cure().ifPresent(wait -> rest(wait, now));
            }
            Optional<FunctionTest> docked =
                    here.stream().filter(FunctionTest::isDocked).findFirst();
            docked.ifPresent(test -> extra(RebuildAct.Kind.DOCK, test, now));
            here.stream().filter(t -> !t.powered()).forEach(t -> one(t, now));
            List<FunctionTest> powered = here.stream().filter(FunctionTest::powered).toList();
            if (!powered.isEmpty()) {
                rests.dry().ifPresent(wait -> rest(wait, now));
                extra(RebuildAct.Kind.SWITCH_ON, powered.get(0), now);
                powered.forEach(t -> one(t, now));
                extra(RebuildAct.Kind.SWITCH_OFF, powered.get(powered.size() - 1), now);
            }
            docked.ifPresent(test -> extra(RebuildAct.Kind.UNDOCK, test, now));
        }
    }

    private void one(FunctionTest test, Stand now) {
        extra(RebuildAct.Kind.TEST, test, now);
        made.add(test);
    }

    private void extra(RebuildAct.Kind kind, FunctionTest test, Stand now) {
        acts.add(
                new RebuildAct(
                        kind,
                        OptionalInt.empty(),
                        Optional.empty(),
                        List.of(),
                        Optional.of(test),
                        List.of(),
                        tool,
                        posture,
                        0,
                        0,
                        0,
                        Optional.empty(),
                        List.of(),
                        false,
                        List.of(),
                        on(now)));
    }

    private void rest(Rests.Wait wait, Stand now) {
        acts.add(
                new RebuildAct(
                        RebuildAct.Kind.WAIT,
                        OptionalInt.empty(),
                        Optional.empty(),
                        wait.joints(),
                        Optional.empty(),
                        List.of(),
                        tool,
                        posture,
                        0,
                        0,
                        wait.ms(),
                        Optional.of(wait.rest()),
                        List.of(),
                        false,
                        List.of(),
                        on(now)));
        rests.passed(wait.ms());
    }

    private Closing closing(Undoing item, Stand before, Stand after) {
        return Closing.of(
                device,
                item,
                item.kind() == RebuildAct.Kind.BED
                        ? item.joints()
                        : item.joints().stream()
                                .filter(j -> before.isReleased(j.id()) && !after.isReleased(j.id()))
                                .toList());
    }

    /** What an act does with the joints that close with it. */
    private record Closing(
            List<Joint> joints,
            long ms,
            List<ConsumableUse> consumes,
            boolean irreversible,
            long dwellMs) {

        static Closing of(Device device, Undoing item, List<Joint> closed) {
            long ms = item.ms();
            List<ConsumableUse> consumes = new ArrayList<>(item.consumes());
            boolean irreversible = item.irreversible();
            long dwellMs = item.dwellMs();
            if (item.kind().isPlacing()) {
                for (Joint joint : closed) {
                    Way way = joint.firstWay();
                    irreversible |= Undoing.isIrreversible(device, joint, way);
                    dwellMs = Math.max(dwellMs, Undoing.dwell(device, joint, way));
                    if (!device.kindOf(joint).laid()) {
                        ms += way.restoreMs();
                        consumes.addAll(way.consumes());
                    }
                }
            }
            return new Closing(closed, ms, consumes, irreversible, dwellMs);
        }
    }
}
