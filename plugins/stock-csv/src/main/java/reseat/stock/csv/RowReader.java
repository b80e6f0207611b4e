package reseat.stock.csv;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.stock.StockItem;

/** Converts the rows below a heading to lines of a stock. An instance reads once. */
final class RowReader {

    /** Most problems that are reported. */
    private static final int KEPT = 50;

    private final String file;
    private final Columns columns;
    private final List<String> headings;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Long> firstLines = new LinkedHashMap<>();

    RowReader(String file, Columns columns, List<String> headings) {
        this.file = file;
        this.columns = columns;
        this.headings = headings;
    }

    Sheet read(List<CsvRecord> records) throws BadInputException {
        Map<String, StockItem> rows = new LinkedHashMap<>();
        for (CsvRecord row : records) {
            String id = cell(row, "id");
            if (id.isEmpty()) {
                if (!cell(row, "quantity").isEmpty()) {
                    problem(row, "id", "this line has a quantity, but no id");
                }
                continue; // an empty line
            }
            if (isTitle(row)) {
                continue;
            }
            Long before = firstLines.putIfAbsent(id, row.getStartingLineNumber());
            if (before != null) {
                problem(
                        row,
                        "id",
                        "found \"" + id + "\", which is already the id of line " + before);
                continue;
            }
            rows.put(id, item(row, id));
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems.subList(0, Math.min(KEPT, problems.size())));
        }
        return new Sheet(rows);
    }

    /** Returns whether a row has content only in its first column, as titles between lines do. */
    private boolean isTitle(CsvRecord row) {
        return Columns.THINGS.stream()
                .filter(thing -> !thing.equals("id"))
                .flatMap(thing -> columns.headings(thing).stream())
                .allMatch(heading -> field(row, heading).isEmpty());
    }

    private StockItem item(CsvRecord row, String id) {
        String name = cell(row, "name");
        return new StockItem(
                id,
                kind(row),
                name.isEmpty() ? id : name,
                serves(row, id),
                quantity(row),
                BigDecimal.ZERO,
                unit(row),
                text(row, "lot"),
                expires(row),
                text(row, "place"));
    }

    private StockItem.Kind kind(CsvRecord row) {
        String word = cell(row, "kind");
        Optional<StockItem.Kind> kind =
                Optional.ofNullable(columns.kinds().get(word))
                        .or(() -> Columns.kindNamed(word))
                        .or(() -> word.isEmpty() ? columns.kind() : Optional.empty());
        if (kind.isEmpty()) {
            problem(
                    row,
                    "kind",
                    "found \""
                            + word
                            + "\", expected one of: "
                            + String.join(", ", columns.kinds().keySet())
                            + (columns.kinds().isEmpty() ? "part, screw, consumable, tool" : "")
                            + "; \"kinds\" in the mapping defines the words");
        }
        return kind.orElse(StockItem.Kind.PART);
    }

    private List<String> serves(CsvRecord row, String id) {
        List<String> serves = new ArrayList<>();
        for (String heading : columns.headings("serves")) {
            for (String each : columns.between().split(field(row, heading), -1)) {
                String bare = each.strip();
                if (!bare.isEmpty() && !serves.contains(bare)) {
                    serves.add(bare);
                }
            }
        }
        return serves.isEmpty() ? List.of(id) : serves;
    }

    private BigDecimal quantity(CsvRecord row) {
        Optional<BigDecimal> number = Cells.number(cell(row, "quantity"), columns.decimal());
        if (number.isEmpty()) {
            problem(
                    row,
                    "quantity",
                    "found \""
                            + cell(row, "quantity")
                            + "\", expected a number from zero with a decimal "
                            + (columns.decimal() == ',' ? "comma" : "point")
                            + "; \"decimal\" in the mapping sets it");
        }
        return number.orElse(BigDecimal.ZERO);
    }

    private String unit(CsvRecord row) {
        String word = cell(row, "unit");
        return word.isEmpty() ? columns.unit() : columns.units().getOrDefault(word, word);
    }

    private Optional<LocalDate> expires(CsvRecord row) {
        String text = cell(row, "expires");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> date = Cells.date(text, columns.dates());
        if (date.isEmpty()) {
            problem(
                    row,
                    "expires",
                    "found \""
                            + text
                            + "\", expected a date; \"dates\" in the mapping says how they are"
                            + " written");
        }
        return date;
    }

    private Optional<String> text(CsvRecord row, String thing) {
        return Optional.of(cell(row, thing)).filter(text -> !text.isEmpty());
    }

    private String cell(CsvRecord row, String thing) {
        List<String> names = columns.headings(thing);
        return names.isEmpty() ? "" : field(row, names.get(0));
    }

    private String field(CsvRecord row, String heading) {
        int at = headings.indexOf(heading);
        return at < 0 || at >= row.getFieldCount() ? "" : row.getField(at).strip();
    }

    private void problem(CsvRecord row, String thing, String message) {
        List<String> names = columns.headings(thing);
        String where = names.isEmpty() ? "" : "column \"" + names.get(0) + "\": ";
        problems.add(
                Problem.error(
                        new Origin(file, (int) row.getStartingLineNumber(), 0), where + message));
    }
}
