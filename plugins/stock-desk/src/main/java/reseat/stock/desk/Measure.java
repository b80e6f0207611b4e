package reseat.stock.desk;

import java.math.BigDecimal;
import java.util.Map;

/**
 * The quantity that a unit measures, and its power of ten: lengths in mm, volumes in ml, masses in
 * g. An unknown unit measures itself.
 */
record Measure(String of, int power) {

    private static final Map<String, Measure> KNOWN =
            Map.ofEntries(
                    Map.entry("mm", new Measure("length", 0)),
                    Map.entry("cm", new Measure("length", 1)),
                    Map.entry("m", new Measure("length", 3)),
                    Map.entry("ul", new Measure("volume", -3)),
                    Map.entry("ml", new Measure("volume", 0)),
                    Map.entry("cl", new Measure("volume", 1)),
                    Map.entry("dl", new Measure("volume", 2)),
                    Map.entry("l", new Measure("volume", 3)),
                    Map.entry("mg", new Measure("mass", -3)),
                    Map.entry("g", new Measure("mass", 0)),
                    Map.entry("kg", new Measure("mass", 3)));

    static Measure of(String unit) {
        return KNOWN.getOrDefault(unit, new Measure("unit " + unit, 0));
    }

    boolean sameAs(Measure other) {
        return of.equals(other.of);
    }

    /** Returns a quantity of this unit in the basic one; exact. */
    BigDecimal toBasic(BigDecimal quantity) {
        return quantity.scaleByPowerOfTen(power);
    }

    /** Returns a quantity of the basic unit in this one; exact. */
    BigDecimal fromBasic(BigDecimal quantity) {
        return plain(quantity.scaleByPowerOfTen(-power));
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }
}
