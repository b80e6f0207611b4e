package reseat.model;

import java.math.BigDecimal;

/**
 * A consumable used up by one act of the rebuild.
 *
 * @param consumable id of the consumable
 * @param quantity how much, greater than zero
 * @param unit the unit it is counted in ("piece", "mm", "ml")
 */
public record ConsumableUse(String consumable, BigDecimal quantity, String unit) {

    public ConsumableUse {
        if (quantity.signum() <= 0) {
            throw new IllegalArgumentException("a quantity must be greater than zero: " + quantity);
        }
    }
}
