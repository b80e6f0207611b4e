package reseat.console.command;

import java.io.PrintWriter;
import java.util.Locale;
import reseat.console.check.CheckWatch;

/** Shows the progress of a run of checks. */
final class Following implements CheckWatch {

    private static final long EVERY_NANOS = 200_000_000L;

    private final PrintWriter err;
    private final boolean tells;
    private long last = System.nanoTime();
    private boolean told;

    Following(PrintWriter err, boolean interactive) {
        this.err = err;
        this.tells = interactive;
    }

    @Override
    public void progress(int done, int of, String name) {
        if (!tells || System.nanoTime() - last < EVERY_NANOS) {
            return;
        }
        last = System.nanoTime();
        told = true;
        err.print(
                String.format(
                        Locale.ROOT, "\r%-78.78s", "Checked " + done + " of " + of + ": " + name));
        err.flush();
    }

    /** Clears the progress line. */
    void done() {
        if (told) {
            err.print("\r" + " ".repeat(78) + "\r");
            err.flush();
            told = false;
        }
    }
}
