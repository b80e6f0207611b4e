package reseat.internal.files;

import java.io.Serial;
import reseat.model.Origin;

/**
 * Thrown when a text cannot be parsed into a tree, so that continuing would only produce follow-up
 * errors. Never leaves this package.
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
