package reseat.console.command;

import java.io.PrintWriter;
import java.util.Locale;

/** One line that tells a person who waits how it goes; each takes the place of the one before. */
final class ProgressLine {

    /** Who waits for less than this is told nothing. */
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

    /** Wipes the line. */
    void wipe() {
        if (told) {
            err.print("\r" + " ".repeat(78) + "\r");
            err.flush();
            told = false;
        }
    }
}
