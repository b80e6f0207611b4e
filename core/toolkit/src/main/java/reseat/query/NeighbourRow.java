package reseat.query;

import java.util.List;

/**
 * A part next to another one.
 *
 * @param part id of the neighbour
 * @param pointer JSON Pointer for findings about this row
 * @param name its name
 * @param joints ids of the joints that hold the two together
 * @param above whether it is in the way of moving the other
 * @param below whether the other is in the way of moving it
 */
public record NeighbourRow(
        String part,
        String pointer,
        String name,
        List<String> joints,
        boolean above,
        boolean below) {

    public NeighbourRow {
        joints = List.copyOf(joints);
    }
}
