package reseat.script.host;

import java.util.List;
import reseat.check.Finding;
import reseat.files.ScriptFile;

/**
 * The result of one script.
 *
 * @param status whether it ran
 * @param findings what it found; empty unless it finished
 * @param problem why it did not run or did not finish, as a sentence; empty if it ran
 * @param printed what it printed, shortened
 * @param micros how long it ran, in microseconds, without the start of its process; for Java
 *     without its compilation
 * @param compileMicros how long its compilation took, in microseconds; 0 for JavaScript
 */
public record ScriptOutcome(
        ScriptFile script,
        Status status,
        List<Finding> findings,
        String problem,
        String printed,
        long micros,
        long compileMicros) {

    /** The status of a script. */
    public enum Status {
        /** It finished, and its result is valid. */
        RAN,
        /** The input lacks what it needs. */
        LEFT_OUT,
        /** It is not approved in this shop. */
        NOT_APPROVED,
        /** It failed, was stopped, or returned an invalid result. */
        FAILED
    }

    public ScriptOutcome {
        findings = List.copyOf(findings);
    }

    static ScriptOutcome without(ScriptFile script, Status status, String problem) {
        return new ScriptOutcome(script, status, List.of(), problem, "", 0, 0);
    }

    /** Returns the problem with the name of the script before it. */
    public String told() {
        return script.file() + ": " + problem;
    }
}
