package reseat.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import reseat.model.Hazard;
import reseat.model.Signal;

/**
 * A safety message. It comes before the step that it belongs to.
 *
 * @param signal how grave it is
 * @param subject id of the hazard, or of the part or joint that it is about
 * @param brief a few words that repeat it at later steps
 * @param text the whole message, as sentences
 * @param hazard the hazard with its nature, consequence and avoidance; empty for what follows from
 *     the plan alone, such as a part that hangs while the device is turned
 * @param step number of the step before which it is printed in full
 */
public record Caution(
        Signal signal,
        String subject,
        String brief,
        String text,
        Optional<Hazard> hazard,
        int step) {

    public Caution {
        Objects.requireNonNull(signal, "signal");
        Objects.requireNonNull(hazard, "hazard");
    }

    /** Returns the brief words with the number of the step that has the whole message. */
    public String reminder() {
        return brief + " (step\u00a0" + step + ")";
    }

    /** Returns reminders by signal word, gravest first; each list keeps the order given. */
    public static Map<Signal, List<String>> reminders(Collection<Caution> cautions) {
        Map<Signal, List<String>> all = new EnumMap<>(Signal.class);
        for (Caution each : cautions) {
            all.computeIfAbsent(each.signal(), s -> new ArrayList<>()).add(each.reminder());
        }
        return all;
    }
}
