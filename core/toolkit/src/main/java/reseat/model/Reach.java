package reseat.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The sets that the rules of {@link Power} are made of. */
final class Reach {

    private static final Set<Kind.Role> INSIDE_ROLES =
            Set.of(Kind.Role.BOARD, Kind.Role.CELL, Kind.Role.DISPLAY, Kind.Role.CABLE);

    /** What is on the way to the isolators of a supply. */
    record OnTheWay(Set<String> parts, Set<String> joints) {
        int size() {
            return parts.size() + joints.size();
        }
    }

    final Device device;
    private final Map<String, List<Joint>> jointsOf = new LinkedHashMap<>();
    private final Map<String, List<Joint>> isolators = new LinkedHashMap<>();
    private final Map<String, String> dropped = new LinkedHashMap<>();

    Reach(Device device) {
        this.device = device;
        for (Joint joint : device.joints().values()) {
            for (String part : joint.holds()) {
                jointsOf.computeIfAbsent(part, p -> new ArrayList<>()).add(joint);
            }
            for (String supply : joint.cuts()) {
                isolators.computeIfAbsent(supply, s -> new ArrayList<>()).add(joint);
            }
        }
    }

    List<Joint> isolators(String supply) {
        return isolators.getOrDefault(supply, List.of());
    }

    /** Returns the supplies that some joint cuts. */
    Set<String> cuttable() {
        return isolators.keySet();
    }

    /** Returns the joints that hold a part. */
    List<Joint> jointsOf(String part) {
        return jointsOf.getOrDefault(part, List.of());
    }

    /** Collects what can be done with the device closed. */
    void outside(Set<String> parts, Set<String> joints) {
        Set<String> openers = openers();
        Map<String, List<String>> below = new LinkedHashMap<>();
        Map<String, List<Joint>> hidden = new LinkedHashMap<>();
        Set<String> inParts = new LinkedHashSet<>();
        Set<String> inJoints = new LinkedHashSet<>();
        for (Joint joint : device.joints().values()) {
            joint.under()
                    .forEach(p -> hidden.computeIfAbsent(p, k -> new ArrayList<>()).add(joint));
            if (joint.under().isEmpty()) {
                inJoints.add(joint.id());
            }
        }
        for (Part part : device.parts().values()) {
            part.under()
                    .forEach(p -> below.computeIfAbsent(p, k -> new ArrayList<>()).add(part.id()));
        }
        // each part that is in may let in what it covers, and what is held where it covers
        Deque<String> toTry = new ArrayDeque<>(device.parts().keySet());
        while (!toTry.isEmpty()) {
            String part = toTry.remove();
            if (openers.contains(part)
                    || inParts.contains(part)
                    || !isOutside(device.part(part), inParts, inJoints)) {
                continue;
            }
            inParts.add(part);
            toTry.addAll(below.getOrDefault(part, List.of()));
            for (Joint joint : hidden.getOrDefault(part, List.of())) {
                if (inParts.containsAll(joint.under()) && inJoints.add(joint.id())) {
                    toTry.addAll(joint.holds());
                }
            }
        }
        inOrder(device.parts().keySet(), inParts, parts);
        inOrder(device.joints().keySet(), inJoints, joints);
    }

    private boolean isOutside(Part part, Set<String> inParts, Set<String> inJoints) {
        return part.move().isPresent()
                && inParts.containsAll(part.under())
                && jointsOf(part.id()).stream()
                        .allMatch(
                                joint ->
                                        inJoints.contains(joint.id())
                                                || joint.slack()
                                                || joint.gives());
    }

    /** Returns the parts that open the device when they leave. */
    private Set<String> openers() {
        Set<String> openers = new LinkedHashSet<>();
        for (Joint joint : device.joints().values()) {
            if (role(Kind.Scope.JOINT, joint.kind()).equals(Optional.of(Kind.Role.CONNECTOR))) {
                openers.addAll(joint.under());
            }
        }
        for (Part part : device.parts().values()) {
            if (role(Kind.Scope.PART, part.kind()).filter(INSIDE_ROLES::contains).isPresent()) {
                openers.addAll(part.under());
            }
        }
        return openers;
    }

