package reseat.spi;

import java.util.List;
import java.util.Optional;

/**
 * An option, whose name begins with {@code --}, or a positional parameter of a command. A parameter
 * that is optional or repeatable must come after all others.
 *
 * @param name {@code --length}, or {@code FILE} for a parameter
 * @param kind the kind of its value
 * @param label the placeholder of the value in help texts, such as {@code MM}; the name of a
 *     parameter
 * @param meaning what it means, as a sentence
 * @param required whether it must be given
 * @param repeatable whether it may be given several times; ids, parts and joints then also as one
 *     comma-separated list
 * @param choices the values to choose from; empty unless it is a {@link Kind#CHOICE}
 * @param usual the default value; shown in help texts
 */
public record CommandOption(
        String name,
        Kind kind,
        String label,
        String meaning,
        boolean required,
        boolean repeatable,
        List<String> choices,
        Optional<String> usual) {

    private static final String OPTION = "--[a-z][a-z0-9]*(-[a-z0-9]+)*";
    private static final String PARAMETER = "[A-Z][A-Z0-9]*(-[A-Z0-9]+)*";

    /** The kind of a value; it determines validation and shell completion. */
    public enum Kind {
        /** No value: the option is given or not. */
        FLAG,
        /** Any text. */
        TEXT,
        /** The id of something other than a part or joint. */
        ID,
        /** A whole number. */
        WHOLE,
        /** A number. */
        NUMBER,
        /** One of the choices. */
        CHOICE,
        /** The path of a file. */
        FILE,
        /** The path of a folder. */
        FOLDER,
        /** The path of a device file. */
        DEVICE,
        /** The id of a part. */
        PART,
        /** The id of a joint. */
        JOINT
    }

    public CommandOption {
        choices = List.copyOf(choices);
        if (!name.matches(name.startsWith("-") ? OPTION : PARAMETER)) {
            throw new IllegalArgumentException(
                    "an option must be named --in-lower-case, a parameter IN-CAPITALS: " + name);
        }
        if (meaning.isBlank() || (label.isBlank() && kind != Kind.FLAG)) {
            throw new IllegalArgumentException(
                    name + ": an option must have a label and a meaning");
        }
        if ((kind == Kind.CHOICE) == choices.isEmpty()) {
            throw new IllegalArgumentException(
                    name + ": a CHOICE, and nothing else, must list its choices");
        }
        if (kind == Kind.FLAG && (required || repeatable || !name.startsWith("-"))) {
            throw new IllegalArgumentException(
                    name + ": a flag must be an optional, non-repeatable option");
        }
        if (usual.isPresent() && (required || repeatable || kind == Kind.FLAG)) {
            throw new IllegalArgumentException(
                    name + ": no default is allowed for a required, repeatable or flag option");
        }
    }

    /** Returns a flag. */
    public static CommandOption flag(String name, String meaning) {
        return new CommandOption(
                name, Kind.FLAG, "", meaning, false, false, List.of(), Optional.empty());
    }

    /** Returns an optional option with a value. */
    public static CommandOption option(String name, Kind kind, String label, String meaning) {
        return new CommandOption(
                name, kind, label, meaning, false, false, List.of(), Optional.empty());
    }

    /** Returns an optional option with a choice of values. */
    public static CommandOption choice(
            String name, String label, String meaning, List<String> choices) {
        return new CommandOption(
                name, Kind.CHOICE, label, meaning, false, false, choices, Optional.empty());
    }

    /** Returns a required parameter. */
    public static CommandOption parameter(String name, Kind kind, String meaning) {
        return new CommandOption(
                name, kind, name, meaning, true, false, List.of(), Optional.empty());
    }

    /** Returns the same, required. */
    public CommandOption asRequired() {
        return new CommandOption(name, kind, label, meaning, true, repeatable, choices, usual);
    }

    /** Returns the same, optional. */
    public CommandOption asOptional() {
        return new CommandOption(name, kind, label, meaning, false, repeatable, choices, usual);
    }

    /** Returns the same, repeatable. */
    public CommandOption asRepeatable() {
        return new CommandOption(name, kind, label, meaning, required, true, choices, usual);
    }

    /** Returns the same with a default value. */
    public CommandOption orElse(String value) {
        return new CommandOption(
                name, kind, label, meaning, required, repeatable, choices, Optional.of(value));
    }

    /** Returns whether it is a positional parameter. */
    public boolean isParameter() {
        return !name.startsWith("-");
    }

    /** Returns whether several values may be given at once, separated by commas. */
    public boolean isListed() {
        return repeatable && (kind == Kind.ID || kind == Kind.PART || kind == Kind.JOINT);
    }
}
