package reseat.stock.sql;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Date;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/**
 * The contents of a former database, in the form for SQLite.
 *
 * @param schemas the schemas of Reseat in it
 * @param shop further tables of the shop
 * @param views names of the shop's views, which cannot be copied
 */
record FormerContents(List<Schema> schemas, List<ShopTable> shop, List<String> views) {

    /** One row; null for missing values. */
    record Row(List<@Nullable Object> cells) {}

    /**
     * Rows of one of our own tables.
     *
     * @param table its name without the schema
     * @param columns the names of its columns
     */
    record Rows(String table, List<String> columns, List<Row> rows) {}

    /**
     * A schema of Reseat.
     *
     * @param name its name
     * @param ownItems whether the lines of the stock are in it
     * @param tables its tables, those first that others point to
     * @param halves number of reservations and picks left out because their counterpart is missing
     * @param mended number of lines whose reserved quantity did not match their open reservations
     */
    record Schema(String name, boolean ownItems, List<Rows> tables, int halves, int mended) {

        /** Returns how many rows a table has. */
        int count(String table) {
            return tables.stream()
                    .filter(each -> each.table().equals(table))
                    .mapToInt(each -> each.rows().size())
                    .sum();
        }
    }

    private static final List<String> ITEM =
            List.of("id", "kind", "name", "serves", "on_hand", "unit", "lot", "expires", "place");
    private static final List<String> RESERVATION = List.of("seq", "id", "job", "state");
    private static final List<String> PICK =
            List.of("reservation", "nr", "item", "quantity", "comes_back");
    private static final List<String> HELD = List.of("item", "reserved", "used");

    static FormerContents read(Path path, Connection connection)
            throws SQLException, StockException {
        List<Schema> schemas = new ArrayList<>();
        Set<String> ours = new TreeSet<>();
        for (String found : schemas(connection)) {
            schemas.add(schema(connection, found));
            ours.add(found);
        }
        if (schemas.isEmpty()) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    path
                            + " is a database of another program: it has no tables of Reseat. It"
                            + " was left unchanged; name another file");
        }
        return new FormerContents(
                List.copyOf(schemas),
                ShopTable.read(path, connection, ours),
                ShopTable.views(connection, ours));
    }

    private static List<String> schemas(Connection connection) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement ask =
                        connection.prepareStatement(
                                "select table_schema from information_schema.tables where"
                                        + " lower(table_name) in ('step', 'held', 'reservation',"
                                        + " 'pick') group by table_schema having count(*) = 4"
                                        + " order by table_schema");
                ResultSet rows = ask.executeQuery()) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }

    private static Schema schema(Connection connection, String found)
            throws SQLException, StockException {
        String name = found.toLowerCase(Locale.ROOT);
        Set<String> steps = new TreeSet<>();
        rows(connection, found, "step", List.of("name"), "name")
                .forEach(row -> steps.add(String.valueOf(row.cells().get(0))));
        SchemaSteps.refuseNewer(name, steps);
        List<Row> reservations = rows(connection, found, "reservation", RESERVATION, "seq");
        List<Row> picks = rows(connection, found, "pick", PICK, "reservation, nr");
        Set<Object> known = column(reservations, 1);
        Set<Object> picked = column(picks, 0);
        List<Row> whole = reservations.stream().filter(r -> in(picked, r, 1)).toList();
        List<Row> wholePicks = picks.stream().filter(p -> in(known, p, 0)).toList();
        List<Row> held = rows(connection, found, "held", HELD, "item");
        List<Row> sound = balanced(held, whole, wholePicks);
        List<Rows> tables = new ArrayList<>();
        boolean ownItems = steps.contains("items-1");
        if (ownItems) {
            tables.add(new Rows("item", ITEM, rows(connection, found, "item", ITEM, "id")));
        }
        tables.add(new Rows("held", HELD, sound));
        tables.add(new Rows("reservation", RESERVATION, whole));
        tables.add(new Rows("pick", PICK, wholePicks));
        return new Schema(
                name,
                ownItems,
                List.copyOf(tables),
                reservations.size() - whole.size() + picks.size() - wholePicks.size(),
                (int) sound.stream().filter(row -> !held.contains(row)).count());
    }

    /** H2 could lose half a transaction; reserved quantities follow from the open reservations. */
    private static List<Row> balanced(List<Row> held, List<Row> reservations, List<Row> picks) {
        Set<Object> open = new HashSet<>();
        for (Row each : reservations) {
            if ("reserved".equals(each.cells().get(3))) {
                open.add(String.valueOf(each.cells().get(1)));
            }
        }
        Map<String, BigDecimal> reserved = new HashMap<>();
        for (Row pick : picks) {
            if (in(open, pick, 0)) {
                reserved.merge(
                        String.valueOf(pick.cells().get(2)),
                        new BigDecimal(String.valueOf(pick.cells().get(3))),
                        BigDecimal::add);
            }
        }
        List<Row> sound = new ArrayList<>();
        for (Row line : held) {
            String item = String.valueOf(line.cells().get(0));
            sound.add(held(item, reserved.remove(item), line.cells().get(2)));
        }
        new TreeSet<>(reserved.keySet())
                .forEach(item -> sound.add(held(item, reserved.get(item), "0")));
        return sound;
    }

    private static Row held(String item, @Nullable BigDecimal reserved, @Nullable Object used) {
        List<@Nullable Object> cells = new ArrayList<>();
        cells.add(item);
        cells.add(reserved == null ? "0" : Cells.plain(reserved).toPlainString());
        cells.add(used);
        return new Row(cells);
    }

    private static boolean in(Set<Object> known, Row row, int column) {
        return known.contains(String.valueOf(row.cells().get(column)));
    }

    private static Set<Object> column(List<Row> rows, int column) {
        Set<Object> all = new HashSet<>();
        rows.forEach(row -> all.add(String.valueOf(row.cells().get(column))));
        return all;
    }

    private static List<Row> rows(
            Connection connection, String schema, String table, List<String> columns, String order)
            throws SQLException {
        String sql =
                "select "
                        + String.join(", ", columns)
                        + " from "
                        + ShopTable.quoted(schema)
                        + "."
                        + table
                        + " order by "
                        + order;
        try (PreparedStatement ask = connection.prepareStatement(sql);
                ResultSet rows = ask.executeQuery()) {
            return all(rows, columns.size());
        }
    }

    /** Reads rows as SQLite stores them: exact numbers and dates as text. */
    static List<Row> all(ResultSet rows, int columns) throws SQLException {
        List<Row> all = new ArrayList<>();
        while (rows.next()) {
            List<@Nullable Object> cells = new ArrayList<>();
            for (int i = 1; i <= columns; i++) {
                cells.add(cell(rows, i));
            }
            all.add(new Row(cells));
        }
        return all;
    }

    private static @Nullable Object cell(ResultSet row, int column) throws SQLException {
        Object cell = row.getObject(column);
        if (cell == null || cell instanceof Long || cell instanceof Double) {
            return cell;
        }
        if (cell instanceof Integer number) {
            return number.longValue();
        }
        if (cell instanceof BigDecimal number) {
            return Cells.plain(number).toPlainString();
        }
        if (cell instanceof Boolean truth) {
            return truth ? 1L : 0L;
        }
        if (cell instanceof Date day) {
            return day.toLocalDate().toString();
        }
        if (cell instanceof byte[] || cell instanceof java.sql.Blob) {
            return row.getBytes(column);
        }
        return row.getString(column);
    }
}
