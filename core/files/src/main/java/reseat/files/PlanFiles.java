package reseat.files;

import java.nio.file.Path;
import java.util.Objects;
import reseat.internal.files.PlanReader;
import reseat.model.Act;
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
     * Reads a state: {@code {"released": ["joint", ...], "places": [["part", ...], ...]}}; JSON or
     * YAML.
     *
     * @throws BadInputException with all problems if it is invalid
     */
    public static State readState(Path file) throws BadInputException {
        return PlanReader.state(Objects.requireNonNull(file, "file"));
    }

    /**
     * Parses the stable id of an act. It is not checked against a device.
     *
     * @param id such as {@code prepare:shut-down}, {@code release:fan-plug/pull}, {@code
     *     move:lid+hinge}
     * @throws IllegalArgumentException with a sentence for the user if it is not one
     */
    public static Act act(String id) {
        return PlanReader.act(Objects.requireNonNull(id, "id"));
    }
}
