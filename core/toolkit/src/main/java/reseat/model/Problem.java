package reseat.model;

import java.util.Comparator;
import java.util.Locale;

/**
 * One problem in user input.
 *
 * @param severity how severe it is; an error must be corrected before anything can be computed
 * @param at its location
 * @param message a sentence: what was found, what was expected, and the closest valid name, if any
 */
public record Problem(Severity severity, Origin at, String message) implements Comparable<Problem> {

    private static final Comparator<Problem> ORDER =
            Comparator.comparing(Problem::at)
                    .thenComparing(Problem::severity)
                    .thenComparing(Problem::message);

    /** Returns an error at a location. */
    public static Problem error(Origin at, String message) {
        return new Problem(Severity.ERROR, at, message);
    }

    /** Returns a warning at a location. */
    public static Problem warning(Origin at, String message) {
        return new Problem(Severity.WARNING, at, message);
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    /** Returns the problem as one line: location, severity, message. */
    @Override
    public String toString() {
        return at + ": " + severity.name().toLowerCase(Locale.ROOT) + ": " + message;
    }
}
