package reseat.console.prompt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says what is here and what a name means. */
final class Help {

    private final Console console;
    private final Ink ink;

    Help(Console console) {
        this.console = console;
        this.ink = new Ink(console.terminal().colour());
    }

    /** Returns what is here. */
    String overview() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Functions, the same in JavaScript and Java"));
        JsBench.methods()
                .forEach((name, methods) -> lines.add("  " + JsBench.signature(methods.get(methods.size() - 1))));
        lines.add("");
        lines.add(ink.strong("Words, alone on a line"));
        for (Words.Word word : Words.all()) {
            lines.add("  " + word.usage() + " ".repeat(Math.max(1, 24 - word.usage().length())) + word.does());
        }
        return String.join("\n", lines);
    }

    /** Returns what a name or a thing is. */
    String of(@Nullable Object thing) {
        return "Nothing is known of " + Plain.words(thing) + console.bench().checks().size() + ".";
    }

    /** Returns the names that the user has made. */
    String names(Map<String, Object> values) {
        if (values.isEmpty()) {
            return "Nothing yet.";
        }
        View view = new View(console.terminal());
        List<Map<String, Object>> rows = new ArrayList<>();
        values.forEach(
                (name, value) -> {
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("name", name);
                    row.put("type", view.title(value));
                    row.put("value", view.cell(value));
                    rows.add(row);
                });
        return new Grid(console.terminal(), ink).of(rows);
    }
}
