package reseat.files;

import java.nio.file.Path;
import java.util.Objects;
import reseat.internal.files.JobReader;
import reseat.model.BadInputException;

/** Reads job files; the format is documented in core/docs/checking.md. */
public final class JobFiles {

    private JobFiles() {}

    /**
     * Reads a job file, YAML or JSON.
     *
     * @throws BadInputException with all problems if it is invalid
     */
    public static JobFile read(Path file) throws BadInputException {
        return JobReader.read(Objects.requireNonNull(file, "file"));
    }
}
