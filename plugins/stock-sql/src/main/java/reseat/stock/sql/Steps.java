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
 * Brings our tables in a database up to date, step by step. A step that was published is never
 * changed; what has to change is a new step. Each is written so that running it twice does no harm,
 * because H2 makes every change of a table final at once.
 */
final class Steps {

    /** Keeps two benches from making the same tables at once; any number that nobody else uses. */
    private static final long LOCK = 7_236_183_225L;

    private static final List<String> RESERVATIONS = List.of("reservations-1");
    private static final List<String> ITEMS = List.of("items-1");

    private final String schema;
    private final List<String> wanted;

    /**
     * @param schema where our tables are
     * @param ownItems whether the lines of the stock are there as well
     */
    Steps(String schema, boolean ownItems) {
        this.schema = schema;
        this.wanted = new ArrayList<>(RESERVATIONS);
        if (ownItems) {
            wanted.addAll(ITEMS);
        }
    }

    /** Takes the steps that are missing; looks only, if there are none. */
    void take(Transactions transactions) throws StockException {
        if (transactions.run("try again", this::done).containsAll(wanted)) {
            return;
        }
        transactions.run(
                "try again",
                connection -> {
                    takeMissing(connection, transactions.database().kind());
                    return true;
                });
    }

    private Set<String> done(Connection connection) throws SQLException, StockException {
        if (!there(connection)) {
            return Set.of();
        }
        Set<String> done = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select name from " + schema + ".step")) {
            while (rows.next()) {
                done.add(rows.getString(1));
            }
        }
        Set<String> unknown = new TreeSet<>(done);
        RESERVATIONS.forEach(unknown::remove);
        ITEMS.forEach(unknown::remove);
        if (!unknown.isEmpty()) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "the tables in the schema "
                            + schema
                            + " were made by a newer Reseat (steps "
                            + String.join(", ", unknown)
                            + "); use that one");
        }
        return done;
    }

    private boolean there(Connection connection) throws SQLException {
        String question =
                "select count(*) from information_schema.tables where lower(table_schema) = ?"
                        + " and lower(table_name) = 'step'";
        try (PreparedStatement statement = connection.prepareStatement(question)) {
            statement.setString(1, schema);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next() && rows.getInt(1) > 0;
            }
        }
    }

    private void takeMissing(Connection connection, Database.Kind kind)
            throws SQLException, StockException {
        try (Statement statement = connection.createStatement()) {
            if (kind == Database.Kind.POSTGRESQL) {
                statement.execute("select pg_advisory_xact_lock(" + LOCK + ")");
            }
            if (!there(connection)) {
                statement.execute("create schema if not exists " + schema);
                statement.execute(
                        "create table if not exists "
                                + schema
                                + ".step (name varchar(100) primary key)");
            }
            Set<String> done = done(connection);
            for (String step : wanted) {
                if (!done.contains(step)) {
                    for (String each : script(step).split(";", -1)) {
                        statement.execute(each);
                    }
                    statement.execute(
                            "insert into " + schema + ".step (name) values ('" + step + "')");
                }
            }
        }
    }

    private String script(String step) {
        try (InputStream in = Steps.class.getResourceAsStream(step + ".sql")) {
            if (in == null) {
                throw new IllegalStateException(step + ".sql is missing from the build");
            }
            return new String(in.readAllBytes(), UTF_8).replace("${schema}", schema);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
