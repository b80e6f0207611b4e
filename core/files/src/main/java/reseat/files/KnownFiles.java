package reseat.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import reseat.internal.files.KnownReader;
import reseat.model.BadInputException;

/** Files of accepted findings; the format is documented in core/docs/checking.md. */
public final class KnownFiles {

    private KnownFiles() {}

    /**
     * Reads a file.
     *
     * @return its entries in order
     * @throws BadInputException with all problems if it is invalid
     */
    public static List<KnownFinding> read(Path file) throws BadInputException {
        return KnownReader.read(Objects.requireNonNull(file, "file"));
    }

    /**
     * Adds entries at the end of a file, which is created if missing. Its contents, including
     * comments, are kept. The file is replaced atomically.
     *
     * @throws BadInputException if the file is invalid, or entries cannot be added at its end
     * @throws IOException if it cannot be written
     */
    public static void add(Path file, List<KnownFinding> entries)
            throws BadInputException, IOException {
        KnownReader.add(Objects.requireNonNull(file, "file"), List.copyOf(entries));
    }
}
