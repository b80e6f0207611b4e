package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import reseat.stock.FillableStock;
import reseat.stock.Reservation;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** A stock whose lines are in our own table. */
final class OwnStock extends SqlStock implements FillableStock {

    private static final List<String> COLUMNS =
            List.of("kind", "name", "serves", "on_hand", "unit", "lot", "expires", "place", "id");

    private final String update;
    private final String insert;
    private final String take;
    private final Make make;

    OwnStock(Transactions transactions, String schema, List<String> notes) {
        super(transactions, schema, Book.own(transactions.database().make(), schema), notes);
        this.make = transactions.database().make();
        String table = make.tables(schema) + "item";
        this.update =
                "update "
                        + table
                        + " set "
                        + String.join(" = ?, ", COLUMNS.subList(0, COLUMNS.size() - 1))
                        + " = ? where id = ?";
        this.insert =
                "insert into "
                        + table
                        + " ("
                        + String.join(", ", COLUMNS)
                        + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?)";
        this.take = "update " + table + " set on_hand = ? where id = ?";
    }

    @Override
    public void put(List<StockItem> lines) throws StockException {
        for (StockItem line : lines) {
            for (String each : line.serves()) {
                if (each.isBlank() || each.indexOf('|') >= 0) {
                    throw new StockException(
                            StockException.Kind.BAD_INPUT,
                            line.id() + " serves for \"" + each + "\", which must not contain a |");
                }
            }
        }
        List<StockItem> ordered =
                lines.stream().sorted(Comparator.comparing(StockItem::id)).toList();
        transactions()
                .run(
                        "try again",
                        connection -> {
                            for (StockItem line : ordered) {
                                put(connection, line);
                            }
                            return true;
                        });
    }

    private void put(Connection connection, StockItem line) throws SQLException, StockException {
        Held.Amounts amounts = held().lock(connection, line.id());
        if (line.onHand().compareTo(amounts.reserved()) < 0) {
            throw new StockException(
                    StockException.Kind.CONFLICT,
                    "of "
                            + line.id()
                            + " "
                            + Cells.plain(amounts.reserved()).toPlainString()
                            + " are reserved, so that there cannot be "
                            + line.onHand().toPlainString()
                            + " on hand; nothing was changed");
        }
        if (run(connection, update, line) == 0) {
            run(connection, insert, line);
        }
    }

    @Override
    boolean taken(Connection connection, Reservation.Pick pick)
            throws SQLException, StockException {
        StockItem line = locked(connection, pick.item(), Held.Amounts.NONE);
        BigDecimal left = line.onHand().subtract(pick.quantity());
        if (left.signum() < 0) {
            throw new StockException(
                    StockException.Kind.CONFLICT,
                    "of "
                            + line.id()
                            + " only "
                            + line.onHand().toPlainString()
                            + " are on hand, so that "
                            + pick.quantity().toPlainString()
                            + " cannot have been used; count again. Nothing was done");
        }
        try (PreparedStatement change = connection.prepareStatement(take)) {
            make.set(change, 1, left);
            change.setString(2, line.id());
            change.executeUpdate();
        }
        return true;
    }

    private int run(Connection connection, String sql, StockItem line) throws SQLException {
        try (PreparedStatement change = connection.prepareStatement(sql)) {
            change.setString(1, line.kind().name().toLowerCase(Locale.ROOT));
            change.setString(2, line.name());
            change.setString(3, String.join("|", line.serves()));
            make.set(change, 4, line.onHand());
            change.setString(5, line.unit());
            change.setString(6, line.lot().orElse(null));
            if (line.expires().isPresent()) {
                make.set(change, 7, line.expires().get());
            } else {
                change.setNull(7, Types.DATE);
            }
            change.setString(8, line.place().orElse(null));
            change.setString(9, line.id());
            return change.executeUpdate();
        }
    }
}
