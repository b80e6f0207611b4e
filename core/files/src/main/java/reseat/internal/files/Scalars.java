package reseat.internal.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import reseat.internal.time.IndexString;
import reseat.model.Duration;
import reseat.model.Ids;
import reseat.model.Units;
import reseat.text.ListText;
import reseat.text.Nearest;

/** Converts scalars to values, or reports in a sentence what was expected. */
final class Scalars {

    /** Longest name or sentence, in characters. */
    static final int MAX_TEXT = 4000;

    /** Longest number as text. */
    private static final int MAX_NUMBER = 40;

    static final BigDecimal MAX_MM = new BigDecimal(10_000);
    private static final BigDecimal MAX_NM = new BigDecimal(1_000);
    static final BigDecimal MAX_COUNT = new BigDecimal(1_000_000);
    private static final BigDecimal MAX_MS = new BigDecimal(Duration.MAX_MS);
    private static final BigDecimal MAX_DWELL_MS = new BigDecimal(90L * Duration.MAX_MS);

    /** The beginning of an index string, valid or not; every other time begins with a number. */
    private static final Pattern INDEX_STRING = Pattern.compile("\\(?\\s*[A-Za-z]\\s*[0-9]");

    private static final Pattern COMMA = Pattern.compile("[-+]?[0-9]{1,9},[0-9]{1,9}");

    private Scalars() {}

    /** The types of single values. */
    enum ScalarType {
        ID("an id"),
        TEXT("text"),
        FORMAT("the text " + Format.NAME),
        BOOL("true or false"),
        COUNT("a whole number from 0"),
        COORDINATE("a number of millimetres"),
        MM("a number of millimetres, not negative"),
        NM("a number of newton metres, not negative"),
        QUANTITY("a number greater than zero"),
        LENGTH("a length"),
        TORQUE("a torque"),
        /** A length of a seat: as in seat tables, bare numbers are in millimetres. */
        SEAT_LENGTH("a length"),
        /** A torque of a seat: as in seat tables, bare numbers are in newton metres. */
        SEAT_TORQUE("a torque"),
        MS("a whole number of milliseconds"),
        TIME("a time"),
        /** A time in a full table of set-ups, where a bare number is in milliseconds. */
        TABLE_TIME("a time"),
        DWELL("a time");

        private final String expected;

        ScalarType(String expected) {
            this.expected = expected;
        }

        String expected() {
            return expected;
        }
    }

    /**
     * Thrown where a scalar is not what was expected; the message is a sentence without the
     * location.
     */
    static final class WrongValue extends Exception {
        private static final long serialVersionUID = 1L;

        WrongValue(String message) {
            super(message);
        }

        String text() {
            return String.valueOf(getMessage());
        }
    }

    /** Checks a scalar against a type and discards the value. */
    static void check(ScalarType type, Node.Scalar scalar) throws WrongValue {
        switch (type) {
            case ID -> id(scalar);
            case TEXT -> text(scalar);
            case FORMAT -> format(scalar);
            case BOOL -> bool(scalar);
            case TIME, TABLE_TIME -> duration(scalar, Duration.Basis.DEVICE);
            default -> number(type, scalar);
        }
    }

    /** Refuses a time without a unit; resolved files alone have them, in milliseconds. */
    static void unit(ScalarType type, Node.Scalar scalar) throws WrongValue {
        boolean time = type == ScalarType.TIME || type == ScalarType.DWELL;
        if (time && scalar.kind() == Node.ScalarKind.NUMBER && SureScalars.few(scalar) != 0) {
            String number = scalar.text();
            throw new WrongValue(
                    "found "
                            + scalar.describe()
                            + " without a unit: write "
                            + number
                            + " s or "
                            + number
                            + " ms");
        }
    }

