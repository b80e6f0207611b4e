package reseat.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import reseat.model.Device;
import reseat.model.Joint;

/**
 * Which parts each act of a teardown uncovers: their last cover leaves.
 *
 * <p>The covers of a part are the parts of its {@code under}; where that is empty, it shows as soon
 * as one of the joints that hold it does. A part with nothing over it is uncovered by no act.
 */
record Uncovering(Device device) {

    /**
     * Returns the parts that each act is the first to uncover.
     *
     * @param stands the state before each act, and after the last
     */
    List<List<String>> of(List<Stand> stands) {
        Set<String> seen = new LinkedHashSet<>(open(stands.get(0)));
        List<List<String>> all = new ArrayList<>();
        for (Stand after : stands.subList(1, stands.size())) {
            all.add(open(after).stream().filter(seen::add).toList());
        }
        return all;
    }

    private List<String> open(Stand stand) {
        return device.parts().keySet().stream()
                .filter(part -> !part.equals(device.base()) && isOpen(part, stand))
                .toList();
    }

    private boolean isOpen(String part, Stand stand) {
        List<String> covers = device.part(part).under();
        if (!covers.isEmpty()) {
            return covers.stream().noneMatch(cover -> stand.together(cover, part));
        }
        List<Joint> holding =
                device.joints().values().stream()
                        .filter(joint -> joint.holds().contains(part))
                        .toList();
        return holding.isEmpty()
                || holding.stream()
                        .anyMatch(
                                joint ->
                                        joint.under().stream()
                                                .noneMatch(
                                                        cover ->
                                                                !cover.equals(part)
                                                                        && stand.together(
                                                                                cover,
                                                                                joint.site())));
    }
}
