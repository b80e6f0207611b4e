package reseat.model;

import java.util.List;
import java.util.Optional;

/**
 * One way to release a joint and to make it again.
 *
 * @param id id, unique within the joint
 * @param kind id of the kind of manipulation
 * @param tool id of the tool; the device's hand where none is needed
 * @param posture posture of the device
 * @param ms time in milliseconds
 * @param restoreMs time of the restore act in milliseconds
 * @param consumes what the restore act uses up
 * @param ruins parts that do not survive it; needs permission
 * @param restore wording of the restore act, in the imperative; empty if that of the kind applies
 * @param handling sentences to print with the act, besides those of the kinds
 * @param hazards ids of hazards, besides those of the kinds
 * @param strainedBy joints that must not be tight when the joint is released by it; empty if not
 *     stated, so that {@link Device#strainedBy} computes them
 */
public record Way(
        String id,
        String kind,
        String tool,
        String posture,
        long ms,
        long restoreMs,
        List<ConsumableUse> consumes,
        List<String> ruins,
        String restore,
        List<String> handling,
        List<String> hazards,
        Optional<List<String>> strainedBy) {

    public Way {
        consumes = List.copyOf(consumes);
        ruins = List.copyOf(ruins);
        handling = List.copyOf(handling);
        hazards = List.copyOf(hazards);
        strainedBy = strainedBy.map(List::copyOf);
    }

    /** Creates a way that no joint strains. */
    public Way(
            String id,
            String kind,
            String tool,
            String posture,
            long ms,
            long restoreMs,
            List<ConsumableUse> consumes,
            List<String> ruins,
            String restore,
            List<String> handling,
            List<String> hazards) {
        this(
                id,
                kind,
                tool,
                posture,
                ms,
                restoreMs,
                consumes,
                ruins,
                restore,
                handling,
                hazards,
                Optional.of(List.of()));
    }
}
