package reseat.files;

import java.nio.file.Path;
import java.util.Objects;
import reseat.internal.files.PlanReader;
import reseat.model.BadInputException;
import reseat.model.State;

/** Reads plans, lists of acts and states. The format is documented in core/docs/plan-json.md. */
public final class PlanFiles {

    private PlanFiles() {}

    /**
     * Reads a plan as {@link PlanJson} writes it, or a list of act ids; JSON or YAML.
     *
     * @throws BadInputException with all problems if it is neither
     */
    public static PlanFile readPlan(Path file) throws BadInputException {
        return PlanReader.plan(Objects.requireNonNull(file, "file"));
    }

    /**
     * Reads a state: {@code {"released": ["joint", ...], "places": [["part", ...], ...], "prepared": ["act", ...]}}; JSON or
     * YAML.
     *
     * @throws BadInputException with all problems if it is invalid
     */
    public static State readState(Path file) throws BadInputException {
        return PlanReader.state(Objects.requireNonNull(file, "file"));
    }
}
