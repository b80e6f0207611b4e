package reseat.console.prompt;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.terminal.Terminal.SignalHandler;

/**
 * Waits at a terminal while code runs; Ctrl-C stops it, and code that does not stop can be
 * abandoned.
 */
final class Waiting implements Talk.Runner {

    private static final long LOOK_MS = 50;
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(2);

    private final Terminal terminal;
    private final Console console;

    Waiting(Terminal terminal, Console console) {
        this.terminal = terminal;
        this.console = console;
    }

    @Override
    public Optional<Evaluation> run(Session session, Tongue tongue, String text) {
        AtomicInteger presses = new AtomicInteger();
        SignalHandler before =
                terminal.handle(
                        Signal.INT,
                        signal -> {
                            presses.incrementAndGet();
                            session.stop();
                        });
        try {
            return await(session.evaluate(tongue, text), presses);
        } finally {
            terminal.handle(Signal.INT, before);
            Thread.interrupted();
        }
    }

    private Optional<Evaluation> await(
            CompletableFuture<Evaluation> running, AtomicInteger presses) {
        long firstPress = 0;
        int asked = 0;
        while (true) {
            try {
                return Optional.of(running.get(LOOK_MS, TimeUnit.MILLISECONDS));
            } catch (TimeoutException e) {
                // poll the keyboard
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                presses.incrementAndGet();
                console.session().stop();
            }
            int pressed = presses.get();
            if (pressed > 0 && firstPress == 0) {
                firstPress = System.nanoTime();
            }
            boolean late = pressed > 0 && System.nanoTime() - firstPress > PATIENCE_NANOS;
            boolean again = pressed > asked + 1;
            if (again || (late && asked == 0)) {
                asked = Math.max(1, pressed);
                if (givesUp(running)) {
                    return Optional.empty();
                }
                presses.set(asked);
            }
        }
    }

    /** Asks whether to abandon the session; the question ends when the code does. */
    private boolean givesUp(CompletableFuture<Evaluation> running) {
        terminal.writer()
                .print(
                        "\nIt does not stop: Java code that ignores interrupts. Abandon this"
                                + " session?"
                                + "\nIts variables are lost; its input stays in the history."
                                + " [y/n] ");
        terminal.writer().flush();
        Attributes before = terminal.enterRawMode();
        try {
            while (!running.isDone()) {
                int key = terminal.reader().read(LOOK_MS);
                if (key == 'y' || key == 'Y') {
                    terminal.writer().println("y");
                    return true;
                }
                if (key == 'n' || key == 'N') {
                    terminal.writer().println("n");
                    return false;
                }
            }
        } catch (IOException e) {
            return true;
        } finally {
            terminal.setAttributes(before);
            terminal.writer().flush();
        }
        terminal.writer().println();
        return false;
    }
}
