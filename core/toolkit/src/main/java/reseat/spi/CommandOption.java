package reseat.spi;

import java.util.List;
import java.util.Optional;

/**
 * Something that a command takes: an option, whose name begins with {@code --}, or a parameter,
 * which is known by its place. A parameter that may be left out, or given several times, comes
 * after all others.
 *
 * @param name {@code --length}, or {@code FILE} for a parameter
 * @param kind what its value is
 * @param label what stands for the value in help texts, such as {@code MM}; the name of a parameter
 * @param meaning what it means, as a sentence
 * @param required whether it must be given
 * @param repeatable whether it may be given several times; ids, parts and joints then also as one
 *     list separated by commas
 * @param choices the values to choose from; empty unless it is a {@link Kind#CHOICE}
 * @param usual the value where none is given; help texts name it
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

    /** What a value is; it decides what is refused and what shells offer. */
    public enum Kind {
        /** No value: the option is given or not. */
        FLAG,
        /** Any words. */
        TEXT,
        /** An id of something that is neither part nor joint. */
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
                    "an option is called --in-lower-case, a parameter IN-CAPITALS: " + name);
        }
        if (meaning.isBlank() || (label.isBlank() && kind != Kind.FLAG)) {
            throw new IllegalArgumentException(name + ": an option has a label and a meaning");
        }
        if ((kind == Kind.CHOICE) == choices.isEmpty()) {
            throw new IllegalArgumentException(name + ": choices, and they alone, have choices");
        }
        if (kind == Kind.FLAG && (required || repeatable || !name.startsWith("-"))) {
            throw new IllegalArgumentException(name + ": a flag is an option, given or not");
        }
        if (usual.isPresent() && (required || repeatable || kind == Kind.FLAG)) {
            throw new IllegalArgumentException(name + ": nothing is usual for it");
        }
    }

    /** Returns an option that is given or not. */
    public static CommandOption flag(String name, String meaning) {
        return new CommandOption(
                name, Kind.FLAG, "", meaning, false, false, List.of(), Optional.empty());
    }

    /** Returns an option with a value, which may be left out. */
    public static CommandOption option(String name, Kind kind, String label, String meaning) {
        return new CommandOption(
                name, kind, label, meaning, false, false, List.of(), Optional.empty());
    }

    /** Returns an option whose value is one of some; it may be left out. */
    public static CommandOption choice(
            String name, String label, String meaning, List<String> choices) {
        return new CommandOption(
                name, Kind.CHOICE, label, meaning, false, false, choices, Optional.empty());
    }

    /** Returns a parameter, which must be given. */
    public static CommandOption parameter(String name, Kind kind, String meaning) {
        return new CommandOption(
                name, kind, name, meaning, true, false, List.of(), Optional.empty());
    }

    /** Returns the same, which must be given. */
    public CommandOption asRequired() {
        return new CommandOption(name, kind, label, meaning, true, repeatable, choices, usual);
    }

    /** Returns the same, which may be left out. */
    public CommandOption asOptional() {
        return new CommandOption(name, kind, label, meaning, false, repeatable, choices, usual);
    }

    /** Returns the same, which may be given several times. */
    public CommandOption asRepeatable() {
        return new CommandOption(name, kind, label, meaning, required, true, choices, usual);
    }

    /** Returns the same with a value where none is given. */
    public CommandOption orElse(String value) {
        return new CommandOption(
                name, kind, label, meaning, required, repeatable, choices, Optional.of(value));
    }

    /** Tells whether it is known by its place and not by its name. */
    public boolean isParameter() {
        return !name.startsWith("-");
    }

    /** Tells whether several values may be given at once, separated by commas. */
    public boolean isListed() {
        return repeatable && (kind == Kind.ID || kind == Kind.PART || kind == Kind.JOINT);
    }
}
