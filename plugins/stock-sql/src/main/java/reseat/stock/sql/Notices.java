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

/** Tells where the book and what is held of it say different things. */
final class Notices {

    private final String schema;
    private final Book book;
    private final Reservations reservations;

    Notices(String schema, Book book, Reservations reservations) {
        this.schema = schema;
        this.book = book;
        this.reservations = reservations;
    }

    List<String> of(Connection connection) throws SQLException, StockException {
        List<String> told = new ArrayList<>();
        try (PreparedStatement ask =
                        connection.prepareStatement(
                                "select h.item, h.reserved, h.used, q.id, q.on_hand from "
                                        + schema
                                        + ".held h left join ("
                                        + book.items()
                                        + ") q on cast(q.id as varchar(200)) = h.item"
                                        + " where h.reserved > 0 or h.used > 0 order by h.item");
                ResultSet rows = ask.executeQuery()) {
            while (rows.next()) {
                boolean gone = rows.getString(4) == null;
                tell(
                        connection,
                        rows.getString(1),
                        rows.getBigDecimal(2),
                        rows.getBigDecimal(3),
                        gone ? Optional.empty() : Optional.ofNullable(rows.getBigDecimal(5)),
                        told);
            }
        }
        return told;
    }

    private void tell(
            Connection connection,
            String item,
            BigDecimal reserved,
            BigDecimal used,
            Optional<BigDecimal> onHand,
            List<String> told)
            throws SQLException {
        BigDecimal left = onHand.orElse(BigDecimal.ZERO).subtract(used).max(BigDecimal.ZERO);
        if (reserved.compareTo(left) > 0) {
            told.add(
                    (onHand.isEmpty() ? "line " + item + " is gone, but " : "of " + item + " ")
                            + plain(reserved)
                            + " are reserved ("
                            + String.join(", ", reservations.holders(connection, item))
                            + ")"
                            + (onHand.isEmpty()
                                    ? ". The reservations stand."
                                    : ", but only "
                                            + plain(left)
                                            + " are left. The reservations stand; count again or"
                                            + " release one."));
        }
        if (used.signum() > 0) {
            told.add(
                    plain(used)
                            + " of "
                            + item
                            + " were used and are taken off what the shop's tables say"
                            + onHand.map(n -> " (" + plain(n) + ")").orElse("")
                            + ". Take it off there too, then settle "
                            + item
                            + ".");
        }
    }

    private static String plain(BigDecimal number) {
        return Reservations.plain(number).toPlainString();
    }
}
