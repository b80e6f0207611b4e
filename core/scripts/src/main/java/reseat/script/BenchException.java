package reseat.script;

import java.io.Serial;

/** Reports that something on the bench failed; the message is for the user. */
public final class BenchException extends RuntimeException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Creates an exception.
     *
     * @param message the error and the remedy, as sentences
     */
    public BenchException(String message) {
        super(message);
    }

    /** Creates an exception with a cause. */
    public BenchException(String message, Throwable cause) {
        super(message, cause);
    }
}
