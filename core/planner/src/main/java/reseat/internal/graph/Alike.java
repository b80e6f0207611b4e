package reseat.internal.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.model.State;
import reseat.model.Way;

/**
 * Finds the joints that are alike in holds, under, needs, slack, giving, ways, what strains them
 * and what they strain. An isolator stays alone, since one of several may suffice. Everything stays
 * alone if a tool is required, since only one of several joints may need it.
 */
final class Alike {

    private final Device device;
    private final State start;
    private final Rules rules;
    private final Set<String> single;
    private final Strains strains;
    private final Predicate<Act> may;

    Alike(
            Device device,
            State start,
            Rules rules,
            Set<String> single,
            Strains strains,
            Predicate<Act> may) {
        this.device = device;
        this.start = start;
        this.rules = rules;
        this.single = single;
        this.strains = strains;
        this.may = may;
    }

    /** Returns the unreleased joints, those that are alike together. */
    List<List<Joint>> groups() {
        Map<Object, List<Joint>> groups = new LinkedHashMap<>();
        for (Joint joint : device.joints().values()) {
            if (start.released().contains(joint.id())) {
                continue;
            }
            boolean alone =
                    joint.isIsolator()
                            || single.contains(joint.id())
                            || !rules.requiredTools().isEmpty();
            groups.computeIfAbsent(alone ? joint.id() : key(joint), k -> new ArrayList<>())
                    .add(joint);
        }
        return List.copyOf(groups.values());
    }

    private Object key(Joint joint) {
        return List.of(
                joint.holds().subList(0, joint.holds().size() - 1).stream().sorted().toList(),
                joint.site(),
                joint.under().stream().sorted().toList(),
                device.power().needs(joint).stream().sorted().toList(),
                joint.slack(),
                joint.gives()
                        ? List.of(
                                joint.firstWay().ms(),
                                joint.firstWay().restoreMs(),
                                rules.forbiddenJoints().contains(joint.id()))
                        : List.of(),
                strains.namedBy(joint),
                joint.ways().values().stream()
                        .filter(way -> Compiled.allowed(device, joint, way, rules))
                        .filter(way -> may.test(new Act.Release(joint.id(), way.id())))
                        .map(way -> key(joint, way))
                        .toList());
    }

    private Object key(Joint joint, Way way) {
        return List.of(
                way.id(),
                way.tool(),
                way.posture(),
                way.ms(),
                way.restoreMs(),
                strains.of(joint, way));
    }
}
