package reseat.stock;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A snapshot of one line of a stock: a quantity of one item, of one lot, in one place.
 *
 * @param id id of the line in its stock
 * @param kind the kind of item
 * @param name display name
 * @param serves what it can be taken for: order numbers, ids of consumables and tools, {@code
 *     device/id} for parts and screws without an order number; at least one
 * @param onHand how much lies there, reserved or not; zero or more
 * @param reserved how much of it is reserved for jobs; from zero to {@code onHand}
 * @param unit the unit it is counted in ("piece", "mm", "ml")
 * @param lot the maker's lot
 * @param expires the last day on which it may be used
 * @param place where it lies
 */
public record StockItem(
        String id,
        Kind kind,
        String name,
        List<String> serves,
        BigDecimal onHand,
        BigDecimal reserved,
        String unit,
        Optional<String> lot,
        Optional<LocalDate> expires,
        Optional<String> place) {

    /** The kind of item in a stock. */
    public enum Kind {
        /** A spare part. */
        PART,
        /** Screws of one type. */
        SCREW,
        /** Something that a rebuild uses up. */
        CONSUMABLE,
        /** A tool or a bit, which comes back after use. */
        TOOL
    }

    public StockItem {
        serves = List.copyOf(serves);
        if (serves.isEmpty()) {
            throw new IllegalArgumentException(id + " must list what it serves for");
        }
        if (reserved.signum() < 0 || onHand.compareTo(reserved) < 0) {
            throw new IllegalArgumentException(
                    id + ": of " + onHand + " on hand, " + reserved + " cannot be reserved");
        }
    }

    /** Returns how much is on hand and not reserved; zero or more. */
    public BigDecimal available() {
        return onHand.subtract(reserved);
    }

    /** Returns whether it may still be used on a day. */
    public boolean isGoodOn(LocalDate day) {
        return expires.isEmpty() || !expires.get().isBefore(day);
    }
}
