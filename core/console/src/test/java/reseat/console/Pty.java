package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * A program at a pseudo-terminal, with us at the keys. Uses {@code script} of util-linux, so that a
 * real line discipline turns Ctrl-C into a signal.
 */
final class Pty implements AutoCloseable {

    static final char CTRL_C = 3;
    static final char CTRL_D = 4;
    static final char CTRL_R = 18;

    private static final long PATIENCE_S = 90;

    private final Process process;
    private final OutputStream keys;
    private final StringBuilder seen = new StringBuilder();
    private int taken;

    private Pty(Process process) {
        this.process = process;
        this.keys = process.getOutputStream();
        Thread reader = new Thread(this::read, "pty");
        reader.setDaemon(true);
        reader.start();
    }

    /** Tells whether this machine can give us a pseudo-terminal. */
    static boolean isThere() {
        if (!Files.isExecutable(Path.of("/usr/bin/script"))) {
            return false;
        }
        try {
            Process probe =
                    new ProcessBuilder("/usr/bin/script", "-qec", "test -t 0", "/dev/null")
                            .redirectErrorStream(true)
                            .start();
            probe.getOutputStream().close();
            return probe.waitFor(20, TimeUnit.SECONDS) && probe.exitValue() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Starts a command line of a shell on 100 columns and 40 lines. */
    static Pty start(Path folder, Map<String, String> env, String command) throws IOException {
        ProcessBuilder builder =
                new ProcessBuilder(
                                List.of(
                                        "/usr/bin/script",
                                        "-qfec",
                                        "stty cols 100 rows 40; exec " + command,
                                        "/dev/null"))
                        .directory(folder.toFile())
                        .redirectErrorStream(true);
        builder.environment().clear();
        builder.environment().put("PATH", "/usr/bin:/bin");
        builder.environment().put("TERM", "xterm");
        builder.environment().put("LANG", "C.UTF-8");
        builder.environment().put("SHELL", "/bin/sh");
        builder.environment().putAll(env);
        return new Pty(builder.start());
    }

    private void read() {
        byte[] buffer = new byte[8192];
        try (InputStream in = process.getInputStream()) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                synchronized (seen) {
                    seen.append(new String(buffer, 0, n, UTF_8));
                    seen.notifyAll();
                }
            }
        } catch (IOException e) {
            // it has ended
        }
    }

    /** Presses keys. */
    void type(String text) throws IOException {
        keys.write(text.getBytes(UTF_8));
        keys.flush();
    }

    void press(char key) throws IOException {
        type(String.valueOf(key));
    }

    /** Waits for a text on the screen, after the last one waited for; escapes count for nothing. */
    String await(String wanted) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        synchronized (seen) {
            while (true) {
                String screen = plain(seen.toString());
                int at = screen.indexOf(wanted, Math.min(taken, screen.length()));
                if (at >= 0) {
                    String passed = screen.substring(Math.min(taken, at), at);
                    taken = at + wanted.length();
                    return passed;
                }
                long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
                if (left <= 0) {
                    throw new AssertionError(
                            "waited in vain for \"" + wanted + "\" in:\n" + screen);
                }
                seen.wait(Math.min(left, 500));
            }
        }
    }

    /** Returns everything that came, escapes included. */
    String raw() {
        synchronized (seen) {
            return seen.toString();
        }
    }

    private static String plain(String text) {
        return text.replaceAll("\u001b\\[[0-9;?]*[ -/]*[@-~]", "")
                .replaceAll("\u001b[=>()][0-9A-Z]?", "")
                .replaceAll("\u001b\\][^\u0007]*\u0007", "");
    }

    /** Waits for the end and returns the exit code. */
    int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            throw new AssertionError("did not end:\n" + raw());
        }
        return process.exitValue();
    }

    @Override
    public void close() {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }
}
