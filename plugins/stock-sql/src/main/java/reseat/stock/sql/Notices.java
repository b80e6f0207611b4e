package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.stock.StockException;

/** Reports where the book and the held quantities disagree. */
final class Notices {

    private final String table;
    private final Book book;
    private final Reservations reservations;

    Notices(String table, Book book, Reservations reservations) {
        this.table = table;
        this.book = book;
        this.reservations = reservations;
    }

    List<String> of(Connection connection) throws SQLException, StockException {
        List<String> told = new ArrayList<>();
        try (PreparedStatement ask =
                        connection.prepareStatement(
                                "select h.item, h.reserved, h.used, q.id as line, q.on_hand from "
                                        + table
                                        + " h left join ("
                                        + book.items()
                                        + ") q on cast(q.id as varchar(200)) = h.item"
                                        + " order by h.item");
                ResultSet rows = ask.executeQuery()) {
            while (rows.next()) {
                boolean gone = rows.getString("line") == null;
                tell(
                        connection,
                        rows.getString("item"),
                        Held.Amounts.of(rows, "reserved", "used"),
                        gone
                                ? Optional.empty()
                                : Optional.ofNullable(
                                        Cells.number(
                                                rows, "on_hand", "line " + rows.getString("item"))),
                        told);
            }
        }
        return told;
    }

    private void tell(
            Connection connection,
            String item,
            Held.Amounts amounts,
            Optional<BigDecimal> onHand,
            List<String> told)
            throws SQLException {
        BigDecimal reserved = amounts.reserved();
        BigDecimal used = amounts.used();
        BigDecimal left = onHand.orElse(BigDecimal.ZERO).subtract(used).max(BigDecimal.ZERO);
        if (reserved.compareTo(left) > 0) {
            told.add(
                    (onHand.isEmpty() ? "line " + item + " is missing, but " : "of " + item + " ")
                            + plain(reserved)
                            + " are reserved ("
                            + String.join(", ", reservations.holders(connection, item))
                            + ")"
                            + (onHand.isEmpty()
                                    ? ". The reservations remain valid."
                                    : ", but only "
                                            + plain(left)
                                            + " are left. The reservations remain valid; count"
                                            + " again or"
                                            + " release one."));
        }
        if (used.signum() > 0) {
            told.add(
                    plain(used)
                            + " of "
                            + item
                            + " were used and are subtracted from the quantities in the shop's"
                            + " tables"
                            + onHand.map(n -> " (" + plain(n) + ")").orElse("")
                            + ". Subtract it there too, then settle "
                            + item
                            + ".");
        }
    }

    private static String plain(BigDecimal number) {
        return Cells.plain(number).toPlainString();
    }
}
