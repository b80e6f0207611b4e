package reseat.spi;

import java.io.Serial;

/**
 * Ends a command with exit code 2, because of invalid user input. The message is printed as it is,
 * so it must be complete: what was found, where, what was expected. A message about an option
 * begins with {@code reseat: } and the option.
 */
public final class CommandException extends RuntimeException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message the lines to print
     */
    public CommandException(String message) {
        super(message);
    }
}
