package reseat.query;

import java.util.List;

/**
 * Screws that have something in common.
 *
 * @param key what they have in common: the id of a type, drive or part
 * @param pointer JSON Pointer for findings about this row
 * @param name its display name
 * @param magnetic whether it is a part that catches loose screws
 * @param joints ids of the joints
 * @param types ids of the screw types among them, in order of first appearance
 * @param drives the drives among them, in order of first appearance
 */
public record GroupRow(
        String key,
        String pointer,
        String name,
        boolean magnetic,
        List<String> joints,
        List<String> types,
        List<String> drives) {

    public GroupRow {
        joints = List.copyOf(joints);
        types = List.copyOf(types);
        drives = List.copyOf(drives);
    }
}
