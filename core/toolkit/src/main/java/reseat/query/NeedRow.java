package reseat.query;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import reseat.stock.StockItem;

/**
 * Something that a plan needs from the stock.
 *
 * @param kind the kind of item
 * @param id id of the part, screw type or consumable
 * @param pointer JSON Pointer for findings about this row
 * @param name display name
 * @param number order number
 * @param quantity how much is needed
 * @param unit the unit it is counted in
 * @param why why it is needed
 * @param there how much of it is available and not expired; empty if the stock is unknown
 * @param expired ids of the lines of the stock that have expired
 */
public record NeedRow(
        StockItem.Kind kind,
        String id,
        String pointer,
        String name,
        Optional<String> number,
        BigDecimal quantity,
        String unit,
        String why,
        Optional<BigDecimal> there,
        List<String> expired) {

    public NeedRow {
        expired = List.copyOf(expired);
    }

    /** Returns whether the stock is known and too small. */
    public boolean isShort() {
        return there.isPresent() && there.get().compareTo(quantity) < 0;
    }
}
