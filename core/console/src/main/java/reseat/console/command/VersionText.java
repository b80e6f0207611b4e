package reseat.console.command;

import java.util.List;
import reseat.spi.ToolkitVersion;

/**
 * The output of {@code --version}: our version, and that of Java. It does not use the command line
 * library, which would take longer than the answer.
 */
public final class VersionText {

    private VersionText() {}

    /** Returns whether the words request only the version. */
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
