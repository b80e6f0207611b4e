package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;

/** Captures output up to a limit, drops the rest, and records that it did. */
final class Printed extends OutputStream {

    private final int most;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private boolean more;

    Printed(int most) {
        this.most = most;
    }

    @Override
    public synchronized void write(int b) {
        if (kept.size() < most) {
            kept.write(b);
        } else {
            more = true;
        }
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) {
        int fits = Math.min(length, most - kept.size());
        kept.write(bytes, from, fits);
        more |= fits < length;
    }

    /** Returns whether something was dropped since the last call of {@link #take}. */
    synchronized boolean isMore() {
        return more;
    }

    /** Returns the captured output and starts over. */
    synchronized String take() {
        String text = kept.toString(UTF_8);
        kept.reset();
        more = false;
        return text;
    }
}
