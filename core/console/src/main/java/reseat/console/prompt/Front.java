package reseat.console.prompt;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jline.terminal.Size;
import org.jline.terminal.Sized;
import org.jline.terminal.Terminal.SignalHandler;
import org.jline.terminal.TerminalBuilder;
import reseat.console.load.PersonalFolders;
import reseat.console.sheet.Terminal;

/** Opens the console in the mode that suits its input. */
public final class Front {

    private final Tongue tongue;
    private final boolean startUp;
    private final Terminal terminal;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Places places = Places.of(PersonalFolders.here());

    /**
     * Prepares the console.
     *
     * @param tongue the initial language
     * @param startUp whether to run the start-up files
     * @param terminal the terminal that output is formatted for
     * @param out gets output if there is no terminal
     * @param err gets error messages if there is no terminal
     */
    public Front(
            Tongue tongue, boolean startUp, Terminal terminal, PrintWriter out, PrintWriter err) {
        this.tongue = tongue;
        this.startUp = startUp;
        this.terminal = terminal;
        this.out = out;
        this.err = err;
    }

    /** Runs one text and returns the exit code. */
    public int run(String code) {
        try (Console console = open()) {
            Piped piped = piped(console);
            return piped.take("-e", code);
        } finally {
            out.flush();
        }
    }

    /** Runs interactively or reads a pipe, and returns the exit code. */
    public int run() throws IOException {
        if (terminal.interactive()) {
            return talk();
        }
        try (Console console = open()) {
            BufferedReader in = new BufferedReader(new InputStreamReader(System.in, UTF_8));
            return piped(console).takeAll("input", in);
        } finally {
            out.flush();
        }
    }

    private int talk() throws IOException {
        // the prompt first, the engines in the background
        try (org.jline.terminal.Terminal screen =
                        TerminalBuilder.builder()
                                .system(true)
                                .encoding(UTF_8)
                                .nativeSignals(true)
                                .graphemeCluster(false)
                                .signalHandler(SignalHandler.SIG_IGN)
                                .build();
                Console console =
                        new Console(Path.of(""), places, terminal, tongue, screen.output())) {
            if (screen.getColumns() == 0 || screen.getRows() == 0) {
                // a terminal in a container may report size 0: nothing would be visible
                screen.setSize((Sized) Size.of(80, 24));
            }
            new Prompt(console, screen, tongue).run(startUp);
        }
        return 0;
    }

    private Console open() {
        return new Console(Path.of(""), places, terminal, tongue, new Through(out));
    }

    private Piped piped(Console console) {
        Piped piped = new Piped(console, tongue, out, err);
        if (startUp) {
            console.startUp(piped.talk());
        }
        return piped;
    }

    /** A stream of UTF-8 bytes that writes to a writer. */
    private static final class Through extends OutputStream {
        private final PrintWriter to;
        private final java.io.ByteArrayOutputStream line = new java.io.ByteArrayOutputStream();

        Through(PrintWriter to) {
            this.to = to;
        }

        @Override
        public synchronized void write(int b) {
            line.write(b);
            if (b == '\n') {
                flush();
            }
        }

        @Override
        public synchronized void flush() {
            to.print(line.toString(UTF_8));
            to.flush();
            line.reset();
        }
    }
}
