package reseat.console.prompt;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import reseat.console.sheet.Terminal;

/** A map of maps and lists as a tree. */
final class Tree {

    private static final int DEEPEST = 8;

    private final Terminal terminal;
    private final Ink ink;
    private final List<String> lines = new ArrayList<>();

    Tree(Terminal terminal, Ink ink) {
        this.terminal = terminal;
        this.ink = ink;
    }

    String of(Map<?, ?> map) {
        branches(map, "", 0);
        return String.join("\n", lines);
    }

    private void branches(Map<?, ?> map, String lead, int depth) {
        Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<?, ?> entry = entries.next();
            boolean last = !entries.hasNext();
            Object value = Plain.of(entry.getValue());
            String twig = terminal.ascii() ? (last ? "`- " : "|- ") : (last ? "└─ " : "├─ ");
            String below = terminal.ascii() ? (last ? "   " : "|  ") : (last ? "   " : "│  ");
            Map<?, ?> inner = depth < DEEPEST ? inner(value) : null;
            String words = inner == null ? Plain.words(value) : "";
            String label = Plain.words(entry.getKey());
            int used = lead.length() + twig.length() + label.length() + 2;
            lines.add(
                    ink.quiet(lead + twig)
                            + label
                            + (words.isEmpty() ? "" : "  " + cut(words, terminal.width() - used)));
            if (inner != null) {
                branches(inner, lead + below, depth + 1);
            }
        }
    }

    private String cut(String words, int room) {
        return words.length() <= Math.max(10, room)
                ? words
                : words.substring(0, Math.max(10, room) - 1) + (terminal.ascii() ? "~" : "…");
    }

    private static @Nullable Map<?, ?> inner(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.isEmpty() ? null : map;
        }
        if (value instanceof Collection<?> values && View.isNested(values)) {
            Map<Object, Object> numbered = new LinkedHashMap<>();
            int i = 0;
            for (Object each : values) {
                numbered.put(i++, each);
            }
            return numbered;
        }
        return null;
    }
}
