package reseat.testkit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares output with a file that is kept next to the tests.
 *
 * <p>Run the tests with {@code -Dreseat.keep=true} to rewrite the files, then review the difference
 * before you commit it.
 */
public final class KeptText {

    private static final String SWITCH = "reseat.keep";

    private KeptText() {}

    /**
     * Checks that a text equals the file, apart from line ends.
     *
     * @param file the kept file, never {@code null}; written instead of read when {@code
     *     -Dreseat.keep=true} is given
     * @param actual what the code under test produced, never {@code null}
     * @throws AssertionError if they differ or there is no such file; names the first line that
     *     differs
     */
    public static void matches(Path file, String actual) {
        requireNonNull(file, "file");
        String text = unixLines(requireNonNull(actual, "actual"));
        try {
            if (Boolean.getBoolean(SWITCH)) {
                Path folder = file.toAbsolutePath().getParent();
                if (folder != null) {
                    Files.createDirectories(folder);
                }
                Files.writeString(file, text, UTF_8);
                return;
            }
            if (!Files.exists(file)) {
                throw new AssertionError(
                        "there is no " + file + " yet; run once with -D" + SWITCH + "=true");
            }
            String kept = unixLines(Files.readString(file, UTF_8));
            if (!kept.equals(text)) {
                throw new AssertionError(firstDifference(file, kept, text));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot compare with " + file, e);
        }
    }

    private static String unixLines(String text) {
        return text.replace("\r\n", "\n");
    }

    private static String firstDifference(Path file, String kept, String actual) {
        String[] left = kept.split("\n", -1);
        String[] right = actual.split("\n", -1);
        int line = 0;
        while (line < left.length && line < right.length && left[line].equals(right[line])) {
            line++;
        }
        return file
                + ":"
                + (line + 1)
                + ": kept <"
                + (line < left.length ? left[line] : "(end)")
                + "> but got <"
                + (line < right.length ? right[line] : "(end)")
                + ">; if the new text is right, run once with -D"
                + SWITCH
                + "=true";
    }
}
