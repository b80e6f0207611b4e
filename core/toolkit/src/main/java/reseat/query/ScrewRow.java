package reseat.query;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.StackUp;

/**
 * A screw in its seat.
 *
 * @param joint id of the joint
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param type id of the screw type
 * @param thread thread designation
 * @param lengthMm length in millimetres
 * @param head form of the head
 * @param finish finish; empty where not told
 * @param patch whether it carries a locking patch
 * @param captive whether it stays in its part when loosened
 * @param holds the parts that it holds
 * @param site the part that it is driven into
 * @param under the parts that hide it
 * @param xMm where it lies, to the right, in millimetres
 * @param yMm where it lies, upwards, in millimetres
 * @param torqueNm torque given by the maker in newton metres
 * @param engagementMm engaged thread in millimetres
 * @param goodEngagementMm engaged thread that good practice requires, in millimetres
 * @param protrusionMm how far the tip stands out of the thread, in millimetres
 * @param bottomClearanceMm what is left to the bottom of the hole, in millimetres
 * @param outcome what happens when it is driven home; empty if its thread or material is not known
 * @param behind what lies behind its seat, nearest first
 * @param missing names of missing facts that would allow more to be said
 */
public record ScrewRow(
        String joint,
        String pointer,
        String name,
        String type,
        String thread,
        double lengthMm,
        String head,
        String drive,
        String finish,
        boolean patch,
        boolean captive,
        List<String> holds,
        String site,
        List<String> under,
        OptionalDouble xMm,
        OptionalDouble yMm,
        OptionalDouble torqueNm,
        OptionalDouble engagementMm,
        OptionalDouble goodEngagementMm,
        OptionalDouble protrusionMm,
        OptionalDouble bottomClearanceMm,
        Optional<StackUp.Outcome> outcome,
        List<ClearanceRow> behind,
        List<String> missing) {

    public ScrewRow {
        holds = List.copyOf(holds);
        under = List.copyOf(under);
        behind = List.copyOf(behind);
        missing = List.copyOf(missing);
    }
}
