package reseat.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.ScrewType;
import reseat.model.State;
import reseat.model.Way;

/** Computes the rebuild of a teardown. */
final class RebuildMaker {

    private final Device device;
    private final List<CostedAct> teardown;

    /** The state of the unit before each act of the teardown, and after the last. */
    private final List<Stand> stands;

    private final Set<String> ruined = new LinkedHashSet<>();
    private String tool;
    private String posture;

    RebuildMaker(Device device, State start, List<CostedAct> teardown) {
        this.device = device;
        this.teardown = teardown;
        this.stands = stands(device, start, teardown);
        this.tool = device.hand();
        this.posture =
                teardown.isEmpty()
                        ? device.usualPosture()
                        : teardown.get(teardown.size() - 1).posture();
    }

    /** Returns the state of the unit before each act, and after the last. */
    static List<Stand> stands(Device device, State start, List<CostedAct> acts) {
        List<Stand> all = new ArrayList<>();
        all.add(Stand.of(device, start));
        for (CostedAct act : acts) {
            all.add(all.get(all.size() - 1).after(act.act()));
        }
        return all;
    }

    Rebuild make(List<String> targets) {
        for (CostedAct act : teardown) {
            wayOf(act.act()).ifPresent(way -> ruined.addAll(way.ruins()));
        }
        List<RebuildAct> acts = new ArrayList<>();
        Set<String> notYetFresh = new LinkedHashSet<>(ruined);
        for (int i = teardown.size() - 1; i >= 0; i--) {
            acts.add(undo(i, notYetFresh));
        }
        Stand start = stands.get(0);
        return new Rebuild(
                device,
                acts,
                new Fastenings(device, acts).all(),
                new TestPlaces(device, stands, acts).all(),
                added(acts),
                spares(targets),
                wear(),
                List.copyOf(start.released()),
                device.parts().keySet().stream().filter(part -> !start.withBase(part)).toList());
    }

    private RebuildAct undo(int at, Set<String> notYetFresh) {
        CostedAct undone = teardown.get(at);
        Act act = undone.act();
        Optional<Joint> joint = jointOf(act);
        Optional<Way> way = wayOf(act);
        String nextTool = joint.map(made -> restoreTool(made, undone.tool())).orElse(undone.tool());
        long setup = device.setup().setupMs(tool, posture, nextTool, undone.posture());
        tool = nextTool;
        posture = undone.posture();
        List<String> fresh = involved(act).stream().filter(notYetFresh::contains).toList();
        notYetFresh.removeAll(fresh);
        return new RebuildAct(
                at,
                kindOf(at),
                act,
                joint.map(made -> brings(made, at)).orElse(List.of()),
                tool,
                posture,
                undone.restoreMs(),
                setup,
                joint.map(made -> dwell(made, way)).orElse(0L),
                way.map(Way::consumes).orElse(List.of()),
                joint.map(made -> isIrreversible(made, way)).orElse(false),
                fresh);
    }

    private RebuildAct.Kind kindOf(int at) {
        Act act = teardown.get(at).act();
        if (act instanceof Act.Prepared) {
            return RebuildAct.Kind.UNDO_PREPARE;
        }
        if (act instanceof Act.Release) {
            return RebuildAct.Kind.MAKE;
        }
        List<String> parts = ((Act.MoveParts) act).parts();
        boolean hangs =
                stands.get(at + 1).tethers().stream()
                        .anyMatch(joint -> joint.holds().stream().anyMatch(parts::contains));
        return hangs ? RebuildAct.Kind.FOLD_BACK : RebuildAct.Kind.PUT_BACK;
    }

    /** Parts of a joint that lie apart from its site and hang by nothing until it is made. */
    private List<String> brings(Joint joint, int at) {
        Stand open = stands.get(at + 1);
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

    private List<String> involved(Act act) {
        if (act instanceof Act.MoveParts move) {
            return move.parts();
        }
        return jointOf(act).map(Joint::holds).orElse(List.of());
    }

    private Optional<Joint> jointOf(Act act) {
        return act instanceof Act.Release release
                ? Optional.of(device.joint(release.joint()))
                : Optional.empty();
    }

    private Optional<Way> wayOf(Act act) {
        return act instanceof Act.Release release
                ? Optional.of(
                        Objects.requireNonNull(
                                device.joint(release.joint()).ways().get(release.way())))
                : Optional.empty();
    }

    private String restoreTool(Joint joint, String released) {
        Optional<Kind.Role> role = device.kindOf(joint).role();
        boolean pressed = role.filter(r -> r == Kind.Role.BOND || r == Kind.Role.CLIP).isPresent();
        return pressed ? device.hand() : released;
    }

    private long dwell(Joint joint, Optional<Way> way) {
        long ofWay = way.map(w -> device.manipulation(w.kind()).dwellMs()).orElse(0L);
        return Math.max(device.kindOf(joint).dwellMs(), ofWay);
    }

    private boolean isIrreversible(Joint joint, Optional<Way> way) {
        return device.kindOf(joint).irreversible()
                || way.map(w -> device.manipulation(w.kind()).irreversible()).orElse(false);
    }

    private static List<ConsumableUse> added(List<RebuildAct> acts) {
        Map<String, ConsumableUse> sums = new LinkedHashMap<>();
        for (RebuildAct act : acts) {
            for (ConsumableUse use : act.consumes()) {
                sums.merge(
                        use.consumable() + " " + use.unit(),
                        use,
                        (a, b) ->
                                new ConsumableUse(
                                        a.consumable(), a.quantity().add(b.quantity()), a.unit()));
            }
        }
        return sums.values().stream()
                .map(use -> new ConsumableUse(use.consumable(), plain(use.quantity()), use.unit()))
                .toList();
    }

    private static BigDecimal plain(BigDecimal quantity) {
        BigDecimal stripped = quantity.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private List<SpareNeed> spares(List<String> targets) {
        List<SpareNeed> all = new ArrayList<>();
        for (String part : targets) {
            all.add(spare(part, SpareNeed.Reason.TARGET));
        }
        for (String part : ruined) {
            if (!targets.contains(part)) {
                all.add(spare(part, SpareNeed.Reason.RUINED));
            }
        }
        Map<String, Integer> patched = new LinkedHashMap<>();
        for (CostedAct act : teardown) {
            jointOf(act.act())
                    .flatMap(Joint::seat)
                    .map(seat -> Objects.requireNonNull(device.screwTypes().get(seat.screw())))
                    .filter(ScrewType::patch)
                    .ifPresent(type -> patched.merge(type.id(), 1, Integer::sum));
        }
        patched.forEach(
                (type, count) ->
                        all.add(
                                new SpareNeed(
                                        type,
                                        type,
                                        Objects.requireNonNull(device.screwTypes().get(type))
                                                .spare(),
                                        count,
                                        SpareNeed.Reason.LOCKING_PATCH)));
        return all;
    }

    private SpareNeed spare(String part, SpareNeed.Reason reason) {
        return new SpareNeed(part, device.part(part).name(), device.part(part).spare(), 1, reason);
    }

    private List<Wear> wear() {
        List<Wear> all = new ArrayList<>();
        for (CostedAct act : teardown) {
            jointOf(act.act())
                    .ifPresent(
                            joint ->
                                    device.kindOf(joint)
                                            .ratedCycles()
                                            .ifPresent(
                                                    rated ->
                                                            all.add(
                                                                    new Wear(
                                                                            joint.id(),
                                                                            joint.madeCycles() + 1,
                                                                            rated))));
        }
        return all;
    }
}
