package reseat.console.prompt;

import java.util.ArrayList;
import java.util.List;
import reseat.console.sheet.Terminal;

/** Formats errors, with marks under the input. */
final class Pointing {

    private final Terminal terminal;
    private final Ink ink;
    private final int margin;

    /**
     * Creates an instance.
     *
     * @param margin width of the prompt, so that carets line up with the input
     */
    Pointing(Terminal terminal, int margin) {
        this.terminal = terminal;
        this.ink = new Ink(terminal.colour());
        this.margin = margin;
    }

    /** Returns lines to print just below a text that a person typed. */
    String below(String text, Trouble trouble) {
        List<String> lines = new ArrayList<>();
        String pad = " ".repeat(margin);
        if (trouble.start() >= 0 && trouble.start() <= text.length()) {
            int start = lineStart(text, trouble.start());
            String line = lineAt(text, start);
            boolean last = text.indexOf('\n', trouble.start()) < 0;
            if (!last || line.length() + margin >= terminal.width()) {
                lines.add(ink.quiet(pad + Grid.cut(line, terminal)));
            }
            lines.add(ink.wrong(pad + carets(line, trouble, start)));
        }
        message(lines, pad, trouble);
        return String.join("\n", lines);
    }

    /** Returns lines that include the location of the error. */
    String told(String file, String text, Trouble trouble) {
        List<String> lines = new ArrayList<>();
        if (trouble.start() < 0 || trouble.start() > text.length()) {
            lines.add(file + ": " + trouble.message());
        } else {
            int start = lineStart(text, trouble.start());
            int number = 1 + (int) text.substring(0, start).chars().filter(c -> c == '\n').count();
            String line = lineAt(text, start);
            lines.add(
                    file
                            + ":"
                            + number
                            + ":"
                            + (trouble.start() - start + 1)
                            + ": "
                            + trouble.message());
            lines.add("  " + line);
            lines.add("  " + carets(line, trouble, start));
        }
        trouble.details().stream().filter(Pointing::isExplaining).forEach(d -> lines.add("  " + d));
        return String.join("\n", lines);
    }

    private void message(List<String> lines, String pad, Trouble trouble) {
        for (String line : trouble.message().lines().toList()) {
            for (String part : Block.wrapped(line, terminal.width() - margin)) {
                lines.add(pad + part);
            }
        }
        trouble.details().stream()
                .filter(Pointing::isExplaining)
                .forEach(detail -> lines.add(ink.quiet(pad + Grid.cut(detail, terminal))));
    }

    /** Further lines of the compiler explain; calls are shown only on request. */
    private static boolean isExplaining(String detail) {
        return detail.startsWith("symbol:")
                || detail.startsWith("required:")
                || detail.startsWith("found:")
                || detail.startsWith("reason:");
    }

    private static int lineStart(String text, int at) {
        return text.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
    }

    private static String lineAt(String text, int start) {
        int end = text.indexOf('\n', start);
        return text.substring(start, end < 0 ? text.length() : end);
    }

    private String carets(String line, Trouble trouble, int start) {
        int from = Math.min(trouble.start() - start, line.length());
        int to = Math.max(from + 1, Math.min(trouble.end() - start, line.length()));
        int room = Math.max(1, terminal.width() - margin - 1);
        String under = " ".repeat(from) + "^".repeat(to - from);
        return under.length() <= room ? under : under.substring(0, room);
    }
}
