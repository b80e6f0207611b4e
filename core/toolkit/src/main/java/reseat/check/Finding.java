package reseat.check;

import java.util.Comparator;
import java.util.List;
import reseat.model.Origin;

/**
 * One thing that a check has to say.
 *
 * @param check id of the check
 * @param severity how much it matters
 * @param at where the fact stands that should change
 * @param subject what it is about, as a JSON Pointer into the device file, such as {@code
 *     /joints/lid-screw.a}
 * @param title what is wrong, in a few words
 * @param message a sentence or two: what, and why it matters
 * @param evidence the numbers and facts that it rests on, one each
 * @param remedy what to do, in the imperative
 */
public record Finding(
        String check,
        Severity severity,
        Origin at,
        String subject,
        String title,
        String message,
        List<String> evidence,
        String remedy)
        implements Comparable<Finding> {

    private static final Comparator<Finding> ORDER =
            Comparator.comparing(Finding::severity)
                    .thenComparing(Finding::at)
                    .thenComparing(Finding::check)
                    .thenComparing(Finding::subject)
                    .thenComparing(Finding::message);

    public Finding {
        evidence = List.copyOf(evidence);
        if (title.isBlank() || message.isBlank() || remedy.isBlank()) {
            throw new IllegalArgumentException(
                    check + ": a finding says what is wrong and what to do");
        }
    }

    /** Orders by severity, worst first, then by place. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
