package reseat.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/**
 * The contents of a plan file: acts in order, and their purpose. A file that is a bare list of act
 * ids contains only the acts.
 *
 * @param device id of the device; empty if the file does not state it
 * @param variant id of the variant; empty for the base device or if the file does not state it
 * @param goal what the acts are to achieve; empty if the file does not state it
 * @param start the state of the unit before; a closed device if the file does not state it
 * @param rules what was forbidden, required and permitted
 * @param leaveOpen whether the rebuild leaves open what was open at the start; false if the file
 *     does not state it
 * @param acts the acts in order; ids are not yet checked against any device
 * @param totalMs the cost that the file states; empty if it does not
 */
public record PlanFile(
        Optional<String> device,
        Optional<String> variant,
        Optional<Goal> goal,
        State start,
        Rules rules,
        boolean leaveOpen,
        List<Act> acts,
        OptionalLong totalMs) {

    public PlanFile {
        acts = List.copyOf(acts);
    }
}
