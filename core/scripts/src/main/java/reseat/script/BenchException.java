package reseat.script;

import java.io.Serial;

/** Something on the bench cannot be done; the message is for the person who typed it. */
public final class BenchException extends RuntimeException {

    @Serial private static final long serialVersionUID = 1L;

    /**
     * Makes an exception.
     *
     * @param message what is wrong and what to do, as sentences
     */
    public BenchException(String message) {
        super(message);
    }

    /** Makes an exception with what caused it. */
    public BenchException(String message, Throwable cause) {
        super(message, cause);
    }
}
