package reseat.fasten;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.model.Origin;

/**
 * One row of a table, already checked against its columns.
 *
 * @param cells text by column, every column present, trimmed; empty where the cell is
 * @param origin where the row stands
 */
public record TableRow(FastenerTable table, Map<String, String> cells, Origin origin) {

    public TableRow {
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /**
     * Returns the text of a cell; may be empty.
     *
     * @throws IllegalArgumentException if the table has no such column
     */
    public String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException(table.title() + " has no column " + column);
        }
        return cell;
    }

    /** Returns the number of a cell, empty if the cell is empty. */
    public OptionalDouble number(String column) {
        String text = text(column);
        return text.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(text));
    }

    /**
     * Returns the number of a required cell.
     *
     * @throws FastenerInputException if the cell is empty
     */
    public double required(String column) {
        return number(column)
                .orElseThrow(
                        () ->
                                new FastenerInputException(
                                        table.title() + ": " + key() + " has no " + column + "."));
    }

    /** Returns the text of a cell, empty if the cell is empty. */
    public Optional<String> some(String column) {
        return Optional.of(text(column)).filter(text -> !text.isEmpty());
    }

    /** Returns the key cells, joined by a space. */
    public String key() {
        return String.join(
                " ",
                table.columns().stream().limit(table.keys()).map(c -> text(c.name())).toList());
    }

    /** Returns the source of the row. */
    public String source() {
        return text("source");
    }

    /** Returns how far to trust it: read, recomputed, memory, practice or shop. */
    public String tag() {
        return text("tag");
    }
}
