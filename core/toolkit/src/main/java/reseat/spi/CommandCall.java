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
 * One call of a command: what the user gave, and what the command may use. It is valid until the
 * command returns, and belongs to its thread.
 */
public interface CommandCall {

    /**
     * Returns the values of an option or parameter, in the order given; of one that was not given
     * the usual value, else nothing.
     *
     * @param name its name, as in {@link CommandOption}
     * @throws IllegalArgumentException if the command takes no such option
     */
    List<String> values(String name);

    /** Returns the first value; see {@link #values}. */
    default Optional<String> value(String name) {
        return values(name).stream().findFirst();
    }

    /** Tells whether an option was given, or has a usual value. */
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

    /** Returns what is piped into the command. */
    InputStream in();

    /** Returns where the answer goes. */
    PrintWriter out();

    /** Returns where warnings go, and what else is not part of the answer. */
    PrintWriter err();

    /** Prints a line of the answer: broken between words on a terminal, whole in a file or pipe. */
    void line(String text);

    /** Returns how many columns a line may fill. */
    int width();

    /** Tells whether colour may be used. */
    boolean colour();

    /** Tells whether a person watches. */
    boolean interactive();

    /** Returns the plugins of this process. */
    Plugins plugins();

    /**
     * Reads a device with all families. Warnings are printed to {@link #err}.
     *
     * @param file the device file
     * @param variant the variant; empty for the base device
     * @param costTable id of the cost table to plan with; empty for the usual times
     * @throws CommandException with all errors of the file, each with its place, if it has any; or
     *     if there is no such cost table
     */
    Device device(Path file, Optional<String> variant, Optional<String> costTable);

    /**
     * Returns the fastener tables: the standard rows, those of all families and those of the shop.
     *
     * @param rows files with rows of the shop's own
     * @throws CommandException if a row cannot be used
     */
    FastenerTables tables(List<Path> rows);

    /** Returns who makes plans; each of them has been judged by the simulator. */
    Plans plans();

    /**
     * Returns what watches a search: it tells a person how the search goes, and cancels it on
     * Ctrl-C. From the first use of this method or of {@link #cancelled} on, Ctrl-C no longer ends
     * the process at once: the command has ten seconds to print what it has.
     */
    Watch watch();

    /** Tells whether the user wants the command to end; see {@link #watch}. */
    default boolean cancelled() {
        return watch().cancelled();
    }

    /** Tells a person how far the command is, in one line that the next one replaces. */
    void progress(String line);
}
