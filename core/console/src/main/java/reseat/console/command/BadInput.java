package reseat.console.command;

/**
 * Ends a command with exit code 2. The message is printed as it is, so it is a whole one: place,
 * what was found, what was expected.
 */
public final class BadInput extends RuntimeException {

    /**
     * Makes one.
     *
     * @param message the lines that the user reads, never {@code null}
     */
    public BadInput(String message) {
        super(message);
    }
}
