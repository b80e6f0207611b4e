package reseat.stock.sql;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/**
 * Copies the contents of a former database to a new SQLite file, and verifies them.
 *
 * @param former the old file
 * @param target the new file
 * @param sum the checksum of the old file
 */
record SteppedTables(Path former, Path target, String sum) {

    private static final String NOTE = "reseat_former";

    /**
     * Returns whether the old file was copied before.
     *
     * @throws StockException if the new file has other contents
     */
    boolean areCopied(Connection connection) throws SQLException, StockException {
        if (count(connection, "sqlite_master") == 0) {
            return false;
        }
        if (count(connection, "sqlite_master where name = '" + NOTE + "'") > 0) {
            try (PreparedStatement ask =
                    connection.prepareStatement("select 1 from " + NOTE + " where sum = ?")) {
                ask.setString(1, sum);
                try (ResultSet rows = ask.executeQuery()) {
                    if (rows.next()) {
                        return true;
                    }
                }
            }
        }
        throw new StockException(
                StockException.Kind.CONFLICT,
                "there are both "
                        + target
                        + " and "
                        + former
                        + " of an earlier Reseat, and the second was not copied into the first."
                        + " Nothing was changed; move the one that you do not need to another folder");
    }

    /** Copies everything, in the transaction of a connection, and records that. */
    void fill(Connection connection, FormerContents contents) throws SQLException, StockException {
        if (areCopied(connection)) {
            return;
        }
        for (FormerContents.Schema schema : contents.schemas()) {
            new SchemaSteps(Make.SQLITE, schema.name(), schema.ownItems()).takeMissing(connection);
            for (FormerContents.Rows rows : schema.tables()) {
                String table = Make.SQLITE.tables(schema.name()) + rows.table();
                insert(connection, table, rows.columns(), rows.rows());
                compare(connection, table, rows);
            }
        }
        try (Statement statement = connection.createStatement()) {
            for (ShopTable table : contents.shop()) {
                statement.execute(table.create());
                String name = ShopTable.quoted(table.name());
                insert(connection, name, table.columns(), table.rows());
                if (count(connection, name) != table.rows().size()) {
                    throw differs(table.name());
                }
            }
            statement.execute(
                    "create table "
                            + NOTE
                            + " (file text not null, sum text not null primary key)");
        }
        insert(
                connection,
                NOTE,
                List.of("file", "sum"),
                List.of(
                        new FormerContents.Row(
                                List.of(String.valueOf(former.getFileName()), sum))));
    }

    /** Describes what was copied, as a message. */
    String says(FormerContents contents) {
        List<String> parts = new ArrayList<>();
        for (FormerContents.Schema schema : contents.schemas()) {
            parts.add(
                    (schema.ownItems() ? counted(schema.count("item"), "line") + ", " : "")
                            + counted(schema.count("reservation"), "reservation"));
            if (schema.halves() > 0) {
                parts.add("half-written entries left out: " + schema.halves());
            }
            if (schema.mended() > 0) {
                parts.add("reserved quantities corrected: " + schema.mended());
            }
        }
        if (!contents.shop().isEmpty()) {
            parts.add(
                    "the shop's tables "
                            + contents.shop().stream()
                                    .map(ShopTable::name)
                                    .collect(Collectors.joining(", ")));
        }
        if (!contents.views().isEmpty()) {
            parts.add("but not the views " + String.join(", ", contents.views()));
        }
        return former + " was copied to " + target + " (" + String.join("; ", parts) + ")";
    }

    private static String counted(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    private static void insert(
            Connection connection,
            String table,
            List<String> columns,
            List<FormerContents.Row> rows)
            throws SQLException {
        String sql =
                "insert into "
                        + table
                        + " ("
                        + String.join(", ", columns)
                        + ") values ("
                        + String.join(", ", Collections.nCopies(columns.size(), "?"))
                        + ")";
        try (PreparedStatement add = connection.prepareStatement(sql)) {
            for (FormerContents.Row row : rows) {
                for (int i = 0; i < columns.size(); i++) {
                    add.setObject(i + 1, row.cells().get(i));
                }
                add.executeUpdate();
            }
        }
    }

    private void compare(Connection connection, String table, FormerContents.Rows expected)
            throws SQLException, StockException {
        int columns = expected.columns().size();
        List<String> there = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows =
                        statement.executeQuery(
                                "select "
                                        + String.join(", ", expected.columns())
                                        + " from "
                                        + table)) {
            while (rows.next()) {
                List<@Nullable Object> cells = new ArrayList<>();
                for (int i = 1; i <= columns; i++) {
                    cells.add(rows.getString(i));
                }
                there.add(cells.toString());
            }
        }
        List<String> wanted = new ArrayList<>();
        expected.rows().forEach(row -> wanted.add(row.cells().toString()));
        Collections.sort(there);
        Collections.sort(wanted);
        if (!there.equals(wanted)) {
            throw differs(table);
        }
    }

    private StockException differs(String table) {
        return new StockException(
                StockException.Kind.BAD_INPUT,
                "the table "
                        + table
                        + " in "
                        + target
                        + " does not match "
                        + former
                        + " after copying; the copy was undone, and the old file is unchanged");
    }

    private static int count(Connection connection, String table) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select count(*) from " + table)) {
            rows.next();
            return rows.getInt(1);
        }
    }
}
