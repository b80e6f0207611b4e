package reseat.console.command;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import reseat.plan.Watch;
import reseat.text.TimeText;

/**
 * Watches a search: shows its progress on a terminal, and lets Ctrl-C stop the search instead of
 * the program, so that the best plan so far is still printed.
 */
final class Thinking implements Watch, AutoCloseable {

    /** How long the JVM may wait for us after Ctrl-C. */
    private static final long GRACE_S = 10;

    private final PrintWriter err;
    private final ProgressLine line;
    private final String awaited;
    private final CountDownLatch printed = new CountDownLatch(1);
    private final Thread atEnd;
    private volatile boolean stop;

    Thinking(PrintWriter err, boolean interactive) {
        this(err, new ProgressLine(err, interactive), "a plan");
    }

    /**
     * Starts watching.
     *
     * @param err where to report that there is no result
     * @param line where to show progress
     * @param awaited what will be printed at the end, in words
     */
    Thinking(PrintWriter err, ProgressLine line, String awaited) {
        this.err = err;
        this.line = line;
        this.awaited = awaited;
        this.atEnd = new Thread(this::interrupted, "reseat-interrupt");
        try {
            Runtime.getRuntime().addShutdownHook(atEnd);
        } catch (IllegalStateException e) {
            // a plugin tried to exit the process, which continues: there is nothing to register
            printed.countDown();
        }
    }

    private void interrupted() {
        stop = true;
        try {
            if (!printed.await(GRACE_S, TimeUnit.SECONDS)) {
                err.println("reseat: stopped before " + awaited + " could be printed.");
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
        String best = bestMs < 0 ? "no plan yet" : "best " + TimeText.of(bestMs);
        line.tell(
                "Looking: "
                        + best
                        + ", no plan below "
                        + TimeText.of(lowerBoundMs)
                        + ", "
                        + expansions
                        + " states; Ctrl-C stops it");
    }

    /** Clears the progress line. */
    void done() {
        line.wipe();
    }

    /** Releases Ctrl-C; call it when everything is printed and flushed. */
    @Override
    public void close() {
        done();
        printed.countDown();
        if (!stop) {
            try {
                Runtime.getRuntime().removeShutdownHook(atEnd);
            } catch (IllegalStateException e) {
                // the process is exiting, and the hook with it
                stop = true;
            }
        }
    }
}
