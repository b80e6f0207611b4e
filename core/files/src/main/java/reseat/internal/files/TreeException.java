package reseat.internal.files;

import java.io.Serial;
import reseat.model.Origin;

/**
 * Thrown where a text cannot be made a tree, so that reading on would only produce noise. Never
 * leaves this package.
 */
final class TreeException extends Exception {

    @Serial private static final long serialVersionUID = 1L;

    private final transient Origin at;

    TreeException(Origin at, String message) {
        super(message);
        this.at = at;
    }

    Origin at() {
        return at;
    }

    /** Returns the message; never null. */
    String text() {
        return String.valueOf(getMessage());
    }
}
