package reseat.console.command;

import java.io.PrintWriter;
import java.util.Locale;

/** A progress line on a terminal; each update replaces the one before. */
final class ProgressLine {

    /** Shorter waits show no progress. */
    private static final long QUIET_NANOS = 700_000_000L;

    private final PrintWriter err;
    private final boolean tells;
    private final long started = System.nanoTime();
    private boolean told;

    ProgressLine(PrintWriter err, boolean interactive) {
        this.err = err;
        this.tells = interactive;
    }

    void tell(String line) {
        if (!tells || System.nanoTime() - started < QUIET_NANOS) {
            return;
        }
        told = true;
        err.print(String.format(Locale.ROOT, "\r%-78.78s", line));
        err.flush();
    }

    /** Clears the line. */
    void wipe() {
        if (told) {
            err.print("\r" + " ".repeat(78) + "\r");
            err.flush();
            told = false;
        }
    }
}
