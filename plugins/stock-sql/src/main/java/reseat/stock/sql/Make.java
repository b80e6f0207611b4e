package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Locale;

/** The makes of database that are supported, and where they differ. */
enum Make {
    /** Runs inside this program; one file. */
    SQLITE("org.sqlite.", "_", ""),
    /** A server. */
    POSTGRESQL("org.postgresql.", ".", " for update");

    private final String driver;
    private final String afterSchema;
    private final String forUpdate;

    Make(String driver, String afterSchema, String forUpdate) {
        this.driver = driver;
        this.afterSchema = afterSchema;
        this.forUpdate = forUpdate;
    }

    /** Returns how the class name of its driver begins. */
    String driver() {
        return driver;
    }

    /** Returns what the names of our tables begin with; SQLite has no schemas. */
    String tables(String schema) {
        return schema + afterSchema;
    }

    /** Returns what ends a query whose rows others must leave alone until the transaction ends. */
    String forUpdate() {
        return forUpdate;
    }

    /** Returns the folder of its schema steps. */
    String folder() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Starts a transaction. With SQLite, one that writes keeps other writers out from the start, so
     * that what it has read stays true.
     */
    void begin(Connection connection, boolean writes) throws SQLException {
        if (this == SQLITE) {
            execute(connection, writes ? "begin immediate" : "begin");
        }
    }

    void commit(Connection connection) throws SQLException {
        if (this == SQLITE) {
            execute(connection, "commit");
        } else {
            connection.commit();
        }
    }

    void rollBack(Connection connection) throws SQLException {
        if (this == SQLITE) {
            execute(connection, "rollback");
        } else {
            connection.rollback();
        }
    }

    /** Sets a number of one of our own tables. */
    void set(PreparedStatement statement, int at, BigDecimal number) throws SQLException {
        if (this == SQLITE) {
            statement.setString(at, Cells.plain(number).toPlainString());
        } else {
            statement.setBigDecimal(at, number);
        }
    }

    /**
     * Sets a number in a statement of a shop. To SQLite, a text is never less than a number, so it
     * has to be a number there.
     */
    void setForShop(PreparedStatement statement, int at, BigDecimal number) throws SQLException {
        if (this == POSTGRESQL) {
            statement.setBigDecimal(at, number);
        } else if (Cells.plain(number).scale() == 0 && number.precision() <= 18) {
            statement.setLong(at, number.longValueExact());
        } else {
            statement.setDouble(at, number.doubleValue());
        }
    }

    void set(PreparedStatement statement, int at, LocalDate day) throws SQLException {
        if (this == SQLITE) {
            statement.setString(at, day.toString());
        } else {
            statement.setObject(at, day);
        }
    }

    private static void execute(Connection connection, String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
