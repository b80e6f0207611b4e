package reseat.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Formats numbers for people. */
public final class NumberText {

    private static final int DECIMALS = 3;

    private NumberText() {}

    /** Returns a number with up to three decimals, without trailing zeros and exponent. */
    public static String of(double value) {
        return of(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
    }

    /** Returns a number with all its decimals, without trailing zeros and exponent. */
    public static String of(BigDecimal value) {
        return value.stripTrailingZeros().toPlainString();
    }

    /** Returns a number rounded to some figures, without trailing zeros and without exponent. */
    public static String figures(double value, int figures) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        return of(new BigDecimal(value).round(new MathContext(figures, RoundingMode.HALF_EVEN)));
    }

    /** Returns millimetres with up to two decimals, such as "0.42 mm". */
    public static String mm(double value) {
        return of(BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN)) + " mm";
    }

    /**
     * Returns a count with its noun.
     *
     * @param n the count
     * @param one the noun for one
     * @param many the noun for any other count
     */
    public static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
