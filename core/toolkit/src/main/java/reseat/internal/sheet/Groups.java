package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.Device;
import reseat.sheet.Group;
import reseat.sheet.Names;
import reseat.sheet.Step;

/** Puts steps with one heading, tool, posture and state of power into groups. */
final class Groups {

    private final List<Group> groups = new ArrayList<>();
    private final Device device;
    private String posture;

    Groups(Device device, String posture) {
        this.device = device;
        this.posture = posture;
    }

    /** Returns the posture of the device after the last step. */
    String posture() {
        return posture;
    }

    void add(String title, Optional<String> tool, String to, long setupMs, Step step) {
        String power = PowerWords.state(device, step.on());
        Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
        if (last != null
                && last.title().equals(title)
                && last.tool().equals(tool)
                && last.power().equals(power)
                && last.posture().equals(to)) {
            List<Step> steps = new ArrayList<>(last.steps());
            steps.add(step);
            groups.set(
                    groups.size() - 1,
                    new Group(
                            title, tool, to, last.turn(), power, last.setupMs() + setupMs, steps));
            return;
        }
        String turn =
                posture.equals(to)
                        ? ""
                        : "turn: " + Names.posture(posture) + " → " + Names.posture(to);
        groups.add(new Group(title, tool, to, turn, power, setupMs, List.of(step)));
        posture = to;
    }

    List<Group> all() {
        return groups;
    }
}
