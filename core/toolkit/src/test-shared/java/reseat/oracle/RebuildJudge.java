package reseat.oracle;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.State;
import reseat.model.Way;
import reseat.plan.Fastening;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Tally;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Judges a rebuild by the rules of the design, act by act. It shares no code with the maker: states
 * are its own, and whether an order is a valid teardown backwards is asked of the simulator.
 */
public final class RebuildJudge {

    /** How long a flammable cleaner dries, as the documents state it, in milliseconds. */
    private static final long DRY_MS = 120_000;

    private final Plan plan;
    private final Device device;
    private final State end;
    private final List<RebuildAct> acts;
    private final List<RebuildAct> undoing;
    private final List<String> faults = new ArrayList<>();

    /** Covers that lie over the site of a bed from the first act to the last, as sentences. */
    private final Set<String> neverReached = new LinkedHashSet<>();

    private RebuildJudge(Plan plan, State end, List<RebuildAct> acts) {
        this.plan = plan;
        this.device = plan.request().device();
        this.end = end;
        this.acts = acts;
        this.undoing = acts.stream().filter(act -> act.kind().isUndoing()).toList();
    }

    /** Returns what is wrong with a rebuild; empty if nothing is. */
    public static List<String> faults(Plan plan, Rebuild rebuild) {
        RebuildJudge judge = new RebuildJudge(plan, rebuild.end(), rebuild.acts());
        if (judge.order(true)) {
            judge.tests();
            judge.rests();
            judge.sums(rebuild);
            for (String each : judge.neverReached) {
                if (rebuild.broken().stream().noneMatch(said -> said.contains(each))) {
                    judge.faults.add("it does not say that " + each);
                }
            }
        }
        return judge.faults;
    }

    /**
     * Returns what is wrong with the order of closings, placings and beds; empty if nothing is.
     * Waits and tests may be missing.
     */
    public static List<String> orderFaults(Plan plan, State end, List<RebuildAct> acts) {
        RebuildJudge judge = new RebuildJudge(plan, end, acts);
        judge.order(false);
        return judge.faults;
    }

    /** Returns the set-ups of acts in their order, in milliseconds. */
    public static long setupMs(Plan plan, State end, List<RebuildAct> acts) {
        RebuildJudge judge = new RebuildJudge(plan, end, acts);
        return judge.setups().stream().mapToLong(Long::longValue).sum();
    }

    /** A unit: which joints are open, and with which parts each part lies. */
    private final class Unit {
        private final Set<String> open = new HashSet<>();
        private final Map<String, String> place = new HashMap<>();

        Unit(State from) {
            open.addAll(from.released());
            device.parts().keySet().forEach(part -> place.put(part, ""));
            for (Set<String> group : from.places()) {
                if (!group.contains(device.base())) {
                    group.forEach(part -> place.put(part, "start " + group));
                }
            }
        }

        private Unit(Unit other) {
            open.addAll(other.open);
            place.putAll(other.place);
        }

        Unit after(Act act, int number) {
            Unit next = new Unit(this);
            if (act instanceof Act.Release release) {
                next.open.add(release.joint());
            } else if (act instanceof Act.MoveParts move) {
                for (Joint joint : device.joints().values()) {
                    boolean in = joint.holds().stream().anyMatch(move.parts()::contains);
                    boolean out = joint.holds().stream().anyMatch(p -> !move.parts().contains(p));
                    if (joint.gives() && in && out) {
                        next.open.add(joint.id());
                    }
                }
                move.parts().forEach(part -> next.place.put(part, "move " + number));
            }
            return next;
        }

        boolean together(String one, String other) {
            return Objects.equals(place.get(one), place.get(other));
        }

        boolean isLive(String supply) {
            return open.stream().noneMatch(id -> device.joint(id).cuts().contains(supply));
        }

        boolean hangs() {
            return device.joints().values().stream()
                    .filter(joint -> !open.contains(joint.id()))
                    .anyMatch(j -> j.holds().stream().anyMatch(p -> !together(p, j.holds().get(0))));
        }
    }

    /** The unit before each act, and at the end. */
    private List<Unit> units() {
        List<Unit> backwards = new ArrayList<>(List.of(new Unit(end)));
        for (int at = acts.size() - 1; at >= 0; at--) {
            Unit last = backwards.get(backwards.size() - 1);
            RebuildAct act = acts.get(at);
            backwards.add(
                    act.kind().isUndoing() ? last.after(act.act().orElseThrow(), at) : last);
        }
        Collections.reverse(backwards);
        return backwards;
    }

