package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Locale;

/** The supported makes of database and their differences. */
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

    /** Returns the prefix of its driver's class name. */
    String driver() {
        return driver;
    }

    /** Returns the prefix of our table names; SQLite has no schemas. */
    String tables(String schema) {
        return schema + afterSchema;
    }

    /** Returns the clause that locks the rows of a query until the transaction ends. */
    String forUpdate() {
        return forUpdate;
    }

    /** Returns the folder of its schema steps. */
    String folder() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Starts a transaction. With SQLite, a writing transaction excludes other writers from the
     * start, so that its reads stay valid.
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

    /** Sets a number in a statement for one of our own tables. */
    void set(PreparedStatement statement, int at, BigDecimal number) throws SQLException {
        if (this == SQLITE) {
            statement.setString(at, Cells.plain(number).toPlainString());
        } else {
            statement.setBigDecimal(at, number);
        }
    }

    /**
     * Sets a number in a statement of a shop. In SQLite, a text is never less than a number, so it
     * must be a number there.
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
