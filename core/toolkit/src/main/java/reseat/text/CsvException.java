package reseat.text;

import java.io.Serial;

/** Says where a CSV text cannot be read any further, and why. */
public final class CsvException extends Exception {

    @Serial private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    CsvException(int line, int column, String message) {
        super(message);
        this.line = line;
        this.column = column;
    }

    /** Returns the line, from 1. */
    public int line() {
        return line;
    }

    /** Returns the column, from 1. */
    public int column() {
        return column;
    }

    /** Returns what is wrong; never null. */
    public String text() {
        return String.valueOf(getMessage());
    }
}