    private boolean order(boolean whole) {
        Optional<Verdict> verdict = backwards(undoing);
        if (verdict.isEmpty()) {
            faults.add("backwards it is no teardown");
            return false;
        }
        List<Act> teardown = plan.acts().stream().map(CostedAct::act).toList();
        State reached = Simulator.simulate(device, plan.request().start(), teardown).end();
        if (!Set.copyOf(reached.places()).equals(Set.copyOf(verdict.get().end().places()))
                || !reached.released().equals(verdict.get().end().released())) {
            faults.add("backwards it does not end where the plan does");
        }
        List<Integer> undone =
                undoing.stream()
                        .filter(act -> act.undoes().isPresent())
                        .map(act -> act.undoes().getAsInt())
                        .toList();
        if (undone.size() != plan.acts().size()
                || new HashSet<>(undone).size() != plan.acts().size()) {
            faults.add("it does not undo each act of the plan once");
        }
        List<Unit> units = units();
        beds(units);
        isolators(whole);
        late();
        return true;
    }

    /** What the simulator says of acts read backwards; empty if it refuses them. */
    private Optional<Verdict> backwards(List<RebuildAct> order) {
        List<Act> teardown = new ArrayList<>();
        order.forEach(act -> teardown.add(0, act.act().orElseThrow()));
        List<Act> prepared = new ArrayList<>();
        for (String id : device.prepares().keySet()) {
            if (!teardown.contains(new Act.Prepared(id))) {
                prepared.add(new Act.Prepared(id));
            }
        }
        prepared.addAll(teardown);
        Verdict verdict = Simulator.simulate(device, end, prepared);
        return verdict.allowed() ? Optional.of(verdict) : Optional.empty();
    }

    /** Returns whether one act could also come just before an earlier one. */
    private boolean couldComeBefore(RebuildAct later, RebuildAct earlier) {
        List<RebuildAct> order = new ArrayList<>(undoing);
        order.remove(later);
        int to = order.indexOf(earlier);
        boolean connects =
                order.subList(to, undoing.indexOf(later)).stream()
                        .anyMatch(passed -> connectsWhat(later, passed));
        order.add(to, later);
        return !connects && backwards(order).isPresent();
    }

    private void beds(List<Unit> units) {
        for (int at = 0; at < acts.size(); at++) {
            RebuildAct act = acts.get(at);
            if (!act.kind().isUndoing()) {
                continue;
            }
            for (String id : act.joints()) {
                if (device.kindOf(device.joint(id)).laid()) {
                    bed(id, at, units);
                }
            }
        }
    }

    private void bed(String id, int closing, List<Unit> units) {
        Joint joint = device.joint(id);
        List<Integer> beds = new ArrayList<>();
        for (int at = 0; at < acts.size(); at++) {
            if (acts.get(at).kind() == RebuildAct.Kind.BED
                    && acts.get(at).joints().equals(List.of(id))) {
                beds.add(at);
            }
        }
        if (beds.size() != 1 || beds.get(0) > closing) {
            faults.add(id + " needs one bed before it closes");
            return;
        }
        Unit then = units.get(beds.get(0));
        for (String cover : joint.under()) {
            if (units.stream().allMatch(unit -> unit.together(cover, joint.site()))) {
                neverReached.add(device.part(cover).name() + " lies over it");
            } else if (then.together(cover, joint.site())) {
                faults.add(cover + " hides the site of " + id + " when its bed is laid");
            }
        }
        for (String part : joint.holds()) {
            boolean apart = !units.get(0).together(part, joint.site());
            if (apart && then.together(part, joint.site())) {
                faults.add(part + " covers the site of " + id + " when its bed is laid");
            }
        }
    }

    private Collection<String> needs(RebuildAct act) {
        Set<String> needs = new LinkedHashSet<>();
        if (act.act().orElse(null) instanceof Act.MoveParts move) {
            needs.addAll(device.power().needs(move.parts()));
        }
        act.joints().forEach(id -> needs.addAll(device.power().needs(device.joint(id))));
        return needs;
    }

