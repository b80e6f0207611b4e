package reseat.console.prompt;

import java.io.IOException;
import java.util.List;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;

/** Shows a long text one screen at a time. */
final class Pager {

    private final Terminal terminal;
    private final Ink ink;

    Pager(Terminal terminal, Ink ink) {
        this.terminal = terminal;
        this.ink = ink;
    }

    /** Shows a text; waits for keys only if it is longer than the screen. */
    void show(String text) {
        List<String> lines = text.lines().toList();
        int screen = terminal.getSize().getRows() - 1;
        if (screen < 5 || lines.size() <= screen) {
            terminal.writer().println(text);
            terminal.writer().flush();
            return;
        }
        Attributes before = terminal.enterRawMode();
        try {
            pages(lines, screen - 1);
        } catch (IOException e) {
            terminal.writer().println(text);
        } finally {
            terminal.setAttributes(before);
            terminal.writer().flush();
        }
    }

    private void pages(List<String> lines, int page) throws IOException {
        int shown = print(lines, 0, page);
        while (shown < lines.size()) {
            String foot =
                    shown
                            + " of "
                            + lines.size()
                            + " lines: Space next page, Enter next line, a all, q quit";
            terminal.writer().print(ink.quiet(foot));
            terminal.writer().flush();
            int key = terminal.reader().read();
            terminal.writer().print("\r" + " ".repeat(foot.length()) + "\r");
            if (key == 'q' || key == 3 || key == 4 || key < 0) {
                return;
            }
            int more = key == 'a' ? lines.size() : key == '\r' || key == '\n' ? 1 : page;
            shown = print(lines, shown, more);
        }
    }

    private int print(List<String> lines, int from, int count) {
        int to = Math.min(lines.size(), from + count);
        lines.subList(from, to).forEach(terminal.writer()::println);
        terminal.writer().flush();
        return to;
    }
}
