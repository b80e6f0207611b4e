package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How much of each line is reserved, and used without the shop's book knowing. */
final class Held {

    private final String table;

    Held(String schema) {
        this.table = schema + ".held";
    }

    /** What is held of one line. */
    record Amounts(BigDecimal reserved, BigDecimal used) {
        static final Amounts NONE = new Amounts(BigDecimal.ZERO, BigDecimal.ZERO);
    }

    /** Returns what is held of a line, and keeps others from it until the transaction ends. */
    Amounts lock(Connection connection, String item) throws SQLException {
        Amounts known = look(connection, item);
        if (known != null) {
            return known;
        }
        // two clients may do this at once; the database then refuses one, which tries again
        try (PreparedStatement add =
                connection.prepareStatement("insert into " + table + " (item) values (?)")) {
            add.setString(1, item);
            add.executeUpdate();
        }
        return Optional.ofNullable(look(connection, item)).orElse(Amounts.NONE);
    }

    private @Nullable Amounts look(Connection connection, String item) throws SQLException {
        try (PreparedStatement ask =
                connection.prepareStatement(
                        "select reserved, used from " + table + " where item = ? for update")) {
            ask.setString(1, item);
            try (ResultSet rows = ask.executeQuery()) {
                return rows.next()
                        ? new Amounts(rows.getBigDecimal(1), rows.getBigDecimal(2))
                        : null;
            }
        }
    }

    /** Adds to what is held of a line, which was locked before. */
    void add(Connection connection, String item, BigDecimal reserved, BigDecimal used)
            throws SQLException {
        try (PreparedStatement change =
                connection.prepareStatement(
                        "update "
                                + table
                                + " set reserved = reserved + ?, used = used + ? where item = ?")) {
            change.setBigDecimal(1, reserved);
            change.setBigDecimal(2, used);
            change.setString(3, item);
            change.executeUpdate();
        }
    }

    /** Forgets what was used of a line; returns whether it was known. */
    boolean settle(Connection connection, String item) throws SQLException {
        try (PreparedStatement change =
                connection.prepareStatement("update " + table + " set used = 0 where item = ?")) {
            change.setString(1, item);
            return change.executeUpdate() > 0;
        }
    }
}
