package reseat.console.command;

import java.util.List;
import reseat.spi.ToolkitVersion;

/**
 * What {@code --version} prints: our version, and the Java that runs us. It knows nothing of the
 * command line: making one takes longer than the answer.
 */
public final class VersionText {

    private VersionText() {}

    /** Tells whether the words ask for the version and for nothing else. */
    public static boolean isAskedBy(String... words) {
        return words.length == 1 && (words[0].equals("--version") || words[0].equals("-V"));
    }

    /** Returns the lines. */
    public static List<String> lines() {
        return List.of(
                "reseat " + ToolkitVersion.current(),
                "Java "
                        + Runtime.version()
                        + ", "
                        + System.getProperty("java.vendor", "maker unknown"));
    }
}
