package reseat.stock.sql;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import reseat.stock.FillableStock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** A stock whose lines are in our own table. */
final class OwnStock extends SqlStock implements FillableStock {

    private static final List<String> COLUMNS =
            List.of("kind", "name", "serves", "on_hand", "unit", "lot", "expires", "place", "id");

    private final String update;
    private final String insert;

    OwnStock(Transactions transactions, String schema) {
        super(transactions, schema, Book.own(schema));
        this.update =
                "update "
                        + schema
                        + ".item set "
                        + String.join(" = ?, ", COLUMNS.subList(0, COLUMNS.size() - 1))
                        + " = ? where id = ?";
        this.insert =
                "insert into "
                        + schema
                        + ".item ("
                        + String.join(", ", COLUMNS)
                        + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?)";
    }

    @Override
    public void put(List<StockItem> lines) throws StockException {
        for (StockItem line : lines) {
            for (String each : line.serves()) {
                if (each.isBlank() || each.indexOf('|') >= 0) {
                    throw new StockException(
                            StockException.Kind.BAD_INPUT,
                            line.id() + " serves for \"" + each + "\", which has a | in it");
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
                            + Reservations.plain(amounts.reserved()).toPlainString()
                            + " are reserved, so that there cannot be "
                            + line.onHand().toPlainString()
                            + " on hand; nothing was changed");
        }
        if (run(connection, update, line) == 0) {
            run(connection, insert, line);
        }
    }

    private static int run(Connection connection, String sql, StockItem line) throws SQLException {
        try (PreparedStatement change = connection.prepareStatement(sql)) {
            change.setString(1, line.kind().name().toLowerCase(Locale.ROOT));
            change.setString(2, line.name());
            change.setString(3, String.join("|", line.serves()));
            change.setBigDecimal(4, line.onHand());
            change.setString(5, line.unit());
            change.setString(6, line.lot().orElse(null));
            if (line.expires().isPresent()) {
                change.setObject(7, line.expires().get());
            } else {
                change.setNull(7, Types.DATE);
            }
            change.setString(8, line.place().orElse(null));
            change.setString(9, line.id());
            return change.executeUpdate();
        }
    }
}
