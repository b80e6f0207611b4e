package reseat.fasten;

import java.io.Serial;

/**
 * Thrown when something about a fastener is missing, unknown or impossible. The message is one
 * sentence for the user: what is wrong, what is known, and the nearest right name.
 */
public final class FastenerInputException extends IllegalArgumentException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Makes one.
     *
     * @param message the sentence
     */
    public FastenerInputException(String message) {
        super(message);
    }
}
