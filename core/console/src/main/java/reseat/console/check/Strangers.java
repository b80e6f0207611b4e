package reseat.console.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;

/** Asks checks that strangers wrote, and trusts nothing that they answer. */
final class Strangers {

    /** Nobody reads more of one check on one device; who tells more has lost his way. */
    private static final int MOST = 10_000;

    /** What a check answered, if it was asked. */
    public record Answer(boolean asked, List<Finding> findings, List<String> failures) {}

    private Strangers() {}

    /** Runs a check, unless the input lacks what it needs. */
    public static Answer ask(Check check, CheckInfo info, CheckInput input) {
        if (!info.needs().stream().allMatch(input::has)) {
            return new Answer(false, List.of(), List.of());
        }
        List<Finding> good = new ArrayList<>();
        List<String> bad = new ArrayList<>();
        try {
            for (Finding finding :
                    Objects.requireNonNull(
                            check.run(input.forCheck(info)), "it returned no list")) {
                if (good.size() == MOST) {
                    bad.add("It told more than " + MOST + " findings; the rest is left out.");
                    break;
                }
                String wrong = wrong(info, finding);
                if (wrong.isEmpty()) {
                    good.add(finding);
                } else if (!bad.contains(wrong)) {
                    bad.add(wrong);
                }
            }
        } catch (Throwable e) { // a stranger's code: whatever it throws is told by name
            bad.add(told(e));
        }
        return new Answer(true, good, bad);
    }

    /** A finding comes from code that no checker of ours has seen; anything in it may be null. */
    @SuppressWarnings({"ConstantValue", "RedundantNullCheck"})
    private static String wrong(CheckInfo info, @Nullable Finding finding) {
        if (finding == null) {
            return "It told a finding that is none.";
        }
        if (!info.id().equals(finding.check())) {
            return "It told a finding of another check, " + finding.check() + ".";
        }
        if (finding.severity() == null || finding.at() == null || finding.subject() == null) {
            return "It told a finding without severity, place or subject.";
        }
        if (!finding.subject().isEmpty() && !finding.subject().startsWith("/")) {
            return "It told a finding about \""
                    + finding.subject()
                    + "\", which is no JSON Pointer such as /joints/lid-screw.";
        }
        return "";
    }

    /**
     * Returns what was thrown as a sentence.
     *
     * @throws VirtualMachineError what was thrown, if nothing in this Java can be relied on any
     *     longer
     */
    public static String told(Throwable e) {
        if (e instanceof VirtualMachineError error && !(e instanceof StackOverflowError)) {
            throw error;
        }
        String message = String.valueOf(e.getMessage()).strip().lines().findFirst().orElse("");
        String kind = e.getClass().getSimpleName();
        String text =
                e.getMessage() == null || message.isEmpty()
                        ? "It threw " + kind
                        : "It threw " + kind + ": " + message;
        return text.endsWith(".") ? text : text + ".";
    }
}