    private void isolators(boolean whole) {
        for (int at = 0; at < acts.size(); at++) {
            RebuildAct isolator = acts.get(at);
            Set<String> cuts = new LinkedHashSet<>();
            isolator.joints().forEach(id -> cuts.addAll(device.joint(id).cuts()));
            if (!isolator.kind().isUndoing() || cuts.isEmpty()) {
                continue;
            }
            for (RebuildAct later : acts.subList(at + 1, acts.size())) {
                boolean needs = needs(later).stream().anyMatch(cuts::contains);
                if (later.kind().isUndoing() && needs && couldComeBefore(later, isolator)) {
                    faults.add(later.joints() + " needs what " + isolator.joints() + " connects");
                }
                if (later.kind() == RebuildAct.Kind.BED
                        && burns(later)
                        && !later.joints().stream().allMatch(this::isLaidOutside)) {
                    faults.add(later.joints() + " is cleaned after " + isolator.joints());
                }
            }
        }
        boolean on = false;
        for (RebuildAct act : acts) {
            on = act.kind() == RebuildAct.Kind.SWITCH_ON || on;
            on = act.kind() != RebuildAct.Kind.SWITCH_OFF && on;
            if (whole && on && burns(act)) {
                faults.add(act.joints() + " is cleaned while the device is on");
            }
        }
    }

    private boolean isLaidOutside(String id) {
        Joint joint = device.joint(id);
        return joint.holds().stream()
                .filter(part -> !part.equals(joint.site()))
                .allMatch(part -> device.power().isOutside(new Act.MoveParts(List.of(part))));
    }

    private boolean burns(RebuildAct act) {
        boolean manipulated =
                act.kind() != RebuildAct.Kind.UNDO_PREPARE
                        && act.act().orElse(null) instanceof Act.Release release
                        && device.manipulation(way(release).kind()).flammable();
        return manipulated
                || act.consumes().stream()
                        .map(use -> device.consumables().get(use.consumable()))
                        .anyMatch(each -> each != null && each.flammable());
    }

    private Way way(Act.Release release) {
        return Objects.requireNonNull(device.joint(release.joint()).ways().get(release.way()));
    }

    private boolean isFinal(RebuildAct act) {
        return act.kind().isUndoing() && (closesForGood(act) || dwell(act) > 0);
    }

    private boolean closesForGood(RebuildAct act) {
        return kinds(act).stream().anyMatch(Kind::irreversible);
    }

    private long dwell(RebuildAct act) {
        return kinds(act).stream().mapToLong(Kind::dwellMs).max().orElse(0);
    }

    /** The kinds of what closes with an act: of joint and manipulation. */
    private List<Kind> kinds(RebuildAct act) {
        List<Kind> kinds = new ArrayList<>();
        for (String id : act.joints()) {
            Joint joint = device.joint(id);
            kinds.add(device.kindOf(joint));
            Way way =
                    act.act().orElse(null) instanceof Act.Release release
                            ? way(release)
                            : joint.firstWay();
            kinds.add(device.manipulation(way.kind()));
        }
        return kinds;
    }

    private void late() {
        for (int at = 0; at < undoing.size(); at++) {
            RebuildAct closing = undoing.get(at);
            if (!isFinal(closing)) {
                continue;
            }
            for (RebuildAct later : undoing.subList(at + 1, undoing.size())) {
                if (!isFinal(later)
                        && later.kind() != RebuildAct.Kind.UNDO_PREPARE
                        && couldComeBefore(later, closing)) {
                    faults.add(name(later) + " could come before " + name(closing) + " closes");
                }
            }
        }
    }

    /** Isolators wait for all that needs their supplies cut, also for what closes for good. */
    private boolean connectsWhat(RebuildAct isolator, RebuildAct act) {
        Collection<String> needs = needs(act);
        return isolator.joints().stream()
                .anyMatch(id -> device.joint(id).cuts().stream().anyMatch(needs::contains));
    }

    private static String name(RebuildAct act) {
        return act.kind() + " " + act.act().map(Act::id).orElse("");
    }

