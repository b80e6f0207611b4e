package reseat.query;

import java.util.List;

/**
 * Two parts that joints hold together.
 *
 * @param one id of the part that comes first in the device file
 * @param other id of the other part
 * @param joints ids of the joints, in the order of the device file
 */
public record PairRow(String one, String other, List<String> joints) {

    public PairRow {
        joints = List.copyOf(joints);
    }
}
