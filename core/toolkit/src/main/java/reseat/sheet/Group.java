package reseat.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.model.Supply;

/**
 * Steps in a row with one tool in one posture and one state of power.
 *
 * @param title posture and tool in words, or the kind of steps
 * @param tool id of the tool in hand; empty for tests
 * @param posture id of the posture of the device
 * @param turn how the device is turned before the first step, in words; empty if it stays as it is
 * @param power the state of power in words, such as {@code ON: Main cell} or {@code all cut}; empty
 *     if the device has no supply
 * @param setupMs set-ups before its steps in milliseconds: change of tool and of posture
 * @param steps its steps, at least one
 */
public record Group(
        String title,
        Optional<String> tool,
        String posture,
        String turn,
        String power,
        long setupMs,
        List<Step> steps) {

    public Group {
        Objects.requireNonNull(tool, "tool");
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a group of steps needs a step: " + title);
        }
    }

    /** Returns the supplies that are on when its first step begins. */
    public List<Supply> on() {
        return steps.get(0).on();
    }
}
