package reseat.stock.sql;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import reseat.stock.Reservation;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.State;
import reseat.stock.SettlingStock;
import reseat.stock.StockException;
import reseat.stock.StockException.Kind;
import reseat.stock.StockItem;

/**
 * A stock in a database. Each request is one transaction; lines are locked in the order of their
 * ids, so that requests cannot deadlock.
 */
class SqlStock implements SettlingStock {

    private static final Comparator<Pick> LOCK_ORDER = Comparator.comparing(Pick::item);
    private static final int MOST_DECIMALS = 12;

    private final Transactions transactions;
    private final String heldTable;
    private final Book book;
    private final List<String> notes;
    private final Held held;
    private final Reservations reservations;

    SqlStock(Transactions transactions, String schema, Book book, List<String> notes) {
        this.transactions = transactions;
        this.book = book;
        this.notes = notes;
        Make make = transactions.database().make();
        this.heldTable = make.tables(schema) + "held";
        this.held = new Held(make, schema);
        this.reservations = new Reservations(make, schema);
    }

    Transactions transactions() {
        return transactions;
    }

    Held held() {
        return held;
    }

    @Override
    public List<StockItem> items() throws StockException {
        List<StockItem> items =
                transactions.look(
                        connection -> {
                            List<StockItem> found = new ArrayList<>();
                            try (PreparedStatement ask =
                                            connection.prepareStatement(book.all(heldTable));
                                    ResultSet rows = ask.executeQuery()) {
                                while (rows.next()) {
                                    Held.Amounts amounts =
                                            Held.Amounts.of(rows, "h_reserved", "h_used");
                                    found.add(plain(book.line(rows, amounts)));
                                }
                            }
                            return found;
                        });
        items.sort(Comparator.comparing(StockItem::id));
        for (int i = 1; i < items.size(); i++) {
            if (items.get(i).id().equals(items.get(i - 1).id())) {
                throw new StockException(
                        Kind.BAD_INPUT,
                        "the query \"items\" has two rows with the id " + items.get(i).id());
            }
        }
        return List.copyOf(items);
    }

    @Override
    public Reservation reserve(Reservation.Request request) throws StockException {
        for (Pick pick : request.picks()) {
            if (pick.quantity().scale() > MOST_DECIMALS) {
                throw new StockException(
                        Kind.BAD_INPUT,
                        pick.item() + ": a quantity has " + MOST_DECIMALS + " decimals at most");
            }
        }
        return transactions.run(
                again("reserve it", request.id()), connection -> reserve(connection, request));
    }

    private Reservation reserve(Connection connection, Reservation.Request request)
            throws SQLException, StockException {
        Optional<Reservations.Row> before = reservations.find(connection, request.id());
        if (before.isPresent()) {
            Reservation known = before.get().reservation();
            if (!known.request().equals(request)) {
                throw new StockException(
                        Kind.CONFLICT,
                        "the id \""
                                + request.id()
                                + "\" already belongs to another reservation (job "
                                + known.request().job()
                                + "); choose another id");
            }
            return known;
        }
        reservations.add(connection, request);
        for (Pick pick : request.picks().stream().sorted(LOCK_ORDER).toList()) {
            Held.Amounts amounts = held.lock(connection, pick.item());
            StockItem line = locked(connection, pick.item(), amounts);
            if (line.available().compareTo(pick.quantity()) < 0) {
                throw new StockException(
                        Kind.SHORT,
                        "of "
                                + line.id()
                                + " ("
                                + line.name()
                                + ") "
                                + pick.quantity().toPlainString()
                                + " "
                                + line.unit()
                                + " are requested and "
                                + line.available().toPlainString()
                                + " available ("
                                + line.reserved().toPlainString()
                                + " reserved); nothing was reserved");
            }
            held.add(connection, pick.item(), amounts, pick.quantity(), BigDecimal.ZERO);
            reservations.addPick(
                    connection,
                    request.id(),
                    request.picks().indexOf(pick),
                    pick,
                    line.kind() == StockItem.Kind.TOOL);
        }
        return new Reservation(request, State.RESERVED);
    }

