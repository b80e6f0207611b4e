package reseat.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.State;

/**
 * The state of a unit between two acts: which joints are released and which parts lie together. It
 * checks nothing; the plan must be valid.
 *
 * @param released ids of released joints
 * @param place number of the place of every part; equal numbers lie together
 */
public record Stand(Device device, Set<String> released, Map<String, Integer> place) {

    public Stand {
        released = Collections.unmodifiableSet(new LinkedHashSet<>(released));
        place = Collections.unmodifiableMap(new LinkedHashMap<>(place));
    }

    /** Returns the state in which a unit begins. */
    public static Stand of(Device device, State start) {
        Map<String, Integer> place = new LinkedHashMap<>();
        device.parts().keySet().forEach(part -> place.put(part, 0));
        int next = 1;
        for (Set<String> parts : start.places()) {
            if (!parts.contains(device.base())) {
                for (String part : parts) {
                    place.put(part, next);
                }
                next++;
            }
        }
        return new Stand(device, start.released(), place);
    }

    /** Returns the state of the unit after an act. */
    public Stand after(Act act) {
        if (act instanceof Act.Release release) {
            Set<String> more = new LinkedHashSet<>(released);
            more.add(release.joint());
            return new Stand(device, more, place);
        }
        if (act instanceof Act.MoveParts move) {
            int free = 1 + Collections.max(place.values());
            Map<String, Integer> moved = new LinkedHashMap<>(place);
            move.parts().forEach(part -> moved.put(part, free));
            Set<String> more = new LinkedHashSet<>(released);
            device.joints().values().stream()
                    .filter(joint -> joint.letsGo(move.parts()))
                    .forEach(joint -> more.add(joint.id()));
            return new Stand(device, more, moved);
        }
        return this;
    }

    /** Returns the state of the unit before each act of a rebuild, and at its end. */
    public static List<Stand> before(Rebuild rebuild) {
        List<RebuildAct> acts = rebuild.acts();
        List<Stand> backwards = new ArrayList<>(List.of(Stand.of(rebuild.device(), rebuild.end())));
        for (int at = acts.size() - 1; at >= 0; at--) {
            Stand after = backwards.get(backwards.size() - 1);
            backwards.add(
                    acts.get(at).kind().isUndoing()
                            ? after.after(acts.get(at).act().orElseThrow())
                            : after);
        }
        Collections.reverse(backwards);
        return List.copyOf(backwards);
    }

    /** Returns whether a joint is released. */
    public boolean isReleased(String joint) {
        return released.contains(joint);
    }

    /** Returns whether a part lies with the base. */
    public boolean withBase(String part) {
        return together(part, device.base());
    }

    /** Returns whether two parts lie together. */
    public boolean together(String one, String other) {
        return placeOf(one) == placeOf(other);
    }

    /** Returns the parts in the place of a part, in the device's order. */
    public List<String> sharing(String part) {
        return place.keySet().stream().filter(other -> together(part, other)).toList();
    }

    private int placeOf(String part) {
        return Objects.requireNonNull(place.get(part));
    }

    /** Returns whether the parts of a joint lie in more than one place. */
    public boolean isApart(Joint joint) {
        return joint.holds().stream().anyMatch(part -> !together(part, joint.site()));
    }

    /** Returns the unreleased joints that lead from one place to another, in the device's order. */
    public List<Joint> tethers() {
        return device.joints().values().stream()
                .filter(joint -> !isReleased(joint.id()) && isApart(joint))
                .toList();
    }

    /** Returns the released screws all of whose parts still lie together. */
    List<Joint> looseScrews() {
        return device.joints().values().stream()
                .filter(
                        joint ->
                                isReleased(joint.id()) && isScrew(device, joint) && !isApart(joint))
                .toList();
    }

    /** Returns the parts that lie with the base, though no unreleased joint holds them any more. */
    List<String> looseParts() {
        Set<String> held = new LinkedHashSet<>(Set.of(device.base()));
        boolean more = true;
        while (more) {
            more = false;
            for (Joint joint : device.joints().values()) {
                if (!isReleased(joint.id()) && joint.holds().stream().anyMatch(held::contains)) {
                    more |= held.addAll(joint.holds());
                }
            }
        }
        return device.parts().keySet().stream()
                .filter(part -> withBase(part) && !held.contains(part))
                .toList();
    }

    /** Returns whether a supply is cut. */
    public boolean isCut(String supply) {
        return device.joints().values().stream()
                .anyMatch(joint -> joint.cuts().contains(supply) && isReleased(joint.id()));
    }

    static boolean isScrew(Device device, Joint joint) {
        return joint.seat().isPresent()
                || device.kindOf(joint).role().filter(Kind.Role.SCREW::equals).isPresent();
    }
}
