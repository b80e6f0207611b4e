package reseat.stock;

/** A stock cannot do what it was asked to; the message is for people. */
public class StockException extends Exception {

    private static final long serialVersionUID = 1L;

    private final Kind kind;

    /** Why a stock cannot do what it was asked to. */
    public enum Kind {
        /** There is not enough, or it is reserved. */
        SHORT,
        /** What is asked contradicts what was done before. */
        CONFLICT,
        /** There is no such line or reservation. */
        UNKNOWN,
        /** A setting or a file is wrong. */
        BAD_INPUT,
        /**
         * It cannot be reached, and it is not known whether the last wish was carried out: repeat
         * it with the same id.
         */
        UNREACHABLE
    }

    /**
     * Makes an exception.
     *
     * @param kind why
     * @param message what is wrong and what to do, for people
     */
    public StockException(Kind kind, String message) {
        super(message);
        this.kind = kind;
    }

    /** Makes an exception with what caused it. */
    public StockException(Kind kind, String message, Throwable cause) {
        super(message, cause);
        this.kind = kind;
    }

    /** Returns why. */
    public Kind kind() {
        return kind;
    }
}