    private void tests() {
        List<Unit> units = units();
        Unit last = units.get(units.size() - 1);
        Set<String> made = new LinkedHashSet<>();
        boolean on = false;
        String docked = FunctionTest.BENCH;
        boolean leak = false;
        for (int at = 0; at < acts.size(); at++) {
            RebuildAct act = acts.get(at);
            Unit now = units.get(at);
            boolean whileOn =
                    act.kind() == RebuildAct.Kind.TEST || act.kind() == RebuildAct.Kind.SWITCH_OFF;
            if (on != whileOn && (on || act.kind() == RebuildAct.Kind.SWITCH_OFF)) {
                faults.add(act.kind() + " while the device is " + (on ? "on" : "off"));
            }
            switch (act.kind()) {
                case SWITCH_ON -> {
                    for (Joint joint : device.joints().values()) {
                        if (joint.isIsolator() && now.open.contains(joint.id())) {
                            faults.add("switched on while " + joint.id() + " is open");
                        }
                    }
                    on = true;
                }
                case SWITCH_OFF -> on = false;
                case DOCK -> docked = act.test().orElseThrow().at();
                case UNDOCK -> docked = FunctionTest.BENCH;
                case TEST -> {
                    FunctionTest test = act.test().orElseThrow();
                    if (!made.add(test.id())) {
                        faults.add(test.id() + " is made twice");
                    }
                    if (on != test.powered() || !docked.equals(test.at())) {
                        faults.add(test.id() + " is made in a wrong state");
                    }
                    if (!isJoined(test, now)) {
                        faults.add(test.id() + " is made too early");
                    }
                    leak |= test.leak();
                }
                default -> {
                    if (leak && act.kind().isUndoing()) {
                        faults.add(name(act) + " after a leak test");
                    }
                    if (isFinal(act)) {
                        skipped(act, at, now, made);
                    }
                }
            }
            List<String> live =
                    device.supplies().keySet().stream().filter(now::isLive).toList();
            if (!live.equals(act.on())) {
                faults.add(name(act) + " says " + act.on() + " is on, but it is " + live);
            }
        }
        if (on || !docked.equals(FunctionTest.BENCH)) {
            faults.add("it is left on or docked");
        }
        Set<String> touched = new HashSet<>();
        for (RebuildAct act : undoing) {
            touched.addAll(act.joints());
            if (act.act().orElse(null) instanceof Act.MoveParts move) {
                touched.addAll(move.parts());
            }
        }
        for (FunctionTest test : device.tests().values()) {
            boolean due =
                    test.of().stream().anyMatch(touched::contains)
                            && isJoined(test, last)
                            && (!test.powered()
                                    || device.supplies().keySet().stream().allMatch(last::isLive));
            if (due != made.contains(test.id())) {
                faults.add(test.id() + (due ? " is not made" : " is made for nothing"));
            }
        }
    }

    /** A test that waits for nothing but is made after a closing that cannot be opened again. */
    private void skipped(RebuildAct closing, int at, Unit now, Set<String> made) {
        if (curing(at) && !closesForGood(closing)) {
            return;
        }
        boolean cut = acts.subList(at, acts.size()).stream().anyMatch(a -> !needs(a).isEmpty());
        boolean live = device.supplies().keySet().stream().allMatch(now::isLive);
        for (RebuildAct later : acts.subList(at, acts.size())) {
            if (later.kind() == RebuildAct.Kind.TEST) {
                FunctionTest test = later.test().orElseThrow();
                if (!test.leak()
                        && !(test.isDocked() && now.hangs())
                        && !made.contains(test.id())
                        && isJoined(test, now)
                        && (!test.powered() || (live && !cut))) {
                    faults.add(test.id() + " could be made before " + name(closing));
                }
            }
        }
    }

