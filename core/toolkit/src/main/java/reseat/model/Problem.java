package reseat.model;

import java.util.Comparator;
import java.util.Locale;

/**
 * One thing that is wrong with what a user gave us.
 *
 * @param severity whether it can be worked with; nothing can be computed before an error is mended
 * @param at where it stands
 * @param message a sentence: what was found, what was expected, and the nearest right name where
 *     there is one
 */
public record Problem(Severity severity, Origin at, String message) implements Comparable<Problem> {

    private static final Comparator<Problem> ORDER =
            Comparator.comparing(Problem::at)
                    .thenComparing(Problem::severity)
                    .thenComparing(Problem::message);

    /** Returns an error at a place. */
    public static Problem error(Origin at, String message) {
        return new Problem(Severity.ERROR, at, message);
    }

    /** Returns a warning at a place. */
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

    /** Returns the problem as one line: place, severity, message. */
    @Override
    public String toString() {
        return at + ": " + severity.name().toLowerCase(Locale.ROOT) + ": " + message;
    }
}
