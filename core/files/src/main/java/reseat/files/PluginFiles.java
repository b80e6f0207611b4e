package reseat.files;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import reseat.internal.loader.PluginLoader;
import reseat.spi.Plugins;

/** Loads plugins: those included in Reseat, and those in folders. */
public final class PluginFiles {

    /** How long a plugin in a folder may take to start. */
    public static final Duration START_LIMIT = Duration.ofSeconds(5);

    private PluginFiles() {}

    /** Loads the plugins included in Reseat. */
    public static Plugins bundled() {
        return load(List.of());
    }

    /**
     * Loads the plugins included in Reseat and those in folders. In a folder each jar, each folder
     * of jars and each folder with a {@code family.ini} is one plugin. No fault of a plugin makes
     * this throw.
     *
     * @param folders the folders; of two plugins with the same id, the first is used
     */
    public static Plugins load(List<Path> folders) {
        return load(folders, START_LIMIT, Set.of());
    }

    /**
     * Loads plugins as {@link #load(List)} does, for a program with its own commands.
     *
     * @param folders the folders; of two plugins with the same id, the first is used
     * @param startLimit how long a plugin in a folder may take to start
     * @param commands names that no command of a plugin may have
     */
    public static Plugins load(List<Path> folders, Duration startLimit, Set<String> commands) {
        return PluginLoader.load(List.copyOf(folders), startLimit, Set.copyOf(commands));
    }
}
