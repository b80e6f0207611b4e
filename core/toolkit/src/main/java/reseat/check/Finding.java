package reseat.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.model.Origin;
import reseat.model.Severity;

/**
 * One result of a check.
 *
 * @param check id of the check
 * @param severity how much it matters
 * @param at location of the fact that should change
 * @param subject what it is about, as a JSON Pointer into the device file, such as {@code
 *     /joints/lid-screw.a}
 * @param title what is wrong, in a few words
 * @param message a sentence or two: what, and why it matters
 * @param evidence the numbers and facts that support it, one each
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
                    check + ": a finding must state what is wrong and what to do");
        }
    }

    /** Orders by severity, worst first, then by place. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }

    /** Builds a finding. Not thread-safe. */
    public static final class Draft {

        private final CheckInfo info;
        private final Origin at;
        private final String pointer;
        private final List<String> evidence = new ArrayList<>();
        private Severity severity;
        private String title;

        Draft(CheckInfo info, Origin at, String pointer) {
            this.info = info;
            this.at = at;
            this.pointer = pointer;
            this.severity = info.severity();
            this.title = info.title();
        }

        /** Sets how much it matters; the check's own severity if left out. */
        public Draft severity(Severity value) {
            severity = value;
            return this;
        }

        /** Sets what is wrong, in a few words; the check's title if left out. */
        public Draft title(String text) {
            title = text;
            return this;
        }

        /** Adds a number or a fact that supports it. */
        public Draft evidence(String fact) {
            evidence.add(fact);
            return this;
        }

        /**
         * Builds the finding.
         *
         * @param message a sentence or two: what is wrong, and why it matters
         * @param remedy what to do, in the imperative
         */
        public Finding says(String message, String remedy) {
            return new Finding(info.id(), severity, at, pointer, title, message, evidence, remedy);
        }
    }
}
