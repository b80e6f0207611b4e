package reseat.spi;

import java.util.ArrayList;
import java.util.List;

/**
 * The description and options of a command, from which its help is generated.
 *
 * @param description what it does, one sentence or line each; the first one is used in lists of
 *     commands
 * @param usage command line, without {@code reseat}, such as {@code trays FILE [OPTIONS]}; empty if
 *     the lines are to be generated from the options
 * @param options its options; parameters in the order in which users give them
 * @param examples complete calls that work, each beginning with {@code reseat}
 * @param notes further notes for the user, one line each
 */
public record CommandInfo(
        List<String> description,
        List<String> usage,
        List<CommandOption> options,
        List<String> examples,
        List<String> notes) {

    public CommandInfo {
        description = List.copyOf(description);
        usage = List.copyOf(usage);
        options = List.copyOf(options);
        examples = List.copyOf(examples);
        notes = List.copyOf(notes);
        if (description.isEmpty() || description.get(0).isBlank()) {
            throw new IllegalArgumentException("a command must have a description");
        }
    }

    /** Returns the description of a command without options. */
    public static CommandInfo of(String... description) {
        return new CommandInfo(List.of(description), List.of(), List.of(), List.of(), List.of());
    }

    /** Returns the same with usage lines. */
    public CommandInfo calledAs(String... calls) {
        return new CommandInfo(description, List.of(calls), options, examples, notes);
    }

    /** Returns the same with further options and parameters. */
    public CommandInfo taking(CommandOption... further) {
        return taking(List.of(further));
    }

    /** Returns the same with further options and parameters. */
    public CommandInfo taking(List<CommandOption> further) {
        List<CommandOption> all = new ArrayList<>(options);
        all.addAll(further);
        return new CommandInfo(description, usage, all, examples, notes);
    }

    /** Returns the same with examples. */
    public CommandInfo withExamples(String... calls) {
        return new CommandInfo(description, usage, options, List.of(calls), notes);
    }

    /** Returns the same with notes. */
    public CommandInfo withNotes(String... lines) {
        return new CommandInfo(description, usage, options, examples, List.of(lines));
    }
}
