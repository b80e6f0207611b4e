package reseat.spi;

import java.io.IOException;
import java.util.List;
import reseat.model.BadInputException;

/**
 * A command of {@code reseat} that a plugin adds. To users it is a command like any other: {@code
 * reseat --help} lists it, {@code reseat NAME --help} explains it, shells complete it, and wrong
 * words are refused before it runs.
 *
 * <p>A command runs once, in one thread. It prints to what the {@link CommandCall} hands it, and to
 * nothing else.
 */
public interface Command {

    /** Exit code: all is well. */
    int FINE = 0;

    /** Exit code: the command did its work, and the answer is one to act on. */
    int FINDINGS = 1;

    /** Exit code: what the user gave cannot be used. */
    int BAD_INPUT = 2;

    /** Exit code: the command could not do its work, and the user is not to blame. */
    int FAILED = 3;

    /**
     * Returns what it is called: lower case letters and digits with hyphens, unlike any other
     * command of Reseat. It is asked at each start, {@link #info} only for this command and for
     * help; so the constructor must do no work.
     */
    String name();

    /** Returns what it does and what it takes. */
    CommandInfo info();

    /**
     * Returns the commands that it is made of, such as {@code list} in {@code reseat stock list};
     * empty if it is run itself. A command with actions takes nothing else and is never run.
     */
    default List<Command> actions() {
        return List.of();
    }

    /**
     * Runs. The words that the user gave have been looked through by then: what is required is
     * there, numbers are numbers, choices are among those offered.
     *
     * @param call what the user gave, and what the command may use
     * @return {@link #FINE}, {@link #FINDINGS}, {@link #BAD_INPUT} or {@link #FAILED}
     * @throws CommandException if what the user gave cannot be used: code 2
     * @throws BadInputException if a file cannot be used: code 2
     * @throws IOException if a file is missing or closed to the user: code 2; of any other kind it
     *     is a failure of the command: code 3
     */
    int run(CommandCall call) throws IOException, BadInputException;
}