    static String id(Node.Scalar scalar) throws WrongValue {
        if (!Ids.valid(scalar.text())) {
            throw new WrongValue(
                    "found "
                            + scalar.describe()
                            + " where an id belongs: 1 to 64 letters, digits, \".\", \"_\""
                            + " or \"-\", beginning with a letter or digit");
        }
        return scalar.text();
    }

    static String text(Node.Scalar scalar) throws WrongValue {
        if (scalar.kind() == Node.ScalarKind.BOOL) {
            throw new WrongValue("found " + scalar.text() + ", expected text: put it in quotes");
        }
        if (scalar.text().length() > MAX_TEXT) {
            throw new WrongValue("this text is longer than " + MAX_TEXT + " characters");
        }
        return scalar.text();
    }

    private static void format(Node.Scalar scalar) throws WrongValue {
        if (!scalar.text().equals(Format.NAME)) {
            throw new WrongValue(
                    "found format " + scalar.describe() + ", but this Reseat reads " + Format.NAME);
        }
    }

    static boolean bool(Node.Scalar scalar) throws WrongValue {
        if (scalar.kind() != Node.ScalarKind.BOOL) {
            throw new WrongValue("found " + scalar.describe() + ", expected true or false");
        }
        return scalar.text().toLowerCase(Locale.ROOT).equals("true");
    }

    /** Returns a number of any numeric type in its unit: mm, N·m, ms, or none. */
    static BigDecimal number(ScalarType type, Node.Scalar scalar) throws WrongValue {
        return switch (type) {
            case COUNT ->
                    whole(
                            between(type, scalar, bare(type, scalar), BigDecimal.ZERO, MAX_COUNT),
                            scalar);
            case COORDINATE -> between(type, scalar, bare(type, scalar), MAX_MM.negate(), MAX_MM);
            case MM -> between(type, scalar, bare(type, scalar), BigDecimal.ZERO, MAX_MM);
            case NM -> between(type, scalar, bare(type, scalar), BigDecimal.ZERO, MAX_NM);
            case QUANTITY -> {
                BigDecimal value =
                        between(type, scalar, bare(type, scalar), BigDecimal.ZERO, MAX_COUNT);
                if (value.signum() == 0) {
                    throw new WrongValue(
                            "found " + scalar.describe() + ", expected " + type.expected());
                }
                yield value;
            }
            case LENGTH ->
                    between(
                            type,
                            scalar,
                            measured(scalar, Units.Quantity.LENGTH),
                            BigDecimal.ZERO,
                            MAX_MM);
            case TORQUE ->
                    between(
                            type,
                            scalar,
                            measured(scalar, Units.Quantity.TORQUE),
                            BigDecimal.ZERO,
                            MAX_NM);
            case SEAT_LENGTH -> number(bareOr(scalar, ScalarType.MM, ScalarType.LENGTH), scalar);
            case SEAT_TORQUE -> number(bareOr(scalar, ScalarType.NM, ScalarType.TORQUE), scalar);
            case MS ->
                    whole(
                            between(type, scalar, bare(type, scalar), BigDecimal.ZERO, MAX_MS),
                            scalar);
            case DWELL ->
                    rounded(between(type, scalar, anyTime(scalar), BigDecimal.ZERO, MAX_DWELL_MS));
            default -> throw new IllegalArgumentException(type + " is not numeric");
        };
    }

    /**
     * Returns a time.
     *
     * @param scalar milliseconds, a number with a unit, or an index string
     * @param stated the basis of a time that is not an index string
     */
    static Duration duration(Node.Scalar scalar, Duration.Basis stated) throws WrongValue {
        String text = scalar.text().strip();
        if (scalar.kind() != Node.ScalarKind.NUMBER && INDEX_STRING.matcher(text).lookingAt()) {
            try {
                IndexString elements = IndexString.parse(text);
                between(
                        ScalarType.TIME,
                        scalar,
                        new BigDecimal(elements.ms()),
                        BigDecimal.ZERO,
                        MAX_MS);
                return elements.duration();
            } catch (IllegalArgumentException | ArithmeticException e) {
                throw new WrongValue("found " + scalar.describe() + ": " + e.getMessage());
            }
        }
        BigDecimal ms = between(ScalarType.TIME, scalar, anyTime(scalar), BigDecimal.ZERO, MAX_MS);
        return new Duration(
                rounded(ms).longValueExact(),
                stated,
                scalar.kind() == Node.ScalarKind.NUMBER ? text + " ms" : text);
    }

