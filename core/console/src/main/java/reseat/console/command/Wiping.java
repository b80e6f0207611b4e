package reseat.console.command;

import java.io.PrintWriter;
import java.io.Writer;

/** A writer that first clears the progress line, which would otherwise break up the text. */
final class Wiping extends Writer {

    private final PrintWriter to;
    private final ProgressLine progress;

    Wiping(PrintWriter to, ProgressLine progress) {
        this.to = to;
        this.progress = progress;
    }

    @Override
    public void write(char[] text, int from, int length) {
        progress.wipe();
        to.write(text, from, length);
    }

    @Override
    public void flush() {
        to.flush();
    }

    @Override
    public void close() {
        to.flush();
    }
}
