package reseat.fasten;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A torque in the unit in which it was given; conversion is exact.
 *
 * @param amount number of units, above 0
 */
public record Torque(BigDecimal amount, TorqueUnit unit) {

    private static final TorqueUnit NEWTON_METRE = new TorqueUnit("N·m", BigDecimal.ONE, "SI");

    public Torque {
        if (amount.signum() <= 0) {
            throw new FastenerInputException(
                    "A torque must be above 0; found "
                            + amount.toPlainString()
                            + " "
                            + unit.name()
                            + ".");
        }
    }

    /** Returns a torque in newton metres. */
    public static Torque newtonMetres(double value) {
        return new Torque(BigDecimal.valueOf(value), NEWTON_METRE);
    }

    /** Returns the exact value in newton metres. */
    public BigDecimal newtonMetres() {
        return amount.multiply(unit.newtonMetres()).stripTrailingZeros();
    }

    /** Returns the value in newton metres as a double. */
    public double nm() {
        return newtonMetres().doubleValue();
    }

    /**
     * Returns the value in another unit: exact if its decimal expansion ends, else rounded to 34
     * digits.
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
