package reseat.console.prompt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.console.sheet.Terminal;

/** One record in two columns: names and values. */
final class Block {

    private final Terminal terminal;
    private final Ink ink;
    private final View view;

    Block(Terminal terminal, Ink ink, View view) {
        this.terminal = terminal;
        this.ink = ink;
        this.view = view;
    }

    String of(Map<String, Object> fields) {
        int left = fields.keySet().stream().mapToInt(f -> Heading.of(f).length()).max().orElse(0);
        List<String> lines = new ArrayList<>();
        fields.forEach(
                (field, value) -> {
                    String words = view.cell(value);
                    if (words.isEmpty()) {
                        return;
                    }
                    String heading = Heading.of(field);
                    String lead = heading + " ".repeat(left + 2 - heading.length());
                    boolean first = true;
                    for (String line : wrapped(words, terminal.width() - left - 2)) {
                        lines.add((first ? ink.quiet(lead) : " ".repeat(left + 2)) + line);
                        first = false;
                    }
                });
        return lines.isEmpty() ? "empty" : String.join("\n", lines);
    }

    static List<String> wrapped(String words, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > Math.max(20, room)) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
