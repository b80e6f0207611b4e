package reseat.internal.files;

import reseat.internal.files.Scalars.ScalarType;
import reseat.model.Duration;

/** Checks scalars without creating values: most are valid, and are visited twice. */
final class SureScalars {

    private SureScalars() {}

    /**
     * A cheap test that accepts most valid scalars. The others are left to {@link Scalars#check}.
     */
    static boolean sound(ScalarType type, Node.Scalar scalar) {
        return switch (type) {
            case TEXT ->
                    scalar.kind() == Node.ScalarKind.TEXT
                            && scalar.text().length() <= Scalars.MAX_TEXT;
            case BOOL -> scalar.kind() == Node.ScalarKind.BOOL;
            case MS, TABLE_TIME -> few(scalar) >= 0 && few(scalar) <= Duration.MAX_MS;
            case COUNT -> few(scalar) >= 0 && few(scalar) <= Scalars.MAX_COUNT.intValue();
            case COORDINATE, MM, SEAT_LENGTH ->
                    few(scalar) >= 0 && few(scalar) <= Scalars.MAX_MM.intValue();
            default -> false;
        };
    }

    /** Returns a number of a few digits and nothing else, as most are; -1 for anything else. */
    static int few(Node.Scalar scalar) {
        return scalar.kind() == Node.ScalarKind.NUMBER ? few(scalar.text()) : -1;
    }

    static int few(String text) {
        int length = text.length();
        if (length == 0 || length > 9) {
            return -1;
        }
        int value = 0;
        for (int i = 0; i < length; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = 10 * value + digit;
        }
        return value;
    }
}
