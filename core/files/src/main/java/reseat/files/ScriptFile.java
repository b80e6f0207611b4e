package reseat.files;

import java.nio.file.Path;
import java.util.Objects;
import reseat.check.CheckInfo;
import reseat.internal.files.ScriptReader;
import reseat.model.BadInputException;

/**
 * A check as a file that shops share: a comment that describes it, then the code. The format is
 * documented in core/docs/scripts.md.
 *
 * @param file the file as the user named it
 * @param language its language
 * @param info the description of the check
 * @param from its author; empty if the file does not state it
 * @param sha256 SHA-256 hash of the bytes of the file, 64 hexadecimal digits in lower case
 * @param text the whole text of the file; line numbers match the file
 */
public record ScriptFile(
        String file, Language language, CheckInfo info, String from, String sha256, String text) {

    /** The language of a script. */
    public enum Language {
        /** JavaScript: always runs in a sandbox. */
        JAVASCRIPT(".js"),
        /** Java: has full access and runs only with consent. */
        JAVA(".java");

        private final String ending;

        Language(String ending) {
            this.ending = ending;
        }

        /** Returns the file name ending. */
        public String ending() {
            return ending;
        }
    }

    /** Largest file that is read, in bytes. */
    public static final int MAX_BYTES = 256 * 1024;

    /**
     * Reads a script file without running any of it.
     *
     * @param file the file; its ending determines the language
     * @throws BadInputException with all errors, by line
     */
    public static ScriptFile read(Path file) throws BadInputException {
        return ScriptReader.read(Objects.requireNonNull(file, "file"));
    }
}
