package reseat.stock.desk;

import java.math.BigDecimal;
import java.util.List;
import reseat.stock.StockItem;

/**
 * Something that a plan needs from a stock.
 *
 * @param kind the kind of item
 * @param id id of the part, the screw type, the consumable or the tool
 * @param name display name
 * @param takes what a line of the stock must serve for, any of these: the order number where there
 *     is one, else {@code device/id}; for consumables and tools the id itself as well, and for a
 *     driver the drive that it turns; at least one
 * @param quantity how much, greater than zero
 * @param unit the unit it is counted in
 * @param reason why it is needed
 */
record StockNeed(
        StockItem.Kind kind,
        String id,
        String name,
        List<String> takes,
        BigDecimal quantity,
        String unit,
        Reason reason) {

    /** Why a plan needs something. */
    public enum Reason {
        /** It replaces a part that the plan takes off. */
        TARGET,
        /** It replaces a part that the work destroys. */
        RUINED,
        /** It replaces a screw whose locking patch is spent. */
        LOCKING_PATCH,
        /** The rebuild uses it up. */
        CONSUMED,
        /** The work is done with it; it comes back. */
        WORK
    }

    public StockNeed {
        takes = List.copyOf(takes);
        if (takes.isEmpty()) {
            throw new IllegalArgumentException(id + ": a need must list what can serve it");
        }
        if (quantity.signum() <= 0) {
            throw new IllegalArgumentException(
                    id + ": a need must be greater than zero, not " + quantity);
        }
    }

    /** Returns whether a line of a stock serves this need, whatever its quantity. */
    public boolean servedBy(StockItem item) {
        return item.kind() == kind && takes.stream().anyMatch(item.serves()::contains);
    }
}
