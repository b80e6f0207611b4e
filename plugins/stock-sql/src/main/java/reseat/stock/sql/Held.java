package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.stock.StockException;

/** The quantity of each line that is reserved, and used but not yet settled. */
final class Held {

    private final Make make;
    private final String table;

    Held(Make make, String schema) {
        this.make = make;
        this.table = make.tables(schema) + "held";
    }

    /** The held quantities of one line. */
    record Amounts(BigDecimal reserved, BigDecimal used) {
        static final Amounts NONE = new Amounts(BigDecimal.ZERO, BigDecimal.ZERO);

        /** Reads them from two numeric columns. */
        static Amounts of(ResultSet row, String reserved, String used)
                throws SQLException, StockException {
            return new Amounts(
                    Objects.requireNonNull(Cells.number(row, reserved, "held quantities")),
                    Objects.requireNonNull(Cells.number(row, used, "held quantities")));
        }
    }

    /** Returns the held quantities of a line, and locks them until the transaction ends. */
    Amounts lock(Connection connection, String item) throws SQLException, StockException {
        Amounts known = look(connection, item);
        if (known != null) {
            return known;
        }
        // two clients may do this at once; the database then rejects one, which retries
        try (PreparedStatement add =
                connection.prepareStatement("insert into " + table + " (item) values (?)")) {
            add.setString(1, item);
            add.executeUpdate();
        }
        return Optional.ofNullable(look(connection, item)).orElse(Amounts.NONE);
    }

    private @Nullable Amounts look(Connection connection, String item)
            throws SQLException, StockException {
        try (PreparedStatement ask =
                connection.prepareStatement(
                        "select reserved, used from "
                                + table
                                + " where item = ?"
                                + make.forUpdate())) {
            ask.setString(1, item);
            try (ResultSet rows = ask.executeQuery()) {
                return rows.next() ? Amounts.of(rows, "reserved", "used") : null;
            }
        }
    }

    /**
     * Adds to the held quantities of a line.
     *
     * @param before what {@link #lock} returned in this transaction
     */
    void add(
            Connection connection,
            String item,
            Amounts before,
            BigDecimal reserved,
            BigDecimal used)
            throws SQLException {
        try (PreparedStatement change =
                connection.prepareStatement(
                        "update " + table + " set reserved = ?, used = ? where item = ?")) {
            make.set(change, 1, before.reserved().add(reserved));
            make.set(change, 2, before.used().add(used));
            change.setString(3, item);
            change.executeUpdate();
        }
    }

    /** Resets the used quantity of a line; returns whether there was any. */
    boolean settle(Connection connection, String item) throws SQLException {
        try (PreparedStatement change =
                connection.prepareStatement("update " + table + " set used = ? where item = ?")) {
            make.set(change, 1, BigDecimal.ZERO);
            change.setString(2, item);
            return change.executeUpdate() > 0;
        }
    }
}
