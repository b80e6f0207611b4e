package reseat.script.host;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where the JavaScript engine is. Its jars are kept separately, in {@code lib/js}: Java scans all
 * jars on its module path at every start, which takes longer for these than for all others
 * together. The launcher adds them only for the console.
 *
 * <p>This class refers to no class of the engine, so that it works without it.
 */
public final class JsEngine {

    /** The module that requires all other modules of the engine. */
    static final String MODULE = "org.graalvm.js";

    private JsEngine() {}

    /** Thrown when JavaScript should run and there is no engine; the message is for users. */
    public static final class Missing extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Missing(String message) {
            super(message);
        }
    }

    /** Returns whether JavaScript can run in this process. */
    public static boolean isHere() {
        return ModuleLayer.boot().findModule(MODULE).isPresent();
    }

    /** Returns a sentence that says why JavaScript cannot run, with the remedy. */
    public static String missing() {
        return missing(home());
    }

    static String missing(@Nullable String home) {
        return "JavaScript cannot run: "
                + (home == null
                        ? "Java was started without the module "
                                + MODULE
                                + "; start with bin/reseat, or put lib/js on the module path"
                                + " and add this module"
                        : "the engine is missing from "
                                + Path.of(home, "lib", "js")
                                + "; reinstall Reseat");
    }

    /**
     * Returns the module path for a process that runs JavaScript.
     *
     * @throws Missing if there is no engine
     */
    static String pathWith() {
        return pathWith(
                System.getProperty("jdk.module.path", ""), isHere(), home(), File.pathSeparator);
    }

    static String pathWith(String path, boolean here, @Nullable String home, String separator) {
        List<String> entries = entries(path, separator);
        if (here) {
            return String.join(separator, entries);
        }
        Path apart =
                Optional.ofNullable(home)
                        .map(each -> Path.of(each, "lib", "js").toAbsolutePath())
                        .filter(Files::isDirectory)
                        .orElseThrow(() -> new Missing("reseat: " + missing(home)));
        return String.join(separator, entries) + separator + apart;
    }

    /**
     * Returns the module path of this process without the engine where that is kept separately,
     * because Java compilers scan all of it too.
     */
    public static String pathWithout() {
        String home = home();
        Path apart = home == null ? null : Path.of(home, "lib", "js").toAbsolutePath();
        return entries(System.getProperty("jdk.module.path", ""), File.pathSeparator).stream()
                .filter(entry -> !Path.of(entry).equals(apart))
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static List<String> entries(String path, String separator) {
        return Arrays.stream(path.split(Pattern.quote(separator), -1))
                .filter(entry -> !entry.isEmpty())
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .toList();
    }

    private static @Nullable String home() {
        return System.getProperty("reseat.home");
    }
}