    /** Returns a line and keeps others from changing it, as far as the shop's tables allow. */
    final StockItem locked(Connection connection, String item, Held.Amounts amounts)
            throws SQLException, StockException {
        if (book.lock().isPresent()) {
            run(book.lock().get(), connection, item, BigDecimal.ZERO);
        }
        try (PreparedStatement ask = connection.prepareStatement(book.one())) {
            ask.setString(1, item);
            try (ResultSet rows = ask.executeQuery()) {
                if (!rows.next()) {
                    throw new StockException(
                            Kind.UNKNOWN,
                            "the stock has no line \"" + item + "\"; nothing was reserved");
                }
                return plain(book.line(rows, amounts));
            }
        }
    }

    @Override
    public Reservation use(String reservation) throws StockException {
        return transactions.run(
                again("use it", reservation),
                connection -> finish(connection, reservation, State.USED));
    }

    @Override
    public Reservation release(String reservation) throws StockException {
        return transactions.run(
                again("release it", reservation),
                connection -> finish(connection, reservation, State.RELEASED));
    }

    private Reservation finish(Connection connection, String id, State state)
            throws SQLException, StockException {
        reservations.lock(connection, id);
        Reservations.Row row =
                reservations
                        .find(connection, id)
                        .orElseThrow(
                                () ->
                                        new StockException(
                                                Kind.UNKNOWN,
                                                "there is no reservation \"" + id + "\""));
        Reservation known = row.reservation();
        if (known.state() == state) {
            return known;
        }
        if (known.state() != State.RESERVED) {
            throw new StockException(
                    Kind.CONFLICT,
                    "the reservation \""
                            + id
                            + "\" was "
                            + (state == State.USED ? "released" : "used")
                            + " already");
        }
        for (Pick pick : known.request().picks().stream().sorted(LOCK_ORDER).toList()) {
            Held.Amounts amounts = held.lock(connection, pick.item());
            boolean goes = state == State.USED && !row.comeBack().contains(pick.item());
            BigDecimal used = goes && !taken(connection, pick) ? pick.quantity() : BigDecimal.ZERO;
            held.add(connection, pick.item(), amounts, pick.quantity().negate(), used);
        }
        reservations.set(connection, id, state);
        return new Reservation(known.request(), state);
    }

    /** Subtracts used quantities from the book; returns whether it did. */
    boolean taken(Connection connection, Pick pick) throws SQLException, StockException {
        if (book.take().isEmpty()) {
            return false;
        }
        int rows = run(book.take().get(), connection, pick.item(), pick.quantity());
        if (rows != 1) {
            throw new StockException(
                    Kind.CONFLICT,
                    "the statement that subtracts "
                            + pick.item()
                            + " changed "
                            + Math.max(0, rows)
                            + " rows instead of one; nothing was done");
        }
        return true;
    }

    private int run(Query query, Connection connection, String item, BigDecimal quantity)
            throws SQLException {
        return query.run(transactions.database().make(), connection, item, quantity);
    }

    @Override
    public Optional<Reservation> reservation(String id) throws StockException {
        return transactions.look(
                connection -> reservations.find(connection, id).map(Reservations.Row::reservation));
    }

    @Override
    public List<Reservation> open() throws StockException {
        return transactions.look(reservations::open);
    }

    @Override
    public List<String> openingNotes() {
        return notes;
    }

    @Override
    public List<String> notices() throws StockException {
        return transactions.look(new Notices(heldTable, book, reservations)::of);
    }

    @Override
    public void settle(String item) throws StockException {
        transactions.run(
                "try again",
                connection -> {
                    if (!held.settle(connection, item)) {
                        locked(connection, item, Held.Amounts.NONE);
                    }
                    return true;
                });
    }

    @Override
    public void close() {
        transactions.close();
    }

    private static String again(String what, String id) {
        return "it is not known whether the last request was carried out: "
                + what
                + " again with the same id \""
                + id
                + "\"";
    }

    private static StockItem plain(StockItem item) {
        return new StockItem(
                item.id(),
                item.kind(),
                item.name(),
                item.serves(),
                Cells.plain(item.onHand()),
                Cells.plain(item.reserved()),
                item.unit(),
                item.lot(),
                item.expires(),
                item.place());
    }
}
