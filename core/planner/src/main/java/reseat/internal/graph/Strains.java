package reseat.internal.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Way;

/** Which unreleased joints strain which ways of others. */
final class Strains {

    private final Map<String, List<String>> strain = new LinkedHashMap<>();
    private final Map<String, List<String>> named = new LinkedHashMap<>();

    Strains(Device device, Set<String> released) {
        for (Joint joint : device.joints().values()) {
            if (released.contains(joint.id())) {
                continue;
            }
            for (Way way : joint.ways().values()) {
                String key = key(joint, way);
                List<String> by =
                        device.strainedBy(joint, way).stream()
                                .filter(other -> !released.contains(other))
                                .distinct()
                                .sorted()
                                .toList();
                strain.put(key, by);
                for (String other : by) {
                    named.computeIfAbsent(other, id -> new ArrayList<>()).add(key);
                }
            }
        }
    }

    private static String key(Joint joint, Way way) {
        return joint.id() + "/" + way.id();
    }

    /** Returns the joints that must be released before one is by a way, sorted. */
    List<String> of(Joint joint, Way way) {
        return strain.getOrDefault(key(joint, way), List.of());
    }

    /** Returns the ways of other joints that a joint strains. */
    List<String> namedBy(Joint joint) {
        return named.getOrDefault(joint.id(), List.of());
    }
}
