package reseat.query;

import java.util.List;

/**
 * Two screw types that a person can confuse.
 *
 * @param one id of the type that comes first in the device file
 * @param other id of the other type
 * @param pointer JSON Pointer of the first type
 * @param differences what differs, though not visibly
 * @param weight 0 harmless to 6 a pierced cell
 * @param dangerous whether the two must not share a compartment
 * @param worst the worst swap as a sentence; empty if neither starts in a seat of the other
 * @param oneJoints joints with screws of the first type
 * @param otherJoints joints with screws of the other type
 */
public record LookAlikeRow(
        String one,
        String other,
        String pointer,
        List<String> differences,
        int weight,
        boolean dangerous,
        String worst,
        List<String> oneJoints,
        List<String> otherJoints) {

    public LookAlikeRow {
        differences = List.copyOf(differences);
        oneJoints = List.copyOf(oneJoints);
        otherJoints = List.copyOf(otherJoints);
    }
}
