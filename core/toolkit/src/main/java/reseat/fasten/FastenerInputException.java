package reseat.fasten;

import java.io.Serial;

/**
 * Thrown when something about a fastener is missing, unknown or impossible. The message is one
 * sentence for the user: the error, the known names, and the closest match.
 */
public final class FastenerInputException extends IllegalArgumentException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message the sentence
     */
    public FastenerInputException(String message) {
        super(message);
    }
}
