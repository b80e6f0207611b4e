package reseat.spi;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.FastenerTables;
import reseat.model.Device;
import reseat.plan.Plans;
import reseat.plan.Watch;

/**
 * One call of a command: the arguments and the environment of the command. It is valid until the
 * command returns, and belongs to its thread.
 */
public interface CommandCall {

    /**
     * Returns the values of an option or parameter, in the order given; if none was given, the
     * default, else nothing.
     *
     * @param name its name, as in {@link CommandOption}
     * @throws IllegalArgumentException if the command has no such option
     */
    List<String> values(String name);

    /** Returns the first value; see {@link #values}. */
    default Optional<String> value(String name) {
        return values(name).stream().findFirst();
    }

    /** Returns whether an option was given, or has a default. */
    default boolean has(String name) {
        return !values(name).isEmpty();
    }

    /** Returns the value of an option that takes a number. */
    default OptionalDouble number(String name) {
        return values(name).stream().mapToDouble(Double::parseDouble).findFirst();
    }

    /**
     * Returns the path that an option or parameter names.
     *
     * @throws IllegalArgumentException if there is none
     */
    default Path path(String name) {
        return Path.of(
                value(name).orElseThrow(() -> new IllegalArgumentException(name + " is missing")));
    }

    /** Returns the paths that an option or parameter names. */
    default List<Path> paths(String name) {
        return values(name).stream().map(Path::of).toList();
    }

    /** Returns the standard input. */
    InputStream in();

    /** Returns the writer for the output. */
    PrintWriter out();

    /** Returns the writer for warnings and for everything that is not part of the output. */
    PrintWriter err();

    /**
     * Prints a line of output: wrapped between words on a terminal, unwrapped in a file or pipe.
     */
    void line(String text);

    /** Returns the line width in columns. */
    int width();

    /** Returns whether colour may be used. */
    boolean colour();

    /** Returns whether the output goes to a person. */
    boolean interactive();

    /** Returns the plugins of this process. */
    Plugins plugins();

    /**
     * Reads a device with all families. Warnings are printed to {@link #err}.
     *
     * @param file the device file
     * @param variant the variant; empty for the base device
     * @param costTable id of the cost table to plan with; empty for the default times
     * @throws CommandException with all errors of the file, each with its location, if there are
     *     any; or if there is no such cost table
     */
    Device device(Path file, Optional<String> variant, Optional<String> costTable);

    /**
     * Returns the fastener tables: the standard rows, those of all families and those of the shop.
     *
     * @param rows files with rows of the shop's own
     * @throws CommandException if a row cannot be used
     */
    FastenerTables tables(List<Path> rows);

    /** Returns the planner; each of its plans has been verified by the simulator. */
    Plans plans();

    /**
     * Returns the monitor of a search: it reports progress to the user, and cancels the search on
     * Ctrl-C. From the first use of this method or of {@link #cancelled} on, Ctrl-C no longer ends
     * the process at once: the command has ten seconds to print its results so far.
     */
    Watch watch();

    /** Returns whether the user wants the command to end; see {@link #watch}. */
    default boolean cancelled() {
        return watch().cancelled();
    }

    /** Reports progress to the user, in one line that the next one replaces. */
    void progress(String line);
}
