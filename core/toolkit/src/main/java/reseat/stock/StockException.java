package reseat.stock;

/** Thrown when a stock cannot do what was requested; the message is for users. */
public class StockException extends Exception {

    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** Why a stock cannot do what was requested. */
    public enum Kind {
        /** There is not enough, or it is reserved. */
        SHORT,
        /** The request contradicts an earlier one. */
        CONFLICT,
        /** There is no such line or reservation. */
        UNKNOWN,
        /** A setting or a file is wrong. */
        BAD_INPUT,
        /**
         * It cannot be reached, and it is unknown whether the last request was carried out: repeat
         * it with the same id.
         */
        UNREACHABLE
    }

    /**
     * Creates an exception.
     *
     * @param kind why
     * @param message the error and what to do, for users
     */
    public StockException(Kind kind, String message) {
        super(message);
        this.kind = kind;
    }

    /** Creates an exception with a cause. */
    public StockException(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    /** Returns why. */
    public Kind kind() {
        return kind;
    }
}
