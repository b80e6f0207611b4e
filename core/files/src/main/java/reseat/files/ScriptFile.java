package reseat.files;

import java.nio.file.Path;
import java.util.Objects;
import reseat.check.CheckInfo;
import reseat.internal.files.ScriptReader;
import reseat.model.BadInputException;

/**
 * A check as a file that shops share: a comment that says what it is, then the code. The shape is
 * told in core/docs/scripts.md.
 *
 * @param file the file as the user named it
 * @param language what it is written in
 * @param info what the check says of itself
 * @param from who gave it; empty where the file does not say
 * @param sha256 hash of the very bytes of the file, 64 hexadecimal digits in lower case
 * @param text the whole text of the file; lines count as in the file
 */
public record ScriptFile(
        String file, Language language, CheckInfo info, String from, String sha256, String text) {

    /** What a script is written in. */
    public enum Language {
        /** JavaScript: runs in a sandbox, whoever wrote it. */
        JAVASCRIPT(".js"),
        /** Java: has full power and runs by consent alone. */
        JAVA(".java");

        private final String ending;

        Language(String ending) {
            this.ending = ending;
        }

        /** Returns how names of such files end. */
        public String ending() {
            return ending;
        }
    }

    /** Largest file that is read, in bytes. */
    public static final int MAX_BYTES = 256 * 1024;

    /**
     * Reads a script file without running any of it.
     *
     * @param file the file; its ending says the language
     * @throws BadInputException with all that is wrong, by line
     */
    public static ScriptFile read(Path file) throws BadInputException {
        return ScriptReader.read(Objects.requireNonNull(file, "file"));
    }
}
