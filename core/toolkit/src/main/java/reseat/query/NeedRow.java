package reseat.query;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import reseat.stock.StockItem;

/**
 * Something that a plan needs of the stock.
 *
 * @param kind what sort of thing it is
 * @param id id of the part, screw type or consumable
 * @param pointer JSON Pointer of the fact that a finding would be about
 * @param name the name people use
 * @param number the number it is ordered by
 * @param quantity how much is needed
 * @param unit the unit it is counted in
 * @param why why it is needed
 * @param there how much of it is available and good; empty where the stock is not known
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

    /** Tells whether the stock is known and holds too little of it. */
    public boolean isShort() {
        return there.isPresent() && there.get().compareTo(quantity) < 0;
    }
}
