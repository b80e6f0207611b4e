package reseat.console.prompt;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import reseat.console.sheet.Terminal;

/** Shows the result of an input. */
final class Report {

    private final Terminal terminal;
    private final Ink ink;
    private final View view;

    Report(Terminal terminal) {
        this.terminal = terminal;
        this.ink = new Ink(terminal.colour());
        this.view = new View(terminal);
    }

    /** Returns the lines of a value under its name, or nothing. */
    String of(Evaluation evaluation) {
        Outcome outcome = evaluation.outcome();
        if (outcome.name().isEmpty() && outcome.value() == null) {
            return "";
        }
        if (outcome.value() instanceof Collection<?> values && values.isEmpty()) {
            return label(outcome.name(), "empty");
        }
        String title = view.title(outcome.value());
        if (outcome.brief()) {
            return label(outcome.name(), title.isEmpty() ? "" : title + dot())
                    + shortened(
                            view.cell(outcome.value()), outcome.name().length() + title.length());
        }
        String body = outcome.value() == null ? "null" : view.of(outcome.value());
        if (title.isEmpty() && !body.contains("\n")) {
            return label(outcome.name(), "") + body;
        }
        return label(outcome.name(), title) + "\n" + body;
    }

    private String shortened(String words, int used) {
        int room = Math.max(20, terminal.width() - used - 8);
        return words.length() <= room
                ? words
                : words.substring(0, room - 1) + (terminal.ascii() ? "~" : "…");
    }

    private String label(String name, String title) {
        return name.isEmpty()
                ? ink.quiet(title)
                : ink.name(name) + ink.quiet(title.isEmpty() ? " = " : dot() + title);
    }

    private String dot() {
        return terminal.ascii() ? " - " : " · ";
    }

    /** Returns a duration in readable form. */
    static String time(Duration took) {
        double ms = took.toNanos() / 1e6;
        if (ms < 10) {
            return String.format(Locale.ROOT, "%.1f ms", ms);
        }
        return ms < 10_000
                ? String.format(Locale.ROOT, "%.0f ms", ms)
                : String.format(Locale.ROOT, "%.1f s", ms / 1000);
    }

    void notes(List<String> notes, PrintWriter out) {
        notes.forEach(note -> out.println(ink.quiet(note)));
    }
}
