package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;
import reseat.plan.Stand;

/**
 * Acts that could have brought a unit into the state in which it arrived: each open joint released
 * by its first way, each part that lies apart moved once. In which order they may have been done is
 * for the ordering to say.
 */
public final class HalfOpen {

    private HalfOpen() {}

    /**
     * Returns the acts to try, the likeliest first: what is still joined left together, or all that
     * lies in one place did. Empty if the unit is closed.
     */
    public static List<List<Act>> acts(Device device, State start) {
        Stand stand = Stand.of(device, start);
        List<List<String>> places = new ArrayList<>();
        List<List<String>> joined = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (String part : device.parts().keySet()) {
            if (!stand.withBase(part) && seen.add(part)) {
                List<String> place =
                        device.parts().keySet().stream()
                                .filter(other -> stand.together(part, other))
                                .toList();
                seen.addAll(place);
                places.add(place);
                joined.addAll(joined(device, stand, place));
            }
        }
        List<Act> released = new ArrayList<>();
        for (String id : start.released()) {
            Joint joint = device.joint(id);
            if (!joint.gives() || (!device.onlyLetsGo(joint) && !stand.isApart(joint))) {
                released.add(new Act.Release(id, joint.firstWay().id()));
            }
        }
        if (released.isEmpty() && places.isEmpty()) {
            return List.of();
        }
        Set<List<Act>> all = new LinkedHashSet<>();
        for (List<List<String>> moved : List.of(joined, places)) {
            List<Act> acts = new ArrayList<>(released);
            moved.forEach(parts -> acts.add(new Act.MoveParts(parts)));
            all.add(acts);
        }
        return List.copyOf(all);
    }

    private static List<List<String>> joined(Device device, Stand stand, List<String> place) {
        List<List<String>> groups = new ArrayList<>();
        Set<String> left = new LinkedHashSet<>(place);
        while (!left.isEmpty()) {
            Set<String> group = new LinkedHashSet<>(Set.of(left.iterator().next()));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (Joint joint : device.joints().values()) {
                    List<String> here = joint.holds().stream().filter(place::contains).toList();
                    if (!stand.isReleased(joint.id()) && here.stream().anyMatch(group::contains)) {
                        grown |= group.addAll(here);
                    }
                }
            }
            left.removeAll(group);
            groups.add(place.stream().filter(group::contains).toList());
        }
        return groups;
    }
}
