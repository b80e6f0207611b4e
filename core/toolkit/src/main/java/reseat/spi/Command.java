package reseat.spi;

import java.io.IOException;
import java.util.List;
import reseat.model.BadInputException;

/**
 * A command of {@code reseat} that a plugin adds. To users it is a command like any other: {@code
 * reseat --help} lists it, {@code reseat NAME --help} explains it, shells complete it, and invalid
 * arguments are rejected before it runs.
 *
 * <p>A command runs once, in one thread. It prints only to the writers of the {@link CommandCall}.
 */
public interface Command {

    /** Exit code: success. */
    int FINE = 0;

    /** Exit code: the command succeeded, and its result needs action. */
    int FINDINGS = 1;

    /** Exit code: invalid user input. */
    int BAD_INPUT = 2;

    /** Exit code: the command failed, not because of user input. */
    int FAILED = 3;

    /**
     * Returns its name: lower case letters and digits with hyphens, unique among the commands of
     * Reseat. It is called at each start, {@link #info} only for this command and for help, so the
     * constructor must do no work.
     */
    String name();

    /** Returns its description and its options. */
    CommandInfo info();

    /**
     * Returns its subcommands, such as {@code list} in {@code reseat stock list}; empty if it has
     * none. A command with subcommands has no options and is never run itself.
     */
    default List<Command> actions() {
        return List.of();
    }

    /**
     * Runs the command. The arguments have been validated: required ones are present, numbers are
     * numbers, choices are among those offered.
     *
     * @param call the arguments and the environment of the command
     * @return {@link #FINE}, {@link #FINDINGS}, {@link #BAD_INPUT} or {@link #FAILED}
     * @throws CommandException if the user input is invalid: code 2
     * @throws BadInputException if a file cannot be used: code 2
     * @throws IOException if a file is missing or access is denied: code 2; any other kind is a
     *     failure of the command: code 3
     */
    int run(CommandCall call) throws IOException, BadInputException;
}
