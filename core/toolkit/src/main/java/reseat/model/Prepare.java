package reseat.model;

import java.util.List;

/**
 * An authored act before work: shut down, discharge, fixture. Done by hand in the usual posture.
 *
 * @param id what files, plans and rules name it by
 * @param text what to do, in the imperative
 * @param restore what undoes it at the end, in the imperative; empty if nothing is stated
 * @param ms time in milliseconds
 * @param restoreMs time of its undoing at the end, in milliseconds
 * @param hazards ids of hazards
 * @param onlyInside whether it is done only in plans with an act inside the device
 */
public record Prepare(
        String id,
        String text,
        String restore,
        long ms,
        long restoreMs,
        List<String> hazards,
        boolean onlyInside) {

    public Prepare {
        hazards = List.copyOf(hazards);
    }

    /** Creates an act that every plan needs and that does not state what undoes it. */
    public Prepare(String id, String text, long ms, long restoreMs, List<String> hazards) {
        this(id, text, "", ms, restoreMs, hazards, false);
    }
}
