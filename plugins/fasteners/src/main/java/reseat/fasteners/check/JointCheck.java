package reseat.fasteners.check;

import java.util.List;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Severity;

/** A check of joints, with what it says of itself. */
abstract class JointCheck implements Check {

    private final CheckInfo info;

    JointCheck(CheckInfo info) {
        this.info = info;
    }

    @Override
    public final CheckInfo info() {
        return info;
    }

    /** Returns whether this is the one of several checks of a class. */
    final boolean is(CheckInfo other) {
        return info.id().equals(other.id());
    }

    /** Returns a finding about a fact of a joint, as bad as the check says. */
    final Finding finding(
            CheckInput input,
            String joint,
            String field,
            String message,
            List<String> evidence,
            String remedy) {
        return finding(input, info.severity(), joint, field, message, evidence, remedy);
    }

    /** Returns a finding about a fact of a joint. */
    final Finding finding(
            CheckInput input,
            Severity severity,
            String joint,
            String field,
            String message,
            List<String> evidence,
            String remedy) {
        return new Finding(
                info.id(),
                severity,
                BoltedFacts.origin(input.device(), joint, field),
                "/joints/" + joint,
                info.title(),
                message,
                // facts in a row, not sentences: whoever joins them gets no doubled stops
                evidence.stream().map(fact -> fact.replaceFirst("\\.$", "")).toList(),
                remedy);
    }
}