    private static ScalarType bareOr(Node.Scalar scalar, ScalarType bare, ScalarType measured) {
        return scalar.kind() == Node.ScalarKind.NUMBER ? bare : measured;
    }

    private static BigDecimal anyTime(Node.Scalar scalar) throws WrongValue {
        return scalar.kind() == Node.ScalarKind.NUMBER
                ? whole(bare(ScalarType.MS, scalar), scalar)
                : measured(scalar, Units.Quantity.TIME);
    }

    private static BigDecimal measured(Node.Scalar scalar, Units.Quantity quantity)
            throws WrongValue {
        try {
            String text = scalar.text();
            return switch (quantity) {
                case LENGTH -> Units.lengthMm(text);
                case TORQUE -> Units.torqueNm(text);
                case TIME -> Units.timeMs(text);
            };
        } catch (IllegalArgumentException e) {
            throw new WrongValue("found " + scalar.describe() + ": " + e.getMessage());
        }
    }

    private static BigDecimal bare(ScalarType type, Node.Scalar scalar) throws WrongValue {
        if (COMMA.matcher(scalar.text()).matches()) {
            throw new WrongValue(
                    "found "
                            + scalar.describe()
                            + ", but numbers have a decimal point: write "
                            + scalar.text().replace(',', '.'));
        }
        if (scalar.kind() != Node.ScalarKind.NUMBER || scalar.text().length() > MAX_NUMBER) {
            throw new WrongValue("found " + scalar.describe() + ", expected " + type.expected());
        }
        int few = SureScalars.few(scalar.text());
        if (few >= 0) {
            return BigDecimal.valueOf(few);
        }
        try {
            BigDecimal value = new BigDecimal(scalar.text());
            // an exponent of a billion would make every later step expensive
            if (Math.abs((long) value.scale()) > 1000) {
                throw new WrongValue("found " + scalar.describe() + ", which is out of range");
            }
            return value;
        } catch (NumberFormatException e) {
            throw new WrongValue("found " + scalar.describe() + ", expected a decimal number");
        }
    }

    private static BigDecimal whole(BigDecimal value, Node.Scalar scalar) throws WrongValue {
        if (value.scale() > 0 && value.stripTrailingZeros().scale() > 0) {
            throw new WrongValue("found " + scalar.describe() + ", expected a whole number");
        }
        return value;
    }

    private static BigDecimal rounded(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP);
    }

    private static BigDecimal between(
            ScalarType type,
            Node.Scalar scalar,
            BigDecimal value,
            BigDecimal least,
            BigDecimal most)
            throws WrongValue {
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            String unit =
                    switch (type) {
                        case LENGTH, MM, COORDINATE -> " mm";
                        case TORQUE, NM -> " N·m";
                        case MS, TIME, DWELL -> " ms";
                        default -> "";
                    };
            throw new WrongValue(
                    "found "
                            + scalar.describe()
                            + ", expected a value from "
                            + least.toPlainString()
                            + " to "
                            + most.toPlainString()
                            + unit);
        }
        return value;
    }

    /** Finds a word in a list, ignoring everything but letters. */
    static String choice(List<String> words, Node.Scalar scalar) throws WrongValue {
        if (!words.contains(scalar.text())) {
            throw new WrongValue(
                    "found "
                            + scalar.describe()
                            + ", expected "
                            + ListText.or(words)
                            + "."
                            + Nearest.question(scalar.text(), words));
        }
        return scalar.text();
    }
}
