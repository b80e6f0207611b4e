package reseat.console.command;

import java.io.File;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import reseat.spi.Plugins;

/**
 * The plugins of this process: those that ship, the shop's and the user's. They are loaded when a
 * command first needs them, once.
 */
final class OurPlugins {

    private static @Nullable Plugins loaded;

    private OurPlugins() {}

    /** Returns the plugins; the first time, one line says of each that was left out why. */
    static synchronized Plugins get(PrintWriter err) {
        Plugins plugins = loaded;
        if (plugins == null) {
            plugins = quietly();
            plugins.refused().forEach(refused -> err.println("reseat: left out: " + refused));
            err.flush();
        }
        return plugins;
    }

    /** Returns the plugins, and leaves it to the caller to tell what was left out. */
    static synchronized Plugins quietly() {
        Plugins plugins = loaded;
        if (plugins == null) {
            plugins = Plugins.load(folders());
            loaded = plugins;
        }
        return plugins;
    }

    static List<Path> folders() {
        return folders(
                System.getenv(),
                System.getProperty("reseat.home", ""),
                System.getProperty("user.home", ""));
    }

    /**
     * Returns the folders of plugins: those that the shop names in {@code RESEAT_PLUGINS}, else the
     * folder plugins of the program, then the user's own.
     */
    static List<Path> folders(Map<String, String> env, String home, String user) {
        List<Path> folders = new ArrayList<>();
        String named = env.getOrDefault("RESEAT_PLUGINS", "");
        if (!named.isBlank()) {
            for (String each : named.split(Pattern.quote(File.pathSeparator), -1)) {
                if (!each.isBlank()) {
                    folders.add(Path.of(each));
                }
            }
        } else if (!home.isEmpty()) {
            addIfThere(folders, Path.of(home, "plugins"));
        }
        String data = env.getOrDefault("XDG_DATA_HOME", "");
        if (!data.isBlank() || !user.isEmpty()) {
            Path share = data.isBlank() ? Path.of(user, ".local", "share") : Path.of(data);
            addIfThere(folders, share.resolve("reseat").resolve("plugins"));
        }
        return folders;
    }

    private static void addIfThere(List<Path> folders, Path folder) {
        if (Files.isDirectory(folder)) {
            folders.add(folder);
        }
    }
}
