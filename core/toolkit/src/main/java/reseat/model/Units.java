package reseat.model;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Parses lengths, torques and times as shops write them. Every factor is exact: an inch is 25.4 mm,
 * a pound-force 4.4482216152605 N and a kilogram-force 9.80665 N by definition, so nothing is
 * rounded here.
 */
public final class Units {

    /** The quantity that a unit measures. */
    public enum Quantity {
        /** Converted to millimetres. */
        LENGTH("length", "1.6 mm"),
        /** Converted to newton metres. */
        TORQUE("torque", "0.06 N·m"),
        /** Converted to milliseconds. */
        TIME("time", "4.2 s");

        private final String noun;
        private final String example;

        Quantity(String noun, String example) {
            this.noun = noun;
            this.example = example;
        }

        /** Returns the word for it, in lower case. */
        public String noun() {
            return noun;
        }
    }

    /** Longer texts are not quantities. Keeps out numbers with thousands of digits. */
    private static final int MAX_TEXT = 64;

    private static final Pattern TEXT =
            Pattern.compile(
                    "([-+]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?)\\s*(.*)");

    /** A number with a decimal comma, and the rest. */
    private static final Pattern COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+([^0-9,.].*)?");

    private static final Map<Quantity, Map<String, BigDecimal>> FACTORS =
            Map.of(
                    Quantity.LENGTH,
                            table(
                                    "mm", "1", "cm", "10", "m", "1000", "µm", "0.001", "um",
                                    "0.001", "in", "25.4"),
                    Quantity.TORQUE,
                            table(
                                    "N·m", "1",
                                    "mN·m", "0.001",
                                    "N·cm", "0.01",
                                    "N·mm", "0.001",
                                    "kgf·m", "9.80665",
                                    "kgf·cm", "0.0980665",
                                    "gf·cm", "0.0000980665",
                                    "ozf·in", "0.00706155181422604375",
                                    "lbf·in", "0.1129848290276167",
                                    "lbf·ft", "1.3558179483314004",
                                    "dyn·cm", "0.0000001"),
                    Quantity.TIME, table("ms", "1", "s", "1000", "min", "60000", "h", "3600000"));

    private Units() {}

    private static Map<String, BigDecimal> table(String... unitsAndFactors) {
        Map<String, BigDecimal> table = new LinkedHashMap<>();
        for (int i = 0; i < unitsAndFactors.length; i += 2) {
            table.put(unitsAndFactors[i], new BigDecimal(unitsAndFactors[i + 1]));
        }
        return table;
    }

    /**
     * Returns a length in millimetres.
     *
     * @param text a number with a unit, such as {@code 1.6 mm} or {@code 0.1in}
     * @throws IllegalArgumentException with a sentence for the user if it is not one
     */
    public static BigDecimal lengthMm(String text) {
        return convert(Quantity.LENGTH, text);
    }

    /**
     * Returns a torque in newton metres.
     *
     * @param text a number with a unit, such as {@code 0.06 N·m}, {@code 6 N.cm} or {@code 8 ozf
     *     in}; the dot between force and arm may be {@code ·}, {@code .}, {@code *}, a hyphen, a
     *     space or nothing
     * @throws IllegalArgumentException with a sentence for the user if it is not one
     */
    public static BigDecimal torqueNm(String text) {
        return convert(Quantity.TORQUE, text);
    }

    /**
     * Returns a time in milliseconds, not rounded.
     *
     * @param text a number with a unit, such as {@code 4.2 s} or {@code 1.5 min}
     * @throws IllegalArgumentException with a sentence for the user if it is not one
     */
    public static BigDecimal timeMs(String text) {
        return convert(Quantity.TIME, text);
    }

    /** Returns the names of the units of a quantity, in the order of the table. */
    public static List<String> names(Quantity quantity) {
        return List.copyOf(factors(quantity).keySet());
    }

    private static BigDecimal convert(Quantity quantity, String text) {
        Matcher parts = TEXT.matcher(text.strip());
        if (text.length() > MAX_TEXT || !parts.matches()) {
            throw new IllegalArgumentException(expected(quantity, "this is not one"));
        }
        String unit = parts.group(2).strip();
        if (COMMA.matcher(text.strip()).matches()) {
            throw new IllegalArgumentException(
                    "numbers have a decimal point: write " + text.strip().replaceFirst(",", "."));
        }
        if (unit.isEmpty()) {
            throw new IllegalArgumentException(expected(quantity, "the unit is missing"));
        }
        BigDecimal factor = find(quantity, unit);
        if (factor == null) {
            throw new IllegalArgumentException(expected(quantity, wrongUnit(quantity, unit)));
        }
        return new BigDecimal(parts.group(1)).multiply(factor);
    }

    private static String wrongUnit(Quantity wanted, String unit) {
        for (Quantity other : Quantity.values()) {
            if (other != wanted && find(other, unit) != null) {
                return "\"" + unit + "\" is a unit of " + other.noun();
            }
        }
        return "there is no unit \"" + unit + "\"";
    }

    private static String expected(Quantity quantity, String why) {
        return "a "
                + quantity.noun()
                + " is a number and a unit ("
                + quantity.example
                + "); "
                + why
                + ". Known units: "
                + String.join(", ", names(quantity));
    }

    private static @Nullable BigDecimal find(Quantity quantity, String unit) {
        String wanted = plain(unit);
        BigDecimal exact = null;
        List<BigDecimal> anyCase = new ArrayList<>();
        for (Map.Entry<String, BigDecimal> each : factors(quantity).entrySet()) {
            String known = plain(each.getKey());
            if (known.equals(wanted)) {
                exact = each.getValue();
            } else if (known.equalsIgnoreCase(wanted)) {
                anyCase.add(each.getValue());
            }
        }
        // people type "nm" for N·m and "MM" for mm; a capital M for milli in a torque
        // would be mega
        boolean mega = wanted.startsWith("M") && quantity == Quantity.TORQUE;
        return exact != null || anyCase.size() != 1 || mega ? exact : anyCase.get(0);
    }

    private static Map<String, BigDecimal> factors(Quantity quantity) {
        return Objects.requireNonNull(FACTORS.get(quantity));
    }

    /** Removes separators between force and arm, and unifies the two micro signs. */
    private static String plain(String unit) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < unit.length(); i++) {
            char c = unit.charAt(i);
            if (c == '\u03BC') {
                out.append('\u00B5');
            } else if (!Character.isWhitespace(c) && "·⋅•.*-\u00A0\u202F".indexOf(c) < 0) {
                out.append(c);
            }
        }
        return out.toString();
    }
}
