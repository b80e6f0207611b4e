package reseat.internal.order;

import java.io.IOException;

/** Says what is wrong with a file of a problem, and in which line. */
public final class SopFormatException extends IOException {

    private static final long serialVersionUID = 1;

    private final String file;
    private final int line;

    SopFormatException(String file, int line, String what) {
        super(file + ":" + line + ": " + what);
        this.file = file;
        this.line = line;
    }

    /**
     * Returns the name of the file as it was given.
     *
     * @return the name
     */
    public String file() {
        return file;
    }

    /**
     * Returns where the fault was seen.
     *
     * @return a line, counted from 1
     */
    public int line() {
        return line;
    }
}