    private Optional<Kind.Role> role(Kind.Scope scope, String kind) {
        return Optional.ofNullable(device.kinds(scope).get(kind)).flatMap(Kind::role);
    }

    /** Collects what has to be touched to cut a supply at any of its isolators. */
    OnTheWay onTheWay(String supply) {
        Set<String> parts = new LinkedHashSet<>();
        Set<String> joints = new LinkedHashSet<>();
        Deque<Joint> toSee = new ArrayDeque<>();
        for (Joint isolator : isolators(supply)) {
            see(isolator, joints, toSee);
        }
        while (!toSee.isEmpty()) {
            Joint joint = toSee.remove();
            if (device.onlyLetsGo(joint)) {
                device.movedToLetGo(joint).forEach(part -> see(part, parts, joints, toSee));
                continue;
            }
            boolean hiddenByBase = joint.under().contains(device.base());
            for (String part : hiddenByBase ? List.of(joint.site()) : joint.under()) {
                see(part, parts, joints, toSee);
            }
            for (Way way : joint.ways().values()) {
                for (String strain : device.strainedBy(joint, way)) {
                    see(device.joint(strain), joints, toSee);
                }
            }
        }
        Set<String> partsInOrder = new LinkedHashSet<>();
        Set<String> jointsInOrder = new LinkedHashSet<>();
        inOrder(device.parts().keySet(), parts, partsInOrder);
        inOrder(device.joints().keySet(), joints, jointsInOrder);
        return new OnTheWay(
                Collections.unmodifiableSet(partsInOrder),
                Collections.unmodifiableSet(jointsInOrder));
    }

    private static void see(Joint joint, Set<String> joints, Deque<Joint> toSee) {
        if (joints.add(joint.id())) {
            toSee.add(joint);
        }
    }

    private void see(String first, Set<String> parts, Set<String> joints, Deque<Joint> toSee) {
        Deque<String> more = new ArrayDeque<>(List.of(first));
        while (!more.isEmpty()) {
            String part = more.remove();
            // the base is never moved, so nothing has to be done to move it
            if (part.equals(device.base()) || !parts.add(part)) {
                continue;
            }
            more.addAll(device.part(part).under());
            for (Joint joint : jointsOf(part)) {
                if (!joint.slack() && !joint.gives()) {
                    see(joint, joints, toSee);
                }
            }
        }
    }

    private static void inOrder(Set<String> order, Set<String> some, Set<String> into) {
        order.stream().filter(some::contains).forEach(into::add);
    }

    /** Returns whether the rules have been found not to apply to a supply. */
    boolean isDropped(String supply) {
        return dropped.containsKey(supply);
    }

    /**
     * Finds the supplies whose isolators cannot be reached by acts on the way, moving only what
     * hangs rigidly together: first those out of reach even if the rules applied to none, then,
     * while some are out of reach because of the rules for others, the last of them in the file.
     */
    Map<String, String> dropped(Power power, Map<String, OnTheWay> ways) {
        for (String supply : ways.keySet()) {
            if (isolators(supply).isEmpty()) {
                dropped.put(supply, "no joint cuts it");
            }
        }
        Map<String, String> ruled = new LinkedHashMap<>(dropped);
        ways.keySet().forEach(supply -> dropped.putIfAbsent(supply, ""));
        Set<String> cut = new Trip(this, power, ways).cut();
        dropped.clear();
        dropped.putAll(ruled);
        for (String supply : ways.keySet()) {
            if (!cut.contains(supply) && !isDropped(supply)) {
                dropped.put(
                        supply,
                        "no way leads to "
                                + isolators(supply).get(0).id()
                                + ", which cuts it, unless parts that only lie together move as"
                                + " one");
            }
        }
        while (true) {
            Set<String> now = new Trip(this, power, ways).cut();
            List<String> unreached =
                    ways.keySet().stream()
                            .filter(supply -> !now.contains(supply) && !isDropped(supply))
                            .toList();
            if (unreached.isEmpty()) {
                return dropped;
            }
            dropped.put(
                    unreached.get(unreached.size() - 1),
                    "another supply would have to be cut first, and that one after it");
        }
    }
}
