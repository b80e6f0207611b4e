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
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandException;
import reseat.spi.Plugin;
import reseat.spi.Plugins;

/**
 * The plugins of this process: those that ship, the shop's and the user's. They are loaded when a
 * command first needs them, once.
 */
public final class OurPlugins {

    private static @Nullable Plugins loaded;
    private static boolean told;
    private static final List<String> LATER = new ArrayList<>();

    private OurPlugins() {}

    /** Returns the plugins; the first time, one line says of each that was left out why. */
    public static synchronized Plugins get(PrintWriter err) {
        Plugins plugins = quietly();
        tell(err);
        return plugins;
    }

    /** Returns the plugins; what was left out is told when the command ends. */
    public static synchronized Plugins quietly() {
        Plugins plugins = loaded;
        if (plugins == null) {
            List<Path> folders = folders();
            if (!folders.isEmpty()) {
                Guard.PROGRAM.watch();
            }
            plugins =
                    GuardedPlugin.guard(
                            Plugins.load(folders, Plugins.START_LIMIT, BuiltInCommands.NAMES),
                            Guard.PROGRAM);
            loaded = plugins;
        }
        return plugins;
    }

    /** Tells what was left out, if plugins were loaded and it was not told yet. */
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

    /** Leaves a line for {@link #tell}. */
    public static synchronized void tellLater(String line) {
        LATER.add(line);
    }

    /** Returns the plugins for a command that tells itself what was left out. */
    public static synchronized Plugins untold() {
        told = true;
        return quietly();
    }

    /**
     * Runs code of a plugin; what it throws is told as the plugin's.
     *
     * @param of what it belongs to, one of the things that the plugin contributes
     * @param what it in words ("output html-sheet")
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
     * Runs a command of a plugin. What it says of the user's input is passed on; what else it
     * throws is told as the plugin's.
     *
     * @param command the command of the plugin
     * @param name its name, with that of the action in hand
     * @param code what runs
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
     * Asks a command of a plugin what it takes.
     *
     * @throws PluginFailed if it fails, or says what cannot be
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

    /** Returns the id of a plugin with its version and its place. */
    static String name(Plugins.Loaded each) {
        return each.plugin().info().id()
                + " "
                + each.plugin().info().version()
                + each.from().map(from -> " (" + from + ")").orElse("");
    }

    /** Returns the folders that plugins are looked for in. */
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
