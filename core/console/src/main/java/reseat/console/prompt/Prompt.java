package reseat.console.prompt;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import reseat.console.prompt.Talk.Taken;

/** Runs the console interactively on a terminal. */
final class Prompt {

    private static final int HISTORY = 5000;

    private final Console console;
    private final Terminal terminal;
    private final Ink ink;
    private final Talk talk;
    private final Map<Tongue, LineReader> readers = new EnumMap<>(Tongue.class);

    /**
     * Prepares it.
     *
     * @param terminal the terminal
     * @param tongue the initial language
     */
    Prompt(Console console, Terminal terminal, Tongue tongue) {
        this.console = console;
        this.terminal = terminal;
        this.ink = new Ink(console.terminal().colour());
        PrintWriter out = terminal.writer();
        Pager pager = new Pager(terminal, ink);
        this.talk = new Talk(console, tongue, new Waiting(terminal, console), pager::show, out);
    }

    /** Runs until the user leaves. */
    void run(boolean startUp) {
        console.fit(terminal.getSize().getColumns());
        terminal.writer().println(greeting());
        if (startUp) {
            console.startUp(talk);
        }
        while (true) {
            String text;
            try {
                text = reader(talk.tongue()).readLine(prompt(talk.tongue()));
            } catch (UserInterruptException e) {
                if (e.getPartialLine().isBlank()) {
                    talk.line(ink.quiet("\"leave\" or Ctrl-D exits the console."));
                }
                continue;
            } catch (EndOfFileException e) {
                return;
            }
            console.fit(terminal.getSize().getColumns());
            Taken taken = talk.take(text, this::complain);
            if (taken == Taken.LEAVE) {
                return;
            }
            if (taken == Taken.GIVEN_UP) {
                console.renew();
                talk.line(
                        "Session abandoned. A new one has started; your input is in the history.");
            }
        }
    }

    private String greeting() {
        String dot = console.terminal().ascii() ? " - " : " · ";
        return ink.strong("Reseat")
                + ink.quiet(
                        dot
                                + "JavaScript and Java: \"js\" and \"java\" switch"
                                + dot
                                + "\"help\" gives an overview"
                                + dot
                                + "Tab completes");
    }

    private String bar() {
        return console.terminal().ascii() ? "| " : "┆ ";
    }

    private String prompt(Tongue tongue) {
        String word = tongue.word();
        return ink.name(word) + " ".repeat(5 - word.length()) + ink.quiet(bar());
    }

    private void complain(Evaluation evaluation) {
        Pointing pointing = new Pointing(console.terminal(), 7);
        if (evaluation.status() == Outcome.Status.INCOMPLETE) {
            talk.line("The code ends before it is complete.");
        }
        evaluation
                .outcome()
                .troubles()
                .forEach(trouble -> talk.line(pointing.below(evaluation.text(), trouble)));
    }

    private LineReader reader(Tongue tongue) {
        return readers.computeIfAbsent(tongue, this::newReader);
    }

    private LineReader newReader(Tongue tongue) {
        Path file = console.places().history(tongue);
        LineReaderBuilder builder =
                LineReaderBuilder.builder()
                        .terminal(terminal)
                        .appName("reseat")
                        .parser(new Typing(tongue, this::isComplete))
                        .completer(new Completing(console, tongue))
                        .variable(LineReader.SECONDARY_PROMPT_PATTERN, "     " + ink.quiet(bar()))
                        .variable(LineReader.HISTORY_SIZE, HISTORY)
                        .variable(LineReader.HISTORY_FILE_SIZE, HISTORY)
                        .variable(LineReader.LIST_MAX, 60)
                        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                        .option(LineReader.Option.BRACKETED_PASTE, true)
                        .option(LineReader.Option.HISTORY_IGNORE_DUPS, true)
                        .option(LineReader.Option.INSERT_TAB, false);
        styles().forEach(builder::variable);
        if (mayWrite(file)) {
            builder.variable(LineReader.HISTORY_FILE, file);
        }
        LineReader reader = builder.build();
        reader.getWidgets().put("explain", () -> explain(reader));
        Objects.requireNonNull(reader.getKeyMaps().get(LineReader.MAIN))
                .bind(new Reference("explain"), "\u001bh");
        return reader;
    }

    /** Completions are as subdued as the rest, and plain if colour is off. */
    private Map<String, String> styles() {
        boolean colour = ink.on();
        return Map.of(
                LineReader.COMPLETION_STYLE_STARTING, colour ? "bold" : "default",
                LineReader.COMPLETION_STYLE_LIST_STARTING, colour ? "bold" : "default",
                LineReader.COMPLETION_STYLE_DESCRIPTION, colour ? "faint" : "default",
                LineReader.COMPLETION_STYLE_LIST_DESCRIPTION, colour ? "faint" : "default",
                LineReader.COMPLETION_STYLE_GROUP, colour ? "faint" : "default",
                LineReader.COMPLETION_STYLE_LIST_GROUP, colour ? "faint" : "default");
    }

    private boolean mayWrite(Path file) {
        try {
            Files.createDirectories(Objects.requireNonNull(file.getParent()));
            return true;
        } catch (IOException | SecurityException e) {
            return false;
        }
    }

    private boolean isComplete(Tongue tongue, String text) {
        return text.isBlank() || talk.isWord(text) || console.session().isComplete(tongue, text);
    }

    /** Shows help on the name at the cursor, above the current line. */
    private boolean explain(LineReader reader) {
        String text = reader.getBuffer().toString();
        int end = reader.getBuffer().cursor();
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        int start = end;
        while (start > 0
                && (Character.isJavaIdentifierPart(text.charAt(start - 1))
                        || text.charAt(start - 1) == '.')) {
            start--;
        }
        String name = text.substring(start, end);
        reader.printAbove(
                AttributedString.fromAnsi(
                        name.isEmpty() ? console.help().overview() : console.help().of(name)));
        return true;
    }
}
