package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.check.CheckInput;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;

/** What can be reached while a device is closed, and what covers what. */
final class Closed {

    private static final Set<Kind.Role> WITHIN =
            EnumSet.of(Kind.Role.BOARD, Kind.Role.CELL, Kind.Role.DISPLAY, Kind.Role.CABLE);

    private final Device device;
    private final Map<String, List<Joint>> jointsOf = new LinkedHashMap<>();
    private final Map<String, Integer> opening = new LinkedHashMap<>();
    private final Set<String> joints;
    private final Set<String> parts;

    private Closed(CheckInput input) {
        device = input.device();
        joints = device.power().outsideJoints();
        parts = device.power().outsideParts();
        for (Joint joint : device.joints().values()) {
            joint.holds()
                    .forEach(id -> jointsOf.computeIfAbsent(id, i -> new ArrayList<>()).add(joint));
            if (isConnector(joint)) {
                joint.under().forEach(id -> opening.merge(id, 1, Integer::sum));
            }
        }
        for (Part part : device.parts().values()) {
            if (device.kindOf(part).role().filter(WITHIN::contains).isPresent()) {
                part.under().forEach(id -> opening.merge(id, 1, Integer::sum));
            }
        }
    }

    static Closed of(CheckInput input) {
        return input.computed(Closed.class, Closed::new);
    }

    private boolean isConnector(Joint joint) {
        return device.kindOf(joint).role().equals(Optional.of(Kind.Role.CONNECTOR));
    }

    private boolean loose(Part part) {
        return part.move().isPresent()
                && parts.containsAll(part.under())
                && jointsOf.getOrDefault(part.id(), List.of()).stream()
                        .allMatch(
                                joint ->
                                        joint.slack()
                                                || joint.gives()
                                                || joints.contains(joint.id()));
    }

    /**
     * Returns whether a joint can be reached. What it says of itself does not count: a part is not
     * taken to open the device because this connector alone is said to lie under it.
     */
    boolean reaches(Joint joint) {
        return joint.under().stream()
                .allMatch(
                        id ->
                                parts.contains(id)
                                        || (isConnector(joint)
                                                && Integer.valueOf(1).equals(opening.get(id))
                                                && loose(device.part(id))));
    }

    /** Returns whether nothing but such parts as come off outside lies over a part. */
    boolean uncovers(Part part) {
        return parts.containsAll(part.under());
    }

    /** Returns all parts that must be gone before a part can be moved. */
    Set<String> covers(Part part) {
        Set<String> all = new LinkedHashSet<>();
        add(part, all);
        return all;
    }

    private void add(Part part, Set<String> all) {
        for (String cover : part.under()) {
            if (all.add(cover)) {
                add(device.part(cover), all);
            }
        }
    }
}
