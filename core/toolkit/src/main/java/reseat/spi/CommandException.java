package reseat.spi;

import java.io.Serial;

/**
 * Ends a command with exit code 2, because what the user gave cannot be used. The message is
 * printed as it is, so it is a whole one: what was found, where, what was expected. A message about
 * an option begins with {@code reseat: } and the option.
 */
public final class CommandException extends RuntimeException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Makes one.
     *
     * @param message the lines that the user reads
     */
    public CommandException(String message) {
        super(message);
    }
}
