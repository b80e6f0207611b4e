package reseat.console.prompt;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of one text that a language ran.
 *
 * @param status how it ended
 * @param value the value of its last expression; null where it has none
 * @param name the name of the value; empty if it has none
 * @param brief whether to show the value briefly, since it was only assigned to a name
 * @param troubles its errors
 * @param notes further notes, a sentence each
 */
record Outcome(
        Status status,
        @Nullable Object value,
        String name,
        boolean brief,
        List<Trouble> troubles,
        List<String> notes) {

    /** How an evaluation ended. */
    enum Status {
        /** It finished. */
        OK,
        /** It has errors, or threw. */
        FAILED,
        /** It is incomplete. */
        INCOMPLETE,
        /** It was interrupted. */
        STOPPED
    }

    Outcome {
        troubles = List.copyOf(troubles);
        notes = List.copyOf(notes);
    }

    static Outcome nothing() {
        return new Outcome(Status.OK, null, "", false, List.of(), List.of());
    }

    static Outcome value(@Nullable Object value, String name) {
        return new Outcome(Status.OK, value, name, false, List.of(), List.of());
    }

    static Outcome declared(@Nullable Object value, String name) {
        return new Outcome(Status.OK, value, name, true, List.of(), List.of());
    }

    static Outcome failed(List<Trouble> troubles) {
        return new Outcome(Status.FAILED, null, "", false, troubles, List.of());
    }

    static Outcome of(Status status) {
        return new Outcome(status, null, "", false, List.of(), List.of());
    }

    Outcome noting(List<String> more) {
        return new Outcome(status, value, name, brief, troubles, more);
    }
}
