package reseat.internal.fasten;

import reseat.fasten.FastenerInputException;

/** Values of parameters, which are text. */
public final class Settings {

    private Settings() {}

    /**
     * Returns a number of millimetres, 0 or more.
     *
     * @throws FastenerInputException if it is none
     */
    public static double millimetres(String text) {
        try {
            double value = Double.parseDouble(text.strip().replaceFirst("\\s*mm$", ""));
            if (value >= 0 && Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new FastenerInputException(
                "\"" + text + "\" is no number of millimetres of 0 or more.");
    }
}
