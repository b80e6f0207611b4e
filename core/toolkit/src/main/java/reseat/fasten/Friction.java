package reseat.fasten;

/**
 * A range of friction coefficients, for thread and head alike.
 *
 * @param surface name of the surface
 * @param low least likely coefficient, above 0
 * @param high greatest likely coefficient, not below {@code low}, not above 1
 * @param source where it comes from
 */
public record Friction(String surface, double low, double high, String source) {
    public Friction {
        if (!(low > 0 && low <= high && high <= 1)) {
            throw new FastenerInputException(
                    "Friction from "
                            + low
                            + " to "
                            + high
                            + " is impossible; expected 0 < low <= high <= 1.");
        }
    }
}
