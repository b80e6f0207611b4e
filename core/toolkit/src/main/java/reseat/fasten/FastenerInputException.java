package reseat.fasten;

import java.io.Serial;
import reseat.model.Origin;
import reseat.model.Problem;

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

    /**
     * Returns this as a problem with a location.
     *
     * @param at location of the input
     */
    public Problem toProblem(Origin at) {
        return Problem.error(at, String.valueOf(getMessage()));
    }
}
