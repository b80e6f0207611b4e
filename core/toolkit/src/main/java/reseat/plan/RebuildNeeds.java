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
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.ScrewType;
import reseat.model.Way;

/** What follows from the acts of a rebuild: its tests, and what it takes from the stock. */
final class RebuildNeeds {

    private final Plan plan;
    private final Device device;
    private final List<RebuildAct> acts;

    RebuildNeeds(Plan plan, List<RebuildAct> acts) {
        this.plan = plan;
        this.device = plan.request().device();
        this.acts = acts;
    }

    List<PlacedTest> tests() {
        List<PlacedTest> tests = new ArrayList<>();
        for (int at = 0; at < acts.size(); at++) {
            if (acts.get(at).kind() == RebuildAct.Kind.TEST) {
                tests.add(new PlacedTest(acts.get(at).test().orElseThrow(), at, closingAfter(at)));
            }
        }
        return tests;
    }

    private Optional<String> closingAfter(int at) {
        Set<String> resting = new LinkedHashSet<>();
        acts.stream()
                .filter(act -> act.rest().equals(Optional.of(RebuildAct.Rest.CURE)))
                .forEach(act -> resting.addAll(act.joints()));
        return acts.subList(at, acts.size()).stream()
                .filter(act -> act.kind().isUndoing())
                .flatMap(
                        act ->
                                act.joints().stream()
                                        .filter(id -> act.irreversible() || resting.contains(id)))
                .findFirst();
    }

    List<ConsumableUse> consumables() {
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

    List<SpareNeed> spares() {
        List<String> targets =
                plan.request().goal() instanceof Goal.Free free ? free.targets() : List.of();
        List<SpareNeed> all = new ArrayList<>();
        for (String part : targets) {
            all.add(spare(part, SpareNeed.Reason.TARGET));
        }
        for (String part : ruined()) {
            if (!targets.contains(part)) {
                all.add(spare(part, SpareNeed.Reason.RUINED));
            }
        }
        Map<String, Integer> patched = new LinkedHashMap<>();
        for (Joint joint : made()) {
            joint.seat()
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

    private Set<String> ruined() {
        Set<String> ruined = new LinkedHashSet<>();
        plan.acts().stream()
                .map(costed -> costed.act())
                .filter(Act.Release.class::isInstance)
                .map(Act.Release.class::cast)
                .forEach(release -> ruined.addAll(way(release).ruins()));
        return ruined;
    }

    private Way way(Act.Release release) {
        return Objects.requireNonNull(device.joint(release.joint()).ways().get(release.way()));
    }

    private SpareNeed spare(String part, SpareNeed.Reason reason) {
        return new SpareNeed(part, device.part(part).name(), device.part(part).spare(), 1, reason);
    }

    List<Wear> wear() {
        List<Wear> all = new ArrayList<>();
        for (Joint joint : made()) {
            device.kindOf(joint)
                    .ratedCycles()
                    .ifPresent(
                            rated -> all.add(new Wear(joint.id(), joint.madeCycles() + 1, rated)));
        }
        return all;
    }

    /** The joints that are made, in order. */
    private List<Joint> made() {
        return acts.stream()
                .filter(act -> act.kind().isUndoing())
                .flatMap(act -> act.joints().stream())
                .map(device::joint)
                .toList();
    }
}