    private boolean isJoined(FunctionTest test, Unit unit) {
        Set<String> used = new LinkedHashSet<>(test.of());
        used.addAll(test.needs());
        for (String id : used) {
            if (device.joints().containsKey(id)) {
                if (unit.open.contains(id)) {
                    return false;
                }
                continue;
            }
            if (!unit.together(id, device.base()) && (test.isDocked() || !hangs(id, unit))) {
                return false;
            }
            for (Joint joint : device.joints().values()) {
                if (joint.holds().contains(id)
                        && unit.open.contains(joint.id())
                        && !end.released().contains(joint.id())
                        && device.kindOf(joint).role().equals(Optional.of(Kind.Role.CONNECTOR))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Returns whether a part hangs by a connector from what lies with the base. */
    private boolean hangs(String part, Unit unit) {
        return device.joints().values().stream()
                .filter(j -> j.holds().contains(part) && j.slack() && !j.gives())
                .filter(j -> device.kindOf(j).role().equals(Optional.of(Kind.Role.CONNECTOR)))
                .filter(j -> !unit.open.contains(j.id()))
                .anyMatch(
                        j ->
                                j.holds().stream()
                                        .allMatch(
                                                p ->
                                                        p.equals(part)
                                                                || unit.together(
                                                                        p, device.base())));
    }

    private boolean curing(int at) {
        long passed = 0;
        for (int k = at - 1; k >= 0; k--) {
            RebuildAct act = acts.get(k);
            if (isFinal(act) && dwell(act) > passed) {
                return true;
            }
            passed += act.ms() + act.setupMs() + act.dwellMs();
        }
        return false;
    }

    private void rests() {
        long clock = 0;
        List<Rest> rests = new ArrayList<>();
        String posture = startPosture();
        for (RebuildAct act : acts) {
            for (Rest rest : rests) {
                if (rest.until > clock && rest.dry && connects(act)) {
                    faults.add(name(act) + " before " + rest.joints + " has dried");
                }
                if (rest.until > clock && !rest.dry && disturbs(act, rest, posture)) {
                    faults.add(name(act) + " before " + rest.joints + " has cured");
                }
            }
            posture = act.posture();
            clock += act.ms() + act.setupMs() + act.dwellMs();
            if (act.kind().isUndoing() && dwell(act) > 0) {
                rests.add(new Rest(act.joints(), clock + dwell(act), false));
            }
            if (burns(act)) {
                rests.add(new Rest(act.joints(), clock + DRY_MS, true));
            }
            if ((act.dwellMs() > 0) != (act.kind() == RebuildAct.Kind.WAIT)) {
                faults.add(name(act) + " waits " + act.dwellMs() + " ms");
            }
        }
        for (Rest rest : rests) {
            if (rest.until > clock && !rest.dry) {
                faults.add("it ends before " + rest.joints + " has cured");
            }
        }
    }

    private record Rest(List<String> joints, long until, boolean dry) {}

    private boolean connects(RebuildAct act) {
        return act.kind() == RebuildAct.Kind.SWITCH_ON
                || (act.kind().isUndoing()
                        && act.joints().stream().anyMatch(id -> device.joint(id).isIsolator()));
    }

    private boolean disturbs(RebuildAct act, Rest rest, String posture) {
        Set<String> resting = new HashSet<>(rest.joints);
        rest.joints.forEach(id -> resting.addAll(device.joint(id).holds()));
        return !act.posture().equals(posture)
                || act.kind() == RebuildAct.Kind.DOCK
                || (act.kind() == RebuildAct.Kind.TEST
                        && (act.test().orElseThrow().leak()
                                || act.test().get().of().stream().anyMatch(resting::contains)));
    }

    private String startPosture() {
        return plan.acts().isEmpty()
                ? device.usualPosture()
                : plan.acts().get(plan.acts().size() - 1).posture();
    }

    private List<Long> setups() {
        List<Unit> units = units();
        List<Long> setups = new ArrayList<>();
        String tool = device.hand();
        String posture = startPosture();
        for (int at = 0; at < acts.size(); at++) {
            RebuildAct act = acts.get(at);
            boolean turned = !act.posture().equals(posture);
            setups.add(
                    device.setup().toolChangeMs(tool, act.tool())
                            + device.setup().postureChangeMs(posture, act.posture())
                            + (turned && units.get(at).hangs() ? device.setup().turnOpenMs() : 0));
            tool = act.tool();
            posture = act.posture();
        }
        return setups;
    }

    /**
     * The time of an act that the plan counts. A placing may close what arrived open, and one that
     * puts back what arrived apart may close what the plan let go.
     */
    private long msOfPlan(RebuildAct act) {
        boolean ofPlan = act.undoes().isPresent();
        long ms = ofPlan ? act.ms() : 0;
        if (act.kind().isPlacing()) {
            for (String id : act.joints()) {
                boolean arrivedOpen = plan.request().start().released().contains(id);
                if (!device.kindOf(device.joint(id)).laid() && ofPlan == arrivedOpen) {
                    long restoreMs = device.joint(id).firstWay().restoreMs();
                    ms += ofPlan ? -restoreMs : restoreMs;
                }
            }
        }
        return ms;
    }

    private void sums(Rebuild rebuild) {
        if (!setups().equals(acts.stream().map(RebuildAct::setupMs).toList())) {
            faults.add("set-ups are " + setups());
        }
        if (rebuild.setupBoundMs() > rebuild.setupMs()) {
            faults.add("the bound is above the set-ups");
        }
        long restore = plan.acts().stream().mapToLong(CostedAct::restoreMs).sum();
        long undone = acts.stream().mapToLong(this::msOfPlan).sum();
        if (restore != undone) {
            faults.add("restoring takes " + undone + " ms, and the plan says " + restore);
        }
        Tally tally = Tally.of(plan, rebuild);
        if (!tally.closes() || tally.left() != 0) {
            faults.add("screws are left over");
        }
        Set<String> screws = new HashSet<>();
        for (Fastening each : rebuild.fastenings()) {
            List<String> there =
                    acts.subList(each.first(), each.last() + 1).stream()
                            .flatMap(act -> act.joints().stream())
                            .toList();
            if (!there.equals(each.joints()) || !each.joints().stream().allMatch(screws::add)) {
                faults.add(each.joints() + " do not go in together");
            }
        }
    }
}
