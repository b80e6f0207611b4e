package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.sheet.Group;
import reseat.sheet.Names;
import reseat.sheet.Step;

/** Puts steps with one heading, tool and posture into groups. */
final class Groups {

    private final List<Group> groups = new ArrayList<>();
    private String posture;

    Groups(String posture) {
        this.posture = posture;
    }

    /** Returns the posture of the device after the last step. */
    String posture() {
        return posture;
    }

    void add(String title, Optional<String> tool, String to, long setupMs, Step step) {
        Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
        if (last != null
                && last.title().equals(title)
                && last.tool().equals(tool)
                && last.posture().equals(to)) {
            List<Step> steps = new ArrayList<>(last.steps());
            steps.add(step);
            groups.set(
                    groups.size() - 1,
                    new Group(title, tool, to, last.turn(), last.setupMs() + setupMs, steps));
            return;
        }
        String turn =
                posture.equals(to)
                        ? ""
                        : "turn: " + Names.posture(posture) + " → " + Names.posture(to);
        groups.add(new Group(title, tool, to, turn, setupMs, List.of(step)));
        posture = to;
    }

    List<Group> all() {
        return groups;
    }
}
