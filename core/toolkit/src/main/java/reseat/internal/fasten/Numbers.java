package reseat.internal.fasten;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Formats numbers for people. */
public final class Numbers {

    private Numbers() {}

    /** Returns a number with at most six digits and no trailing zeros. */
    public static String plain(double number) {
        return figures(number, 6);
    }

    /** Returns a number rounded to some significant digits. */
    public static String figures(double number, int figures) {
        if (!Double.isFinite(number)) {
            return String.valueOf(number);
        }
        BigDecimal rounded =
                new BigDecimal(number)
                        .round(new MathContext(figures, RoundingMode.HALF_EVEN))
                        .stripTrailingZeros();
        return rounded.toPlainString();
    }

    /** Returns millimetres with two decimals, such as "0.42 mm". */
    public static String mm(double number) {
        return BigDecimal.valueOf(number)
                        .setScale(2, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }
}
