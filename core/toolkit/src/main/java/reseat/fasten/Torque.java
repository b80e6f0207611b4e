package reseat.fasten;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A torque in the unit that it was told in; nothing is lost by conversion.
 *
 * @param amount number of units, above 0
 */
public record Torque(BigDecimal amount, TorqueUnit unit) {

    private static final TorqueUnit NEWTON_METRE = new TorqueUnit("N·m", BigDecimal.ONE, "SI");

    public Torque {
        if (amount.signum() <= 0) {
            throw new FastenerInputException(
                    "A torque is above 0; found "
                            + amount.toPlainString()
                            + " "
                            + unit.name()
                            + ".");
        }
    }

    /** Returns a torque of newton metres. */
    public static Torque newtonMetres(double value) {
        return new Torque(BigDecimal.valueOf(value), NEWTON_METRE);
    }

    /** Returns the exact number of newton metres. */
    public BigDecimal newtonMetres() {
        return amount.multiply(unit.newtonMetres()).stripTrailingZeros();
    }

    /** Returns newton metres as a number to compute with. */
    public double nm() {
        return newtonMetres().doubleValue();
    }

    /**
     * Returns the number of another unit: exact where it has an end, else rounded to 34 figures.
     *
     * @param wanted the other unit
     */
    public BigDecimal in(TorqueUnit wanted) {
        BigDecimal newtonMetres = newtonMetres();
        try {
            BigDecimal exact = newtonMetres.divide(wanted.newtonMetres());
            return exact.stripTrailingZeros();
        } catch (ArithmeticException endless) {
            return newtonMetres
                    .divide(wanted.newtonMetres(), MathContext.DECIMAL128)
                    .stripTrailingZeros();
        }
    }

    /** Returns the same torque in another unit; see {@link #in}. */
    public Torque to(TorqueUnit wanted) {
        return new Torque(in(wanted), wanted);
    }

    /** Returns number and unit. */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + unit.name();
    }
}
