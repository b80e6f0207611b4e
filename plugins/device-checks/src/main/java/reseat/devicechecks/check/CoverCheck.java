package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Severity;

/** Finds joints inside a device that nothing hides. */
final class CoverCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "joint-without-cover",
                    "Joint inside that nothing hides",
                    "A joint that can be reached while the device is closed, although what covers its parts still lies over all of them. A joint to the base that is reached in another posture than its part is moved in, as from the back, does not count.",
                    "A plan then works inside a closed device: it takes too little off, and no power is cut first. Common practice, no source.",
                    Severity.WARNING,
                    List.of("covers", "data"),
                    List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        Closed closed = Closed.of(input);
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            if (!joint.gives() && closed.reaches(joint)) {
                look(input, closed, joint, found);
            }
        }
        return found;
    }

    private static void look(CheckInput input, Closed closed, Joint joint, List<Finding> found) {
        Device device = input.device();
        List<Part> parts =
                joint.holds().stream()
                        .filter(id -> !id.equals(device.base()))
                        .map(device::part)
                        .toList();
        boolean toBase = parts.size() < joint.holds().size();
        List<String> evidence = new ArrayList<>();
        for (Part part : parts) {
            Set<String> covers = closed.covers(part);
            if (!closed.uncovers(part)) {
                if (!Collections.disjoint(covers, joint.under())
                        || (toBase && otherPosture(joint, part))) {
                    return;
                }
                evidence.add(part.id() + " lies under " + part.under().get(0));
            } else if (!toBase && hidden(device, closed, joint, part)) {
                evidence.add("every other joint of " + part.id() + " is hidden");
            } else {
                return;
            }
        }
        String cover =
                parts.stream()
                        .flatMap(part -> part.under().stream())
                        .findFirst()
                        .map(id -> ", such as " + id)
                        .orElse("");
        Finding.Draft draft = input.finding("/joints/" + joint.id());
        evidence.forEach(draft::evidence);
        found.add(
                draft.says(
                        joint.id()
                                + " can be reached while the device is closed, but all that it holds lies inside.",
                        "State under for it" + cover + "."));
    }

    /** From the back, a joint may be open though its part is covered. */
    private static boolean otherPosture(Joint joint, Part part) {
        return part.move()
                .map(
                        move ->
                                joint.ways().values().stream()
                                        .noneMatch(way -> way.posture().equals(move.posture())))
                .orElse(true);
    }

    /** Joints that hold the same parts may have lost their cover together. */
    private static boolean hidden(Device device, Closed closed, Joint joint, Part part) {
        List<Joint> others =
                device.joints().values().stream()
                        .filter(other -> other.holds().contains(part.id()))
                        .filter(
                                other ->
                                        !Set.copyOf(other.holds())
                                                .equals(Set.copyOf(joint.holds())))
                        .toList();
        return !others.isEmpty()
                && others.stream().noneMatch(closed::reaches)
                && others.stream()
                        .anyMatch(
                                other ->
                                        other.under().stream()
                                                .anyMatch(id -> !id.equals(device.base())));
    }
}
