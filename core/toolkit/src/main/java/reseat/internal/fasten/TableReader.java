package reseat.internal.fasten;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTable.Column;
import reseat.fasten.TableRow;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.text.CsvException;
import reseat.text.CsvText;
import reseat.text.CsvText.Cell;
import reseat.text.Nearest;

/** Reads the rows of one table and reports all errors together. */
public final class TableReader {

    private final FastenerTable table;
    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    private TableReader(FastenerTable table, String file) {
        this.table = table;
        this.file = file;
    }

    /**
     * Reads rows.
     *
     * @param table the table to which they belong
     * @param file the file as the user named it
     * @param text its text
     * @throws BadInputException with all problems found
     */
    public static List<TableRow> read(FastenerTable table, String file, String text)
            throws BadInputException {
        TableReader reader = new TableReader(table, file);
        List<TableRow> rows = List.of();
        try {
            rows = reader.rows(CsvText.rows(text));
        } catch (CsvException e) {
            reader.problem(
                    new Origin(file, e.line(), e.column()),
                    "The table cannot be read: " + e.text() + ".");
        }
        if (!reader.problems.isEmpty()) {
            throw new BadInputException(reader.problems);
        }
        return rows;
    }

    private List<TableRow> rows(List<List<Cell>> lines) {
        if (lines.isEmpty()) {
            problem(
                    new Origin(file, 1, 1),
                    "The table is empty; expected a header row with " + names() + ".");
            return List.of();
        }
        List<@Nullable Column> header = header(lines.get(0));
        List<TableRow> rows = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (List<Cell> line : lines.subList(1, lines.size())) {
            TableRow row = row(header, line);
            if (row != null && !seen.add(row.key())) {
                problem(
                        row.origin(),
                        "A second row for \"" + row.key() + "\" in " + table.title() + ".");
            } else if (row != null) {
                rows.add(row);
            }
        }
        return rows;
    }

    private List<@Nullable Column> header(List<Cell> cells) {
        List<@Nullable Column> header = new ArrayList<>();
        Set<String> missing = new LinkedHashSet<>(names());
        for (Cell cell : cells) {
            Column column =
                    table.columns().stream()
                            .filter(c -> c.name().equals(cell.text()))
                            .findFirst()
                            .orElse(null);
            if (column == null) {
                problem(
                        at(cell),
                        "The table "
                                + table.title()
                                + " has no column \""
                                + cell.text()
                                + "\"."
                                + Nearest.question(cell.text(), names())
                                + " Columns: "
                                + Names.list(names())
                                + ".");
            } else if (!missing.remove(column.name())) {
                problem(at(cell), "The column " + cell.text() + " occurs twice.");
            }
            header.add(column);
        }
        for (Column column : table.columns()) {
            if (missing.contains(column.name()) && !column.optional()) {
                problem(at(cells.get(0)), "The header row lacks the column " + column.name() + ".");
            }
        }
        return header;
    }

    private @Nullable TableRow row(List<@Nullable Column> header, List<Cell> line) {
        int before = problems.size();
        if (line.size() > header.size()) {
            problem(
                    at(line.get(header.size())),
                    "Found " + line.size() + " cells, expected " + header.size() + ".");
        }
        Map<String, Cell> found = new LinkedHashMap<>();
        for (int i = 0; i < header.size() && i < line.size(); i++) {
            Column column = header.get(i);
            if (column != null) {
                found.put(column.name(), line.get(i));
            }
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (Column column : table.columns()) {
            Cell cell =
                    found.getOrDefault(
                            column.name(), new Cell(line.get(0).line(), line.get(0).column(), ""));
            cells.put(column.name(), checked(column, cell));
        }
        return problems.size() > before ? null : new TableRow(table, cells, at(line.get(0)));
    }

    private String checked(Column column, Cell cell) {
        String text = cell.text();
        if (text.isEmpty()) {
            if (!column.optional()) {
                problem(at(cell), "The cell " + column.name() + " is empty.");
            }
            return text;
        }
        switch (column.kind()) {
            case TEXT -> {}
            case WORD -> {
                if (!column.words().contains(text)) {
                    problem(
                            at(cell),
                            "Found \""
                                    + text
                                    + "\" for "
                                    + column.name()
                                    + ", expected one of "
                                    + String.join(", ", column.words())
                                    + "."
                                    + Nearest.question(text, column.words()));
                }
            }
            case POSITIVE, SHARE -> number(column, cell);
        }
        return column.kind() == Column.Kind.POSITIVE || column.kind() == Column.Kind.SHARE
                ? text.replace(',', '.')
                : text;
    }

    private void number(Column column, Cell cell) {
        String expected =
                column.kind() == Column.Kind.SHARE
                        ? "a number above 0 and not above 1"
                        : "a number above 0, without a unit";
        try {
            BigDecimal number = new BigDecimal(cell.text().replace(',', '.'));
            if (number.signum() <= 0
                    || !Double.isFinite(number.doubleValue())
                    || (column.kind() == Column.Kind.SHARE
                            && number.compareTo(BigDecimal.ONE) > 0)) {
                problem(
                        at(cell),
                        "Found "
                                + cell.text()
                                + " for "
                                + column.name()
                                + ", expected "
                                + expected
                                + ".");
            }
        } catch (NumberFormatException e) {
            problem(
                    at(cell),
                    "Found \""
                            + cell.text()
                            + "\" for "
                            + column.name()
                            + ", expected "
                            + expected
                            + ".");
        }
    }

    private List<String> names() {
        return table.columns().stream().map(Column::name).toList();
    }

    private Origin at(Cell cell) {
        return new Origin(file, cell.line(), cell.column());
    }

    private void problem(Origin at, String message) {
        problems.add(Problem.error(at, message));
    }
}
