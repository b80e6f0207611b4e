package reseat.console.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lays text out in a fixed width. */
final class Paper {

    /** The emphasis of a piece of text, where colour may be used. */
    enum Ink {
        PLAIN("0"),
        HEADING("1"),
        QUIET("2"),
        GRAVE("1;31"),
        ALERT("1;33");

        private final String code;

        Ink(String code) {
            this.code = code;
        }
    }

    private final Terminal terminal;
    private final StringBuilder text = new StringBuilder();

    Paper(Terminal terminal) {
        this.terminal = terminal;
    }

    int width() {
        return terminal.width();
    }

    /** Writes an empty line, unless one was just written. */
    void gap() {
        if (text.length() > 0 && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
    }

    /** Writes a line over the whole width with a title in it; a long title uses several lines. */
    void rule(String title, char line) {
        gap();
        String lead = "" + line + line + " ";
        for (String words : wrap(plain(title), width() - lead.length())) {
            int rest = Math.max(0, width() - lead.length() - words.length() - 1);
            line(ink(lead + words + " " + String.valueOf(line).repeat(rest), Ink.HEADING));
        }
    }

    /** Writes a paragraph with a hanging indent. */
    void para(int indent, String first, String words) {
        para(indent, first, words, Ink.PLAIN);
    }

    /**
     * Writes a paragraph; {@code first} starts its first line within the indent and is the only
     * part with emphasis.
     */
    void para(int indent, String first, String words, Ink ink) {
        List<String> lines = wrap(plain(words), width() - indent);
        String pad = " ".repeat(Math.max(0, indent - first.length()));
        String open = first.length() > indent ? first.strip() + " " : first + pad;
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? ink(open, ink) : " ".repeat(indent)) + lines.get(i));
        }
    }

    /** Writes a paragraph with a short text at the right edge of its first line. */
    void row(int indent, String first, String words, String aside) {
        String right = plain(aside);
        int room = width() - indent - (right.isEmpty() ? 0 : right.length() + 2);
        List<String> lines = wrap(plain(words), Math.max(20, room));
        for (int i = 0; i < lines.size(); i++) {
            String open =
                    i == 0
                            ? first + " ".repeat(Math.max(0, indent - first.length()))
                            : " ".repeat(indent);
            String body = open + lines.get(i);
            if (i == 0 && !right.isEmpty()) {
                body += " ".repeat(Math.max(2, width() - body.length() - right.length()));
                line(body + ink(right, Ink.QUIET));
            } else {
                line(body);
            }
        }
    }

    void line(String words) {
        text.append(plain(words).replace('\u00a0', ' ').stripTrailing()).append('\n');
    }

    String ink(String words, Ink ink) {
        boolean paint = terminal.colour() && ink != Ink.PLAIN && !words.isEmpty();
        return paint ? "\u001b[" + ink.code + "m" + words + "\u001b[0m" : words;
    }

    String text() {
        return text.toString();
    }

    private String plain(String words) {
        if (!terminal.ascii()) {
            return words;
        }
        return words.replace('×', 'x')
                .replace('─', '-')
                .replace('═', '=')
                .replace("·", "*")
                .replace("–", "-")
                .replace("→", "->")
                .replace("°", " deg")
                .replace("…", "...");
    }

    static List<String> wrap(String words, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            if (line.length() > 0) {
                line.append(' ');
            }
            line.append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
