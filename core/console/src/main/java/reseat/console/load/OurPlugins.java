package reseat.console.load;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import reseat.files.PluginFiles;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandException;
import reseat.spi.Plugin;
import reseat.spi.Plugins;

/**
 * The plugins of this process: those that ship, the shop's and the user's. They are loaded once,
 * when a command first needs them.
 */
public final class OurPlugins {

    private static @Nullable Plugins loaded;
    private static boolean told;
    private static final List<String> LATER = new ArrayList<>();

    private OurPlugins() {}

    /** Returns the plugins; the first call reports each one that was left out. */
    public static synchronized Plugins get(PrintWriter err) {
        Plugins plugins = quietly();
        tell(err);
        return plugins;
    }

    /** Returns the plugins; those left out are reported when the command ends. */
    public static synchronized Plugins quietly() {
        Plugins plugins = loaded;
        if (plugins == null) {
            List<Path> folders = folders();
            if (!folders.isEmpty()) {
                Guard.PROGRAM.watch();
            }
            plugins =
                    GuardedPlugin.guard(
                            PluginFiles.load(
                                    folders, PluginFiles.START_LIMIT, BuiltInCommands.NAMES),
                            Guard.PROGRAM);
            loaded = plugins;
        }
        return plugins;
    }

    /** Reports what was left out, if plugins were loaded and this was not reported yet. */
    public static synchronized void tell(PrintWriter err) {
        Plugins plugins = loaded;
        if (plugins != null && !told) {
            told = true;
            plugins.refused().forEach(refused -> err.println("reseat: left out: " + refused));
        }
        LATER.forEach(err::println);
        LATER.clear();
        err.flush();
    }

    /** Adds a line for {@link #tell}. */
    public static synchronized void tellLater(String line) {
        LATER.add(line);
    }

    /** Returns the plugins for a command that itself reports what was left out. */
    public static synchronized Plugins untold() {
        told = true;
        return quietly();
    }

    /**
     * Runs code of a plugin; exceptions are attributed to the plugin.
     *
     * @param of the contribution of the plugin that the code belongs to
     * @param what its description ("output html-sheet")
     */
    public static <T> T asked(Object of, String what, Guard.Code<T, IOException> code)
            throws IOException {
        String owner = owner(of);
        try {
            return Guard.PROGRAM.run("the plugin " + owner, code);
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            throw new PluginFailed(what, owner, e);
        }
    }

    /** Code of a command. */
    public interface Run {
        /** Runs it, and returns the exit code. */
        int run() throws IOException, BadInputException;
    }

    /**
     * Runs a command of a plugin. Errors in the user's input are passed on; other exceptions are
     * attributed to the plugin.
     *
     * @param command the command of the plugin
     * @param name its name, with that of the action
     * @param code the code to run
     */
    public static int ran(Command command, String name, Run code)
            throws IOException, BadInputException {
        try {
            return code.run();
        } catch (CommandException | PluginFailed | FileSystemException e) {
            throw e;
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof FileSystemException) {
                throw e;
            }
            throw new PluginFailed("command " + name, owner(command), e);
        } catch (IOException | RuntimeException | LinkageError | StackOverflowError e) {
            throw new PluginFailed("command " + name, owner(command), e);
        }
    }

    /**
     * Gets the options and parameters of a plugin's command.
     *
     * @throws PluginFailed if it fails, or its description is invalid
     */
    public static <T> T described(Command command, Supplier<T> code) {
        try {
            return code.get();
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            throw new PluginFailed("command " + command.name(), owner(command), e);
        }
    }

    private static String owner(Object of) {
        for (Plugins.Loaded each : quietly().loaded()) {
            Plugin plugin = each.plugin();
            if (plugin.families().contains(of)
                    || plugin.outputs().contains(of)
                    || plugin.assessments().contains(of)
                    || plugin.commands().contains(of)) {
                return name(each);
            }
        }
        return "that has it";
    }

    /** Returns the id of a plugin with its version and location. */
    static String name(Plugins.Loaded each) {
        return each.plugin().info().id()
                + " "
                + each.plugin().info().version()
                + each.from().map(from -> " (" + from + ")").orElse("");
    }

    /** Returns the folders that are searched for plugins. */
    public static List<Path> folders() {
        return folders(
                System.getenv(),
                System.getProperty("reseat.home", ""),
                PersonalFolders.here().data());
    }

    /**
     * Returns the folders of plugins: those that the shop names in {@code RESEAT_PLUGINS}, else the
     * folder plugins of the program, then the user's own.
     */
    static List<Path> folders(Map<String, String> env, String home, Path data) {
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
        addIfThere(folders, data.resolve("plugins"));
        return folders;
    }

    private static void addIfThere(List<Path> folders, Path folder) {
        if (Files.isDirectory(folder)) {
            folders.add(folder);
        }
    }
}
