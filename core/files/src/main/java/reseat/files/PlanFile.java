package reseat.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import reseat.model.Act;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/**
 * What a plan file says: acts in order, and what they are for. A file that is a bare list of act
 * ids says nothing but the acts.
 *
 * @param device id of the device; empty where the file does not say
 * @param variant id of the variant; empty for the base device or where the file does not say
 * @param goal what the acts are to achieve; empty where the file does not say
 * @param start where the unit stands before; a closed device where the file does not say
 * @param rules what was forbidden, required and permitted
 * @param acts the acts in order; ids are not held against any device yet
 * @param totalMs the cost that the file states; empty where it does not
 */
public record PlanFile(
        Optional<String> device,
        Optional<String> variant,
        Optional<Goal> goal,
        State start,
        Rules rules,
        List<Act> acts,
        OptionalLong totalMs) {

    public PlanFile {
        acts = List.copyOf(acts);
    }
}
