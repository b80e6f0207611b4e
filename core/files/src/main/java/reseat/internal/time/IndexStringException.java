package reseat.internal.time;

import java.io.Serial;

/**
 * Thrown when a text is not a Basic MOST index string. The message names the token and what was
 * expected.
 */
public final class IndexStringException extends IllegalArgumentException {

    @Serial private static final long serialVersionUID = 1L;

    private final String token;
    private final int position;

    IndexStringException(String token, int position, String message) {
        super(message);
        this.token = token;
        this.position = position;
    }

    /** Returns the token that does not fit; empty if the string ends too early. */
    public String token() {
        return token;
    }

    /** Returns the position of the token in the text, from 1. */
    public int position() {
        return position;
    }
}
