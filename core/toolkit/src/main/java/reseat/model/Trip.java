package reseat.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All acts that are on the way to some supply, each done as soon as it can be, moves before
 * releases. What hangs rigidly together moves as one; a move is on the way if one of its parts is.
 */
final class Trip {
    private final Reach reach;
    private final Device device;
    private final Power power;
    private final List<Joint> joints;
    private final List<String> parts;
    private final Set<String> released = new LinkedHashSet<>();
    private final Map<String, Integer> place = new LinkedHashMap<>();
    private final Set<String> cut = new LinkedHashSet<>();
    private int places = 1;

    Trip(Reach reach, Power power, Map<String, Reach.OnTheWay> ways) {
        this.reach = reach;
        this.device = reach.device;
        this.power = power;
        joints =
                device.joints().values().stream()
                        .filter(
                                j ->
                                        ways.values().stream()
                                                .anyMatch(w -> w.joints().contains(j.id())))
                        .toList();
        parts =
                device.parts().keySet().stream()
                        .filter(p -> ways.values().stream().anyMatch(w -> w.parts().contains(p)))
                        .toList();
        device.parts().keySet().forEach(part -> place.put(part, 0));
    }

    Set<String> cut() {
        Optional<Joint> next = Optional.empty();
        do {
            next.ifPresent(
                    joint -> {
                        released.add(joint.id());
                        cut.addAll(joint.cuts());
                    });
            moveAll();
            next =
                    joints.stream()
                            .filter(joint -> !released.contains(joint.id()))
                            .filter(this::mayRelease)
                            .findFirst();
        } while (next.isPresent() && !cut.containsAll(reach.cuttable()));
        return cut;
    }

    private void moveAll() {
        boolean grown = true;
        while (grown) {
            grown = false;
            for (String part : parts) {
                Set<String> group = hangingWith(part);
                if (mayMove(group)) {
                    int fresh = places++;
                    group.forEach(each -> place.put(each, fresh));
                    letGo(group);
                    grown = true;
                }
            }
        }
    }

    private boolean together(String one, String other) {
        return placeOf(one) == placeOf(other);
    }

    private int placeOf(String part) {
        return place.getOrDefault(part, 0);
    }

    private boolean mayRelease(Joint joint) {
        return !device.onlyLetsGo(joint)
                && joint.under().stream().noneMatch(cover -> together(cover, joint.site()))
                && cut.containsAll(power.needs(joint))
                && joint.ways().values().stream()
                        .anyMatch(way -> released.containsAll(device.strainedBy(joint, way)));
    }

    /**
     * Returns the parts that unreleased joints hold rigidly to one, itself among them; not all of
     * them where the base is among them, which never moves.
     */
    private Set<String> hangingWith(String part) {
        Set<String> group = new LinkedHashSet<>(List.of(part));
        Deque<String> more = new ArrayDeque<>(group);
        while (!more.isEmpty() && !group.contains(device.base())) {
            for (Joint joint : reach.jointsOf(more.remove())) {
                if (!released.contains(joint.id()) && !joint.slack() && !joint.gives()) {
                    joint.holds().stream().filter(group::add).forEach(more::add);
                }
            }
        }
        return group;
    }

    private boolean mayMove(Set<String> group) {
        return !group.contains(device.base())
                && !aloneAlready(group)
                && movedAlike(group)
                && group.stream().allMatch(part -> isClear(part, group))
                && cut.containsAll(power.needs(group))
                && giving(group).allMatch(joint -> cut.containsAll(power.needs(joint)));
    }

    private boolean aloneAlready(Set<String> group) {
        int at = placeOf(group.iterator().next());
        return place.entrySet().stream()
                .noneMatch(each -> each.getValue() == at && !group.contains(each.getKey()));
    }

    private boolean movedAlike(Set<String> group) {
        return group.stream()
                        .map(device::move)
                        .map(move -> List.of(move.tool(), move.posture()))
                        .distinct()
                        .count()
                == 1;
    }

    private boolean isClear(String part, Set<String> group) {
        return device.part(part).under().stream()
                .noneMatch(cover -> !group.contains(cover) && together(cover, part));
    }

    /** Returns the unreleased joints that give and lead out of a group. */
    private Stream<Joint> giving(Set<String> group) {
        return group.stream()
                .flatMap(part -> reach.jointsOf(part).stream())
                .filter(joint -> joint.letsGo(group) && !released.contains(joint.id()));
    }

    private void letGo(Set<String> group) {
        for (Joint joint : giving(group).toList()) {
            released.add(joint.id());
            cut.addAll(joint.cuts());
        }
    }
}
