package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;

/**
 * What an order of the acts of a teardown costs besides its acts and set-ups: laying parts aside,
 * and changes of posture while a part lies aside.
 */
public final class AsideCost {

    private final Device device;
    private final State start;
    private final Map<Integer, Act> acts;
    private final Set<String> ownRelease = new LinkedHashSet<>();

    /**
     * Prepares for acts.
     *
     * @param device the device
     * @param start where the unit stands before the first act
     * @param acts the acts by number
     */
    public AsideCost(Device device, State start, Map<Integer, Act> acts) {
        this.device = device;
        this.start = start;
        this.acts = acts;
        for (Act act : acts.values()) {
            if (act instanceof Act.Release release) {
                ownRelease.add(release.joint());
            }
        }
    }

    /** Returns what joints that let go with the moves add in any order, in milliseconds. */
    public long letGoMs() {
        long ms = 0;
        for (Joint joint : device.joints().values()) {
            boolean lets =
                    joint.gives()
                            && !ownRelease.contains(joint.id())
                            && !start.released().contains(joint.id())
                            && acts.values().stream().anyMatch(act -> leadsOut(joint, act));
            ms += lets ? joint.firstWay().ms() + joint.firstWay().restoreMs() : 0;
        }
        return ms;
    }

    /** Returns what laying aside adds in every order, in milliseconds. */
    public long leastMs() {
        long ms = 0;
        for (Act act : acts.values()) {
            boolean aside =
                    device.joints().values().stream()
                            .anyMatch(
                                    joint ->
                                            tethers(joint, start.released())
                                                    && !ownRelease.contains(joint.id())
                                                    && leadsOut(joint, act));
            ms += aside ? device.setup().layAsideMs() : 0;
        }
        return ms;
    }

    /**
     * Returns what an order adds, in milliseconds.
     *
     * @param order the numbers of all items, acts among them
     * @param postures for each item its posture; empty if it takes the device as it lies
     * @param first the posture before the first item
     */
    public long ms(List<Integer> order, List<Optional<String>> postures, String first) {
        Set<String> released = new LinkedHashSet<>(start.released());
        Map<String, Integer> place = places();
        String posture = first;
        long ms = 0;
        for (int item : order) {
            String next = postures.get(item).orElse(posture);
            if (!next.equals(posture) && isAside(released, place)) {
                ms += device.setup().turnOpenMs();
            }
            posture = next;
            Act act = acts.get(item);
            if (act instanceof Act.Release release) {
                released.add(release.joint());
            } else if (act instanceof Act.MoveParts move) {
                ms += move(move, released, place, order.indexOf(item) + 1);
            }
        }
        return ms;
    }

    private long move(
            Act.MoveParts move, Set<String> released, Map<String, Integer> place, int to) {
        move.parts().forEach(part -> place.put(part, -to));
        boolean aside = false;
        for (Joint joint : device.joints().values()) {
            if (leadsOut(joint, move)) {
                aside |= tethers(joint, released);
                if (joint.gives()) {
                    released.add(joint.id());
                }
            }
        }
        return aside ? device.setup().layAsideMs() : 0;
    }

    private Map<String, Integer> places() {
        Map<String, Integer> place = new LinkedHashMap<>();
        List<Set<String>> apart = new ArrayList<>(start.places());
        apart.removeIf(together -> together.contains(device.base()));
        device.parts().keySet().forEach(part -> place.put(part, 0));
        for (int at = 0; at < apart.size(); at++) {
            for (String part : apart.get(at)) {
                place.put(part, at + 1);
            }
        }
        return place;
    }

    private boolean isAside(Set<String> released, Map<String, Integer> place) {
        return device.joints().values().stream()
                .filter(joint -> joint.slack() && !released.contains(joint.id()))
                .anyMatch(
                        joint ->
                                joint.holds().stream()
                                        .anyMatch(
                                                part ->
                                                        !Objects.equals(
                                                                place.get(part),
                                                                place.get(joint.site()))));
    }

    private static boolean tethers(Joint joint, Set<String> released) {
        return joint.slack() && !joint.gives() && !released.contains(joint.id());
    }

    private static boolean leadsOut(Joint joint, Act act) {
        return act instanceof Act.MoveParts move && joint.leadsOut(move.parts());
    }
}
