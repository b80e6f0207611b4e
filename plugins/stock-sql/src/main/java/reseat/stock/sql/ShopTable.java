package reseat.stock.sql;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import reseat.stock.StockException;

/**
 * A table of the shop in a former database, next to those of Reseat. It is copied with its columns,
 * its primary key and its rows.
 *
 * @param name its name
 * @param create the statement that creates it in SQLite
 * @param columns the names of its columns, quoted
 * @param rows its rows
 */
record ShopTable(String name, String create, List<String> columns, List<FormerContents.Row> rows) {

    /** Reads all tables outside our schemas. */
    static List<ShopTable> read(Path path, Connection connection, Set<String> ours)
            throws SQLException, StockException {
        List<ShopTable> tables = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Name each : names(connection, ours, "BASE TABLE")) {
            String name = each.table().toLowerCase(Locale.ROOT);
            if (!names.add(name)) {
                throw new StockException(
                        StockException.Kind.BAD_INPUT,
                        path
                                + " has two tables with the name "
                                + name
                                + " in different schemas, and SQLite has no schemas. It was left"
                                + " unchanged; rename one of them");
            }
            tables.add(table(connection, each, name));
        }
        return List.copyOf(tables);
    }

    /** Returns the names of the shop's views. */
    static List<String> views(Connection connection, Set<String> ours) throws SQLException {
        return names(connection, ours, "VIEW").stream()
                .map(each -> each.table().toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Returns a name quoted for SQL. */
    static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }

    private record Name(String schema, String table) {}

    private static List<Name> names(Connection connection, Set<String> ours, String sort)
            throws SQLException {
        List<Name> names = new ArrayList<>();
        try (PreparedStatement ask =
                connection.prepareStatement(
                        "select table_schema, table_name from information_schema.tables where"
                                + " upper(table_schema) <> 'INFORMATION_SCHEMA' and table_type = ?"
                                + " order by table_schema, table_name")) {
            ask.setString(1, sort);
            try (ResultSet rows = ask.executeQuery()) {
                while (rows.next()) {
                    Name name = new Name(rows.getString(1), rows.getString(2));
                    if (!ours.contains(name.schema())) {
                        names.add(name);
                    }
                }
            }
        }
        return names;
    }

    private static ShopTable table(Connection connection, Name from, String name)
            throws SQLException {
        DatabaseMetaData about = connection.getMetaData();
        List<String> asked = new ArrayList<>();
        List<String> columns = new ArrayList<>();
        List<String> declared = new ArrayList<>();
        try (ResultSet rows =
                about.getColumns(
                        null, pattern(about, from.schema()), pattern(about, from.table()), null)) {
            while (rows.next()) {
                String column = rows.getString("COLUMN_NAME");
                String target = quoted(column.toLowerCase(Locale.ROOT));
                asked.add(quoted(column));
                columns.add(target);
                declared.add(target + " " + type(rows.getInt("DATA_TYPE")));
            }
        }
        TreeMap<Integer, String> key = new TreeMap<>();
        try (ResultSet rows = about.getPrimaryKeys(null, from.schema(), from.table())) {
            while (rows.next()) {
                key.put(
                        rows.getInt("KEY_SEQ"),
                        quoted(rows.getString("COLUMN_NAME").toLowerCase(Locale.ROOT)));
            }
        }
        if (!key.isEmpty()) {
            declared.add("primary key (" + String.join(", ", key.values()) + ")");
        }
        try (Statement statement = connection.createStatement();
                ResultSet rows =
                        statement.executeQuery(
                                "select "
                                        + String.join(", ", asked)
                                        + " from "
                                        + quoted(from.schema())
                                        + "."
                                        + quoted(from.table()))) {
            return new ShopTable(
                    name,
                    "create table "
                            + quoted(name)
                            + declared.stream().collect(Collectors.joining(", ", " (", ")")),
                    List.copyOf(columns),
                    FormerContents.all(rows, columns.size()));
        }
    }

    /** Escapes a name for a search, so that a _ in it is literal. */
    private static String pattern(DatabaseMetaData about, String name) throws SQLException {
        String escape = about.getSearchStringEscape();
        return name.replace(escape, escape + escape)
                .replace("_", escape + "_")
                .replace("%", escape + "%");
    }

    private static String type(int type) {
        return switch (type) {
            case Types.TINYINT, Types.SMALLINT, Types.INTEGER, Types.BIGINT, Types.BOOLEAN ->
                    "integer";
            case Types.NUMERIC, Types.DECIMAL -> "numeric";
            case Types.REAL, Types.FLOAT, Types.DOUBLE -> "real";
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> "blob";
            default -> "text";
        };
    }
}
