package reseat.stock.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import reseat.stock.Reservation;
import reseat.stock.StockItem;

/** The current state that results from a journal. */
final class Ledger {

    private final Map<String, Entry.Reserved> reserved = new LinkedHashMap<>();
    private final Map<String, Reservation> reservations = new LinkedHashMap<>();
    private final Map<String, BigDecimal> held = new TreeMap<>();
    private final Map<String, Use> used = new TreeMap<>();

    /**
     * The quantity of a line used since it was last settled.
     *
     * @param quantity the quantity used
     * @param seen the quantity in the spreadsheet at the first use
     */
    record Use(BigDecimal quantity, BigDecimal seen) {}

    /** Returns a reservation; null if there is none. */
    @Nullable Reservation reservation(String id) {
        return reservations.get(id);
    }

    List<Reservation> open() {
        return reservations.values().stream()
                .filter(each -> each.state() == Reservation.State.RESERVED)
                .toList();
    }

    BigDecimal held(String item) {
        return held.getOrDefault(item, BigDecimal.ZERO);
    }

    BigDecimal used(String item) {
        return Optional.ofNullable(used.get(item)).map(Use::quantity).orElse(BigDecimal.ZERO);
    }

    /** Returns the reserved quantity of each line that has any. */
    Map<String, BigDecimal> held() {
        return held;
    }

    /** Returns the lines with use that is not settled. */
    Map<String, Use> unsettled() {
        return used;
    }

    /** Returns the open reservations of a line. */
    List<String> holders(String item) {
        List<String> ids = new ArrayList<>();
        for (Reservation each : open()) {
            if (each.request().picks().stream().anyMatch(pick -> pick.item().equals(item))) {
                ids.add(each.id());
            }
        }
        return ids;
    }

    void apply(Entry entry) {
        if (entry instanceof Entry.Reserved made) {
            String id = made.request().id();
            reserved.put(id, made);
            reservations.put(id, new Reservation(made.request(), Reservation.State.RESERVED));
            for (Reservation.Pick pick : made.request().picks()) {
                hold(pick.item(), pick.quantity());
            }
        } else if (entry instanceof Entry.Used use) {
            Entry.Reserved made = finish(use.id(), Reservation.State.USED);
            if (made != null) {
                take(made, use);
            }
        } else if (entry instanceof Entry.Released release) {
            finish(release.id(), Reservation.State.RELEASED);
        } else {
            used.remove(((Entry.Settled) entry).item());
        }
    }

    private Entry.@Nullable Reserved finish(String id, Reservation.State state) {
        Entry.Reserved made = reserved.get(id);
        Reservation known = reservations.get(id);
        if (made == null || known == null || known.state() != Reservation.State.RESERVED) {
            return null;
        }
        reservations.put(id, new Reservation(made.request(), state));
        for (Reservation.Pick pick : made.request().picks()) {
            hold(pick.item(), pick.quantity().negate());
        }
        return made;
    }

    private void take(Entry.Reserved made, Entry.Used use) {
        for (Reservation.Pick pick : made.request().picks()) {
            if (made.kinds().get(pick.item()) != StockItem.Kind.TOOL) {
                BigDecimal seen = use.seen().getOrDefault(pick.item(), BigDecimal.ZERO);
                used.merge(
                        pick.item(),
                        new Use(pick.quantity(), seen),
                        (old, more) -> new Use(old.quantity.add(more.quantity), old.seen));
            }
        }
    }

    private void hold(String item, BigDecimal quantity) {
        BigDecimal now = held(item).add(quantity);
        if (now.signum() == 0) {
            held.remove(item);
        } else {
            held.put(item, now);
        }
    }
}
