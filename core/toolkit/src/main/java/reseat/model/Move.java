package reseat.model;

import java.util.List;

/**
 * The one way in which a part is moved.
 *
 * @param kind id of the kind of manipulation
 * @param tool id of the tool; the device's hand where none is needed
 * @param posture posture of the device
 * @param ms time in milliseconds
 * @param restoreMs time to put it back, in milliseconds
 * @param handling sentences to print with the act, besides those of the kind
 * @param hazards ids of hazards, besides those of the kind
 */
public record Move(
        String kind,
        String tool,
        String posture,
        long ms,
        long restoreMs,
        List<String> handling,
        List<String> hazards) {

    public Move {
        handling = List.copyOf(handling);
        hazards = List.copyOf(hazards);
    }
}
