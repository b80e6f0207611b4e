package reseat.console.prompt;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.console.sheet.Terminal;

/** A table: a row for each record, a column for each field with a value. */
final class Grid {

    private static final int GAP = 2;
    private static final int NARROW = 6;

    private final Terminal terminal;
    private final Ink ink;

    /** A column with its cells, in the order of the rows. */
    private static final class Column {
        private final String field;
        private final List<String> cells = new ArrayList<>();
        private boolean numbers = true;
        private int width;

        Column(String field) {
            this.field = field;
        }
    }

    Grid(Terminal terminal, Ink ink) {
        this.terminal = terminal;
        this.ink = ink;
    }

    String of(List<Map<String, Object>> rows) {
        List<Column> columns = columns(rows);
        List<Column> left = fit(columns);
        List<String> lines = new ArrayList<>();
        StringBuilder head = new StringBuilder();
        StringBuilder rule = new StringBuilder();
        for (Column column : columns) {
            pad(head, cut(Heading.of(column.field), column.width), column);
            rule.append((terminal.ascii() ? "-" : "─").repeat(column.width)).append("  ");
        }
        lines.add(ink.strong(head.toString().stripTrailing()));
        lines.add(ink.quiet(rule.toString().stripTrailing()));
        for (int row = 0; row < rows.size(); row++) {
            StringBuilder line = new StringBuilder();
            for (Column column : columns) {
                pad(line, cut(column.cells.get(row), column.width), column);
            }
            lines.add(line.toString().stripTrailing());
        }
        if (!left.isEmpty()) {
            List<String> names = left.stream().map(column -> column.field).toList();
            lines.add(ink.quiet(cut("not shown: " + String.join(", ", names), terminal)));
        }
        return String.join("\n", lines);
    }

    private static List<Column> columns(List<Map<String, Object>> rows) {
        Set<String> fields = new LinkedHashSet<>();
        rows.forEach(row -> fields.addAll(row.keySet()));
        List<Column> columns = new ArrayList<>();
        for (String field : fields) {
            Column column = new Column(field);
            for (Map<String, Object> row : rows) {
                Object value = View.unwrapped(row.get(field));
                String cell = Plain.words(value);
                column.numbers &= cell.isEmpty() || isNumber(value, cell);
                column.cells.add(cell);
                column.width = Math.max(column.width, cell.length());
            }
            if (column.width > 0 && !column.cells.stream().allMatch("false"::equals)) {
                column.width = Math.max(column.width, Heading.of(field).length());
                columns.add(column);
            }
        }
        // pointers are for programs; people read names first
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).field.equals("pointer")) {
                columns.add(columns.remove(i));
                break;
            }
        }
        return columns;
    }

    private static boolean isNumber(@org.jspecify.annotations.Nullable Object value, String cell) {
        return value instanceof Number
                || (value instanceof String && cell.matches("-?[0-9]+(\\.[0-9]+)?"));
    }

    /** Narrows the widest columns until all fit; drops the last ones if that is not enough. */
    private List<Column> fit(List<Column> columns) {
        List<Column> left = new ArrayList<>();
        while (true) {
            int over = total(columns) - terminal.width();
            if (over <= 0 || columns.size() == 1) {
                if (columns.size() == 1) {
                    columns.get(0).width = Math.min(columns.get(0).width, terminal.width());
                }
                return left;
            }
            Column widest = columns.get(0);
            for (Column column : columns) {
                if (column.width > widest.width) {
                    widest = column;
                }
            }
            int fair =
                    Math.max(
                            NARROW,
                            Math.max(terminal.width() / 6, Heading.of(widest.field).length()));
            if (widest.width > fair) {
                widest.width = Math.max(fair, widest.width - over);
            } else {
                left.add(0, columns.remove(columns.size() - 1));
            }
        }
    }

    private static int total(List<Column> columns) {
        return columns.stream().mapToInt(c -> c.width + GAP).sum() - GAP;
    }

    private static void pad(StringBuilder line, String cell, Column column) {
        String room = " ".repeat(column.width - cell.length());
        line.append(column.numbers ? room + cell : cell + room).append(" ".repeat(GAP));
    }

    private String cut(String text, int width) {
        if (text.length() <= width) {
            return text;
        }
        String more = terminal.ascii() ? "~" : "…";
        return text.substring(0, Math.max(0, width - 1)) + more;
    }

    /** Truncates a line to the width of an interactive terminal. */
    static String cut(String line, Terminal terminal) {
        if (!terminal.interactive() || line.length() <= terminal.width()) {
            return line;
        }
        return line.substring(0, terminal.width() - 1) + (terminal.ascii() ? "~" : "…");
    }
}
