package reseat.simulate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.State;

/**
 * A unit on the bench while acts are carried out on it: its released joints, the places of its
 * parts and the prepare acts that are done.
 */
final class BenchState {

    private final Device device;
    private final Set<String> released;
    private final Set<String> prepared;
    private final Map<String, Integer> place = new LinkedHashMap<>();
    private int places = 1;

    /** Creates a unit in a start state, which must be free of {@linkplain StartFaults faults}. */
    BenchState(Device device, State start) {
        this.device = device;
        this.released = new LinkedHashSet<>(start.released());
        this.prepared = new LinkedHashSet<>(start.prepared());
        device.parts().keySet().forEach(part -> place.put(part, 0));
        for (Set<String> together : start.places()) {
            if (!together.contains(device.base())) {
                move(together);
            }
        }
    }

    Device device() {
        return device;
    }

    boolean isReleased(String joint) {
        return released.contains(joint);
    }

    void release(String joint) {
        released.add(joint);
    }

    boolean isPrepared(String prepare) {
        return prepared.contains(prepare);
    }

    void prepare(String prepare) {
        prepared.add(prepare);
    }

    void move(Collection<String> parts) {
        int fresh = places++;
        parts.forEach(part -> place.put(part, fresh));
    }

    boolean together(String one, String other) {
        return placeOf(one) == placeOf(other);
    }

    boolean withBase(String part) {
        return together(part, device.base());
    }

    /**
     * Returns all parts that share the place of one, itself among them, in the order of the device
     * file.
     */
    List<String> sharing(String part) {
        return place.keySet().stream().filter(other -> together(part, other)).toList();
    }

    /** Returns whether parts of a joint lie apart. */
    boolean isApart(Joint joint) {
        return joint.holds().stream().anyMatch(part -> !together(part, joint.site()));
    }

    /** Returns whether some part lies aside: away from another that it is still joined to. */
    boolean isLaidAside() {
        return unreleased().stream().anyMatch(this::isApart);
    }

    boolean isOn(String supply) {
        return isolators(supply).stream().noneMatch(joint -> isReleased(joint.id()));
    }

    List<Joint> isolators(String supply) {
        return device.joints().values().stream()
                .filter(joint -> joint.cuts().contains(supply))
                .toList();
    }

    List<Joint> unreleased() {
        return device.joints().values().stream().filter(joint -> !isReleased(joint.id())).toList();
    }

    /** Returns the unreleased joints between some parts and others. */
    List<Joint> leadingOut(Collection<String> parts) {
        return unreleased().stream().filter(joint -> joint.leadsOut(parts)).toList();
    }

    /** Returns the joints that let go when some parts are moved away from the others. */
    List<Joint> giving(Collection<String> parts) {
        return unreleased().stream().filter(joint -> joint.letsGo(parts)).toList();
    }

    /**
     * Returns the current state of the unit: places other than that of the base, in the order of
     * the device file.
     */
    State state() {
        Map<Integer, Set<String>> byPlace = new LinkedHashMap<>();
        place.forEach(
                (part, where) ->
                        byPlace.computeIfAbsent(where, w -> new LinkedHashSet<>()).add(part));
        byPlace.remove(placeOf(device.base()));
        Set<String> inOrder = new LinkedHashSet<>(device.joints().keySet());
        inOrder.retainAll(released);
        Set<String> preparedInOrder = new LinkedHashSet<>(device.prepares().keySet());
        preparedInOrder.retainAll(prepared);
        return new State(inOrder, new ArrayList<>(byPlace.values()), preparedInOrder);
    }

    private int placeOf(String part) {
        return Objects.requireNonNull(place.get(part));
    }
}
