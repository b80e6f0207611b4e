package reseat.stock.sql;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import reseat.stock.StockException;

/**
 * Brings our tables in a database up to date, step by step. A published step is never changed;
 * changes are new steps.
 */
final class SchemaSteps {

    /** Keeps two benches from creating the same tables at once; an arbitrary number. */
    private static final long LOCK = 7_236_183_225L;

    /** The application id in the header of a SQLite file ("Rsea"). */
    private static final int OUR_FILES = 0x52736561;

    private static final List<String> RESERVATIONS = List.of("reservations-1");
    private static final List<String> ITEMS = List.of("items-1");

    private final Make make;
    private final String schema;
    private final String table;
    private final List<String> wanted;

    /**
     * @param schema where our tables are
     * @param ownItems whether the lines of the stock are there, too
     */
    SchemaSteps(Make make, String schema, boolean ownItems) {
        this.make = make;
        this.schema = schema;
        this.table = make.tables(schema) + "step";
        this.wanted = new ArrayList<>(RESERVATIONS);
        if (ownItems) {
            wanted.addAll(ITEMS);
        }
    }

    /** Applies the missing steps; only reads if there are none. */
    void take(Transactions transactions) throws StockException {
        if (transactions.look(this::done).containsAll(wanted)) {
            return;
        }
        transactions.run(
                "try again",
                connection -> {
                    takeMissing(connection);
                    return true;
                });
    }

    private Set<String> done(Connection connection) throws SQLException, StockException {
        if (!there(connection)) {
            return Set.of();
        }
        Set<String> done = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select name from " + table)) {
            while (rows.next()) {
                done.add(rows.getString(1));
            }
        }
        refuseNewer(schema, done);
        return done;
    }

    /** Rejects steps that this version does not know. */
    static void refuseNewer(String schema, Set<String> done) throws StockException {
        Set<String> unknown = new TreeSet<>(done);
        RESERVATIONS.forEach(unknown::remove);
        ITEMS.forEach(unknown::remove);
        if (!unknown.isEmpty()) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the tables in the schema "
                            + schema
                            + " were created by a newer Reseat (steps "
                            + String.join(", ", unknown)
                            + "); use that one");
        }
    }

    private boolean there(Connection connection) throws SQLException {
        String question =
                make == Make.SQLITE
                        ? "select count(*) from sqlite_master where name = ?"
                        : "select count(*) from information_schema.tables"
                                + " where table_schema || '.' || table_name = ?";
        try (PreparedStatement statement = connection.prepareStatement(question)) {
            statement.setString(1, table);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next() && rows.getInt(1) > 0;
            }
        }
    }

    /** Applies the missing steps, in the transaction of a connection. */
    void takeMissing(Connection connection) throws SQLException, StockException {
        try (Statement statement = connection.createStatement()) {
            if (make == Make.POSTGRESQL) {
                statement.execute("select pg_advisory_xact_lock(" + LOCK + ")");
            }
            if (!there(connection)) {
                if (make == Make.POSTGRESQL) {
                    statement.execute("create schema if not exists " + schema);
                } else if (wanted.containsAll(ITEMS)) {
                    claim(statement);
                }
                statement.execute(
                        "create table if not exists " + table + " (name varchar(100) primary key)");
            }
            Set<String> done = done(connection);
            for (String step : wanted) {
                if (!done.contains(step)) {
                    for (String each : script(step).split(";", -1)) {
                        statement.execute(each);
                    }
                    statement.execute("insert into " + table + " (name) values ('" + step + "')");
                }
            }
        }
    }

    /** Marks an empty SQLite file as ours; rejects one of another program. */
    private static void claim(Statement statement) throws SQLException, StockException {
        try (ResultSet rows = statement.executeQuery("pragma application_id")) {
            if (rows.next() && rows.getInt(1) == OUR_FILES) {
                return;
            }
        }
        List<String> others = new ArrayList<>();
        try (ResultSet rows =
                statement.executeQuery(
                        "select name from sqlite_master where type = 'table' order by name")) {
            while (rows.next()) {
                others.add(rows.getString(1));
            }
        }
        if (!others.isEmpty()) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the file is a database of another program (tables "
                            + String.join(", ", others)
                            + "); it was left unchanged. Name another file, or give with \"mapping\" the"
                            + " queries for these tables");
        }
        statement.execute("pragma application_id = " + OUR_FILES);
    }

    private String script(String step) {
        String name = make.folder() + "/" + step + ".sql";
        try (InputStream in = SchemaSteps.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the build");
            }
            return new String(in.readAllBytes(), UTF_8)
                    .replace("${schema}", schema)
                    .replace("${tables}", make.tables(schema));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
