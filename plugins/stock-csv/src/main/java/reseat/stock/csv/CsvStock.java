package reseat.stock.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.stock.Reservation;
import reseat.stock.SettlingStock;
import reseat.stock.StockException;
import reseat.stock.StockException.Kind;
import reseat.stock.StockItem;

/**
 * A spreadsheet that the shop edits, with our journal of reservations. The spreadsheet is never
 * written here, so no edit can be lost; it is read again for each query, so no edit is missed. Used
 * quantities are subtracted from the spreadsheet's until somebody settles them.
 */
final class CsvStock implements SettlingStock {

    private final SheetFile sheet;
    private final Journal journal;
    private final Turn turn;
    private Ledger ledger = new Ledger();

    CsvStock(SheetFile sheet, Journal journal, Turn turn) {
        this.sheet = sheet;
        this.journal = journal;
        this.turn = turn;
    }

    @Override
    public List<StockItem> items() throws StockException {
        return turn.look(
                () -> {
                    Ledger known = ledger();
                    return sheet.read().rows().values().stream()
                            .map(row -> withLedger(row, known))
                            .toList();
                });
    }

    @Override
    public Reservation reserve(Reservation.Request request) throws StockException {
        return turn.take(
                () -> {
                    Ledger known = ledger();
                    Reservation before = known.reservation(request.id());
                    if (before != null) {
                        return same(before, request);
                    }
                    Map<String, StockItem> rows = sheet.read().rows();
                    Map<String, StockItem.Kind> kinds = new LinkedHashMap<>();
                    List<String> unknown = new ArrayList<>();
                    List<String> tooLittle = new ArrayList<>();
                    for (Reservation.Pick pick : request.picks()) {
                        StockItem row = rows.get(pick.item());
                        if (row == null) {
                            unknown.add("\"" + pick.item() + "\"");
                            continue;
                        }
                        StockItem now = withLedger(row, known);
                        kinds.put(row.id(), row.kind());
                        if (now.available().compareTo(pick.quantity()) < 0) {
                            tooLittle.add(shortage(now, pick));
                        }
                    }
                    if (!unknown.isEmpty()) {
                        throw new StockException(
                                Kind.UNKNOWN,
                                sheet.file()
                                        + " has no line "
                                        + String.join(", ", unknown)
                                        + "; nothing was reserved");
                    }
                    if (!tooLittle.isEmpty()) {
                        throw new StockException(
                                Kind.SHORT,
                                String.join("; ", tooLittle) + "; nothing was reserved");
                    }
                    write(new Entry.Reserved(request, kinds));
                    return new Reservation(request, Reservation.State.RESERVED);
                });
    }

    private static String shortage(StockItem now, Reservation.Pick pick) {
        return "of "
                + now.id()
                + " ("
                + now.name()
                + ") "
                + pick.quantity().toPlainString()
                + " "
                + now.unit()
                + " are requested and "
                + now.available().toPlainString()
                + " available ("
                + now.reserved().toPlainString()
                + " reserved)";
    }

    private static Reservation same(Reservation before, Reservation.Request request)
            throws StockException {
        if (!before.request().equals(request)) {
            throw new StockException(
                    Kind.CONFLICT,
                    "the id \""
                            + request.id()
                            + "\" already belongs to another reservation (job "
                            + before.request().job()
                            + "); choose another id");
        }
        return before;
    }

    @Override
    public Reservation use(String reservation) throws StockException {
        return finish(reservation, Reservation.State.USED);
    }

    @Override
    public Reservation release(String reservation) throws StockException {
        return finish(reservation, Reservation.State.RELEASED);
    }

    private Reservation finish(String id, Reservation.State state) throws StockException {
        return turn.take(
                () -> {
                    Reservation known = ledger().reservation(id);
                    if (known == null) {
                        throw new StockException(
                                Kind.UNKNOWN, "there is no reservation \"" + id + "\"");
                    }
                    if (known.state() == state) {
                        return known;
                    }
                    if (known.state() != Reservation.State.RESERVED) {
                        throw new StockException(
                                Kind.CONFLICT,
                                "the reservation \""
                                        + id
                                        + "\" was "
                                        + (state == Reservation.State.USED ? "released" : "used")
                                        + " already");
                    }
                    write(
                            state == Reservation.State.USED
                                    ? new Entry.Used(id, seen(known))
                                    : new Entry.Released(id));
                    return new Reservation(known.request(), state);
                });
    }

    private Map<String, BigDecimal> seen(Reservation reservation) throws StockException {
        Sheet now = sheet.read();
        Map<String, BigDecimal> seen = new LinkedHashMap<>();
        for (Reservation.Pick pick : reservation.request().picks()) {
            seen.put(pick.item(), now.quantity(pick.item()));
        }
        return seen;
    }

    @Override
    public Optional<Reservation> reservation(String id) throws StockException {
        return turn.look(() -> Optional.ofNullable(ledger().reservation(id)));
    }

    @Override
    public List<Reservation> open() throws StockException {
        return turn.look(() -> ledger().open());
    }

    @Override
    public List<String> notices() throws StockException {
        return turn.look(() -> Notices.of(ledger(), sheet.read()));
    }

    @Override
    public void settle(String item) throws StockException {
        turn.take(
                () -> {
                    boolean open = ledger().unsettled().containsKey(item);
                    if (open) {
                        write(new Entry.Settled(item));
                    } else if (!sheet.read().rows().containsKey(item)) {
                        throw new StockException(
                                Kind.UNKNOWN,
                                "neither the spreadsheet nor the journal has a line \""
                                        + item
                                        + "\"");
                    }
                    return open;
                });
    }

    @Override
    public void close() {
        // no resources are held between queries
    }

    private void write(Entry entry) throws StockException {
        journal.add(entry);
        ledger.apply(entry);
    }

    private Ledger ledger() throws StockException {
        Journal.News news = journal.news();
        if (news.anew()) {
            ledger = new Ledger();
        }
        news.entries().forEach(ledger::apply);
        return ledger;
    }

    private static StockItem withLedger(StockItem row, Ledger known) {
        BigDecimal onHand = row.onHand().subtract(known.used(row.id())).max(BigDecimal.ZERO);
        return new StockItem(
                row.id(),
                row.kind(),
                row.name(),
                row.serves(),
                onHand,
                known.held(row.id()).min(onHand),
                row.unit(),
                row.lot(),
                row.expires(),
                row.place());
    }
}
