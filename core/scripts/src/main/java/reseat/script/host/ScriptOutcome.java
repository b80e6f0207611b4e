package reseat.script.host;

import java.util.List;
import reseat.check.Finding;
import reseat.files.ScriptFile;

/**
 * What came of one script.
 *
 * @param status whether it ran
 * @param findings what it found; empty unless it ran to its end
 * @param problem why it did not run, or what became of it, as a sentence; empty if it ran
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

    /** What came of a script. */
    public enum Status {
        /** It ran to its end, and what it returned is sound. */
        RAN,
        /** The input lacks what it needs. */
        LEFT_OUT,
        /** Nobody in this shop approved it. */
        NOT_APPROVED,
        /** It failed, or was stopped, or returned what is not sound. */
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
