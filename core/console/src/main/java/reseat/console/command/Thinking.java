package reseat.console.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import reseat.plan.Watch;
import reseat.text.TimeText;

/**
 * Watches a search for the person who waits: tells how it goes on a terminal, and lets Ctrl-C end
 * the search, not the program, so that the best plan so far is still printed.
 */
final class Thinking implements Watch, AutoCloseable {

    /** How long Java may wait for us after Ctrl-C. */
    private static final long GRACE_S = 10;

    private static final long QUIET_NANOS = 700_000_000L;

    private final PrintWriter err;
    private final boolean tells;
    private final long started = System.nanoTime();
    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread atEnd;
    private volatile boolean stop;
    private boolean told;

    Thinking(PrintWriter err, boolean interactive) {
        this.err = err;
        this.tells = interactive;
        this.atEnd = new Thread(this::interrupted, "reseat-interrupt");
        Runtime.getRuntime().addShutdownHook(atEnd);
    }

    private void interrupted() {
        stop = true;
        try {
            if (!printed.await(GRACE_S, TimeUnit.SECONDS)) {
                err.println("reseat: stopped before a plan could be printed.");
                err.flush();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean cancelled() {
        return stop;
    }

    @Override
    public void progress(long expansions, long bestMs, long lowerBoundMs) {
        if (!tells || System.nanoTime() - started < QUIET_NANOS) {
            return;
        }
        told = true;
        String best = bestMs < 0 ? "no plan yet" : "best " + TimeText.of(bestMs);
        err.print(
                String.format(
                        Locale.ROOT,
                        "\r%-78.78s",
                        "Looking: "
                                + best
                                + ", no plan below "
                                + TimeText.of(lowerBoundMs)
                                + ", "
                                + expansions
                                + " states; Ctrl-C ends it"));
        err.flush();
    }

    /** Wipes the line of progress. */
    void done() {
        if (told) {
            err.print("\r" + " ".repeat(78) + "\r");
            err.flush();
            told = false;
        }
    }

    /** Lets go of Ctrl-C; call it when everything is printed and flushed. */
    @Override
    public void close() {
        done();
        printed.countDown();
        if (!stop) {
            try {
                Runtime.getRuntime().removeShutdownHook(atEnd);
            } catch (IllegalStateException e) {
                // the process is ending, and the hook with it
                stop = true;
            }
        }
    }
}
