package reseat.stock.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.Way;

/** Forbids everything that needs what is missing, so that a plan does without it. */
final class Detour {

    private final Device device;
    private final Set<String> acts = new LinkedHashSet<>();
    private final Set<String> joints = new LinkedHashSet<>();
    private final Set<String> tools = new LinkedHashSet<>();

    private Detour(Device device) {
        this.device = device;
    }

    /**
     * Returns rules that avoid what is missing.
     *
     * @return the rules; empty if the part to replace is itself missing, which cannot be avoided
     */
    static Optional<Rules> around(Device device, Rules rules, List<Availability.Line> missing) {
        Detour detour = new Detour(device);
        for (Availability.Line line : missing) {
            StockNeed need = line.need();
            switch (need.reason()) {
                case TARGET -> {
                    return Optional.empty();
                }
                case RUINED -> detour.forbid(way -> way.ruins().contains(need.id()));
                case CONSUMED ->
                        detour.forbid(
                                way ->
                                        way.consumes().stream()
                                                .anyMatch(u -> u.consumable().equals(need.id())));
                case LOCKING_PATCH -> detour.forbidScrews(need.id());
                case WORK -> detour.tools.add(need.id());
            }
        }
        return Optional.of(
                rules.forbidActs(detour.acts)
                        .forbidJoints(detour.joints)
                        .forbidTools(detour.tools));
    }

    private void forbid(Predicate<Way> which) {
        List<String> found = new ArrayList<>();
        for (Joint joint : device.joints().values()) {
            joint.ways().values().stream()
                    .filter(which)
                    .forEach(way -> found.add(new Act.Release(joint.id(), way.id()).id()));
        }
        acts.addAll(found);
    }

    private void forbidScrews(String type) {
        device.joints().values().stream()
                .filter(joint -> joint.seat().filter(s -> s.screw().equals(type)).isPresent())
                .map(Joint::id)
                .forEach(joints::add);
    }
}
