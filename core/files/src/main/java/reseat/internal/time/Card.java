package reseat.internal.time;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * The Basic MOST index card: the indices that each letter of an index string may have, and their
 * meaning. Data from {@code card.csv} next to this class; each row is marked as read in a source or
 * as remembered.
 */
public final class Card {

    private static final Card BASIC = CardFile.read();

    private final Map<String, Column> columns;
    private final Map<Character, List<Integer>> allowed = new HashMap<>();

    Card(List<Column> columns) {
        Map<String, Column> byId = new LinkedHashMap<>();
        columns.forEach(column -> byId.put(column.id(), column));
        this.columns = byId;
        for (Column column : columns) {
            for (char letter : column.letters().toCharArray()) {
                allowed.computeIfAbsent(letter, this::indices);
            }
        }
    }

    /** Returns the card. */
    public static Card basic() {
        return BASIC;
    }

    /** Returns the columns in the order of the card. */
    public List<Column> columns() {
        return List.copyOf(columns.values());
    }

    /**
     * Returns a column.
     *
     * @throws IllegalArgumentException if there is none of that id; the message lists them
     */
    public Column column(String id) {
        Column column = columns.get(id);
        if (column == null) {
            throw new IllegalArgumentException(
                    "the card has no column \""
                            + id
                            + "\"; it has "
                            + String.join(", ", columns.keySet()));
        }
        return column;
    }

    /**
     * Returns the indices that a letter may carry, in rising order; empty for a letter that is not
     * on the card. 0 is allowed everywhere: it means that nothing of the kind happens.
     */
    public List<Integer> allowed(char letter) {
        return allowed.getOrDefault(letter, List.of());
    }

    private List<Integer> indices(char letter) {
        NavigableSet<Integer> indices = new TreeSet<>();
        for (Column column : columns.values()) {
            if (column.letters().indexOf(letter) >= 0) {
                indices.add(0);
                column.rows().forEach(row -> indices.add(row.index()));
            }
        }
        return List.copyOf(indices);
    }

    /** How a row of the card is known. */
    public enum Mark {
        /** Read in the source that the column names. */
        READ,
        /** From memory, confirmed by no reading: not to be presented as sourced. */
        MEMORY
    }

    /**
     * A column of the card.
     *
     * @param letters letters of an index string that it belongs to
     * @param what what it measures
     * @param unit unit of the limits ("turns", "s", "mm", "steps"); empty for a column of
     *     descriptions
     * @param source where its rows were read, or that they were not
     * @param rows rows in rising order of the index
     */
    public record Column(
            String id, String letters, String what, String unit, String source, List<Row> rows) {

        public Column {
            rows = List.copyOf(rows);
        }

        /**
         * Returns the first row whose limit is not exceeded: 10 finger spins fall under index 16,
         * whose limit is 16.
         *
         * @param amount how much, in the unit of the column; not negative
         * @throws IllegalArgumentException if the amount is negative, not a number or beyond the
         *     last row, or if the column holds descriptions alone
         */
        public Row rowFor(double amount) {
            if (!(amount >= 0)) {
                throw new IllegalArgumentException(what + " cannot be " + amount);
            }
            for (Row row : rows) {
                if (row.upTo().isPresent() && amount <= row.upTo().getAsDouble()) {
                    return row;
                }
            }
            Row last = rows.get(rows.size() - 1);
            throw new IllegalArgumentException(
                    last.upTo().isEmpty()
                            ? "the column \"" + id + "\" holds descriptions, not limits"
                            : what
                                    + ": the card ends at "
                                    + last.upTo().getAsDouble()
                                    + " "
                                    + unit
                                    + ", not "
                                    + amount);
        }
    }

    /**
     * A row of the card.
     *
     * @param upTo greatest amount that it covers, in the unit of its column; empty for a
     *     description
     * @param meaning what it stands for
     * @param mark how it is known
     */
    public record Row(int index, OptionalDouble upTo, String meaning, Mark mark) {}

    /** Collects rows into columns while the file is read. */
    static final class Columns {
        private final List<Column> done = new ArrayList<>();

        void add(String id, String letters, String what, String unit, String source) {
            done.add(new Column(id, letters, what, unit, source, List.of()));
        }

        void row(Row row) {
            Column last = done.remove(done.size() - 1);
            List<Row> rows = new ArrayList<>(last.rows());
            rows.add(row);
            done.add(
                    new Column(
                            last.id(),
                            last.letters(),
                            last.what(),
                            last.unit(),
                            last.source(),
                            rows));
        }

        Card card() {
            return new Card(done);
        }
    }
}
