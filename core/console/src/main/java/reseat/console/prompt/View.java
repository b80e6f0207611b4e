package reseat.console.prompt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import reseat.check.Finding;
import reseat.console.graph.StepText;
import reseat.console.sheet.PlanSheet;
import reseat.console.sheet.Terminal;
import reseat.fasten.FastenerTables;
import reseat.fasten.TableRow;
import reseat.graph.StepGraph;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.script.ApiIndex;
import reseat.sheet.Sheet;

/** Formats values for people: tables, blocks, trees and sheets. */
final class View {

    private final Terminal terminal;
    private final Ink ink;

    View(Terminal terminal) {
        this.terminal = terminal;
        this.ink = new Ink(terminal.colour());
    }

    /** Returns a value as lines of text without a line feed at the end; never empty. */
    String of(@Nullable Object value) {
        Object plain = Plain.of(value);
        if (plain instanceof Plan plan) {
            return PlanSheet.render(Sheet.of(plan), terminal).stripTrailing();
        }
        if (plain instanceof StepGraph graph) {
            return StepText.of(graph).stripTrailing();
        }
        if (plain instanceof Device device) {
            return block(Plain.device(device));
        }
        if (plain instanceof FastenerTables tables) {
            return table(Plain.tables(tables));
        }
        if (plain instanceof Collection<?> values) {
            return collection(values);
        }
        if (plain instanceof Map<?, ?> map) {
            return map.isEmpty() ? "empty map" : map(map);
        }
        Map<String, Object> fields = Plain.fields(plain);
        if (fields != null) {
            return block(fields);
        }
        if (plain != null && hasNoWords(plain)) {
            return members(plain.getClass());
        }
        return plain instanceof String text ? text(text) : cell(plain);
    }

    /** Values that have methods but no content to show. */
    private static boolean hasNoWords(Object thing) {
        String name = thing.getClass().getName();
        return String.valueOf(thing).startsWith(name + "@")
                && !ApiIndex.standard().membersOf(name).isEmpty();
    }

    private String members(Class<?> type) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (ApiIndex.Entry entry : ApiIndex.standard().membersOf(type.getName())) {
            if (!entry.signature().startsWith("static ")) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("ask", entry.signature().replaceFirst("^[^(]* (?=\\w+\\()", ""));
                row.put("for", ApiWords.shortened(entry.summary()));
                rows.add(row);
            }
        }
        return table(rows);
    }

    /** Returns a short description of a value, to follow its name. */
    String title(@Nullable Object value) {
        Object plain = Plain.of(value);
        if (plain instanceof Collection<?> values) {
            return count(values);
        }
        if (plain instanceof Map<?, ?> map) {
            return map.size() == 1 ? "1 entry" : map.size() + " entries";
        }
        return plain == null || plain instanceof String || plain instanceof Number
                ? ""
                : Plain.typeName(plain);
    }

    private static String count(Collection<?> values) {
        Object first = values.stream().filter(each -> each != null).findFirst().orElse(null);
        if (first == null || Plain.fields(first) == null) {
            return Integer.toString(values.size());
        }
        Class<?> type = first.getClass();
        boolean alike = values.stream().allMatch(type::isInstance);
        String what = alike ? Plain.typeName(first) : "";
        return values.size() + (what.isEmpty() ? "" : " × " + what);
    }

    /** Returns a value in a few words on one line. */
    String cell(@Nullable Object value) {
        return Plain.words(value);
    }

    private String text(String text) {
        return text.contains("\n") ? text.stripTrailing() : "\"" + text + "\"";
    }

    private String collection(Collection<?> values) {
        if (values.isEmpty()) {
            return "empty";
        }
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Object each : values) {
            Map<String, Object> fields = rowOf(Plain.of(each));
            if (fields == null || fields.isEmpty()) {
                return list(values);
            }
            rows.add(fields);
        }
        return table(rows);
    }

    private static @Nullable Map<String, Object> rowOf(@Nullable Object value) {
        if (value instanceof TableRow row) {
            return new LinkedHashMap<>(row.cells());
        }
        if (value instanceof Device device) {
            return Plain.device(device);
        }
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> row = new LinkedHashMap<>();
            map.forEach((key, each) -> row.put(String.valueOf(key), each));
            return row;
        }
        if (value instanceof Finding finding) {
            return Plain.inShort(finding);
        }
        return value == null ? null : Plain.fields(value);
    }

    private String list(Collection<?> values) {
        List<String> words = values.stream().map(this::cell).toList();
        int longest = words.stream().mapToInt(String::length).max().orElse(0);
        int columns = Math.max(1, (terminal.width() + 2) / (longest + 2));
        if (columns == 1 || values.size() < 8) {
            return String.join("\n", words.stream().map(w -> Grid.cut(w, terminal)).toList());
        }
        int rows = (words.size() + columns - 1) / columns;
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            StringBuilder line = new StringBuilder();
            for (int at = row; at < words.size(); at += rows) {
                line.append(words.get(at)).append(" ".repeat(longest + 2 - words.get(at).length()));
            }
            lines.add(line.toString().stripTrailing());
        }
        return String.join("\n", lines);
    }

    private String map(Map<?, ?> map) {
        List<Object> values = new ArrayList<>(map.values());
        Object first = Plain.of(values.get(0));
        boolean rows = first != null && values.size() > 1;
        for (Object each : values) {
            Object plain = Plain.of(each);
            rows &= plain != null && Plain.fields(plain) != null;
            rows &= plain != null && first != null && plain.getClass() == first.getClass();
        }
        if (rows) {
            return collection(values);
        }
        boolean nested = values.stream().map(Plain::of).anyMatch(View::isNested);
        return nested ? new Tree(terminal, ink).of(map) : block(rowOf(map));
    }

    static boolean isNested(@Nullable Object plain) {
        return plain instanceof Map<?, ?>
                || (plain instanceof Collection<?> c
                        && c.stream().map(Plain::of).anyMatch(e -> Plain.words(e).length() > 30));
    }

    private String table(List<Map<String, Object>> rows) {
        return new Grid(terminal, ink).of(rows);
    }

    private String block(@Nullable Map<String, Object> fields) {
        return fields == null ? "" : new Block(terminal, ink, this).of(fields);
    }

    /** Unwraps a value: the content of an optional, the elements of an array. */
    static @Nullable Object unwrapped(@Nullable Object value) {
        if (value instanceof Optional<?> some) {
            return some.orElse(null);
        }
        if (value instanceof OptionalInt some) {
            return some.isPresent() ? some.getAsInt() : null;
        }
        if (value instanceof OptionalLong some) {
            return some.isPresent() ? some.getAsLong() : null;
        }
        if (value instanceof OptionalDouble some) {
            return some.isPresent() ? some.getAsDouble() : null;
        }
        return value instanceof Object[] array ? Arrays.asList(array) : value;
    }
}
