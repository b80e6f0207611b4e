package reseat.console.command;

/**
 * Fails a command with exit code 2. The message is printed unchanged, so it must be complete:
 * location, what was found, what was expected.
 */
public final class BadInput extends RuntimeException {

    /**
     * Creates an instance.
     *
     * @param message the lines that the user reads, never {@code null}
     */
    public BadInput(String message) {
        super(message);
    }
}
