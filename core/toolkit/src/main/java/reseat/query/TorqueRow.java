package reseat.query;

import java.util.OptionalDouble;

/**
 * The torque of a seat, as far as it is known.
 *
 * @param joint id of the joint
 * @param pointer JSON Pointer for findings about this row
 * @param type id of the screw type
 * @param thread thread designation of the screw
 * @param material material that the thread is in; empty if unknown
 * @param givenNm torque given by the maker, in newton metres
 * @param tableNm torque from the table of the device family, in newton metres
 * @param estimateNm estimated torque in newton metres
 * @param lowNm lower end of the window of the estimate, in newton metres
 * @param highNm upper end of the window of the estimate, in newton metres
 * @param limit what limits the estimate; empty if there is none
 * @param from source or basis of the torque to use; empty if there is none
 * @param noEstimate why there is no estimate; empty if there is one
 */
public record TorqueRow(
        String joint,
        String pointer,
        String type,
        String thread,
        String material,
        OptionalDouble givenNm,
        OptionalDouble tableNm,
        OptionalDouble estimateNm,
        OptionalDouble lowNm,
        OptionalDouble highNm,
        String limit,
        String from,
        String noEstimate) {

    /** Returns the torque to use: the maker's, else the table's, else the estimate. */
    public OptionalDouble valueNm() {
        if (givenNm.isPresent()) {
            return givenNm;
        }
        return tableNm.isPresent() ? tableNm : estimateNm;
    }
}
