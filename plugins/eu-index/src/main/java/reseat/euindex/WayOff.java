package reseat.euindex;

import java.util.Comparator;
import java.util.List;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Rules;
import reseat.plan.PlanRequest;

/** What is planned to count the steps to a part. */
final class WayOff {

    private WayOff() {}

    /**
     * Asks for the way to a part. The base is off when everything joined to it is; the plan ends
     * with the part that has the fewest joints.
     */
    static PlanRequest request(Device device, String id) {
        if (!id.equals(device.base())) {
            return PlanRequest.of(device, new Goal.Free(List.of(id)));
        }
        List<String> joints =
                device.joints().values().stream()
                        .filter(joint -> joint.holds().contains(id))
                        .map(Joint::id)
                        .toList();
        List<String> parts =
                device.joints().values().stream()
                        .filter(joint -> joint.holds().contains(id))
                        .flatMap(joint -> joint.holds().stream())
                        .filter(part -> !part.equals(id))
                        .distinct()
                        .toList();
        String last =
                parts.stream()
                        .min(Comparator.comparingLong(part -> jointsOf(device, part)))
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "part.back-cover: nothing is joined to " + id));
        return PlanRequest.of(device, new Goal.Free(List.of(last)))
                .with(Rules.none().requireJoints(joints).requireParts(parts));
    }

    private static long jointsOf(Device device, String part) {
        return device.joints().values().stream().filter(j -> j.holds().contains(part)).count();
    }
}
