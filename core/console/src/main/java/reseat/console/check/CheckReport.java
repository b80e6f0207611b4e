package reseat.console.check;

import java.util.List;
import java.util.stream.Stream;
import reseat.check.CheckInfo;

/**
 * The result of a run of checks. It does not depend on the number of threads.
 *
 * @param checks the checks that were run, in their order
 * @param leftOut checks that never ran because no source had what they need
 * @param checked what was checked, in the order of the sources; sources that a cancelled run did
 *     not finish are left out
 * @param unusable checks that could not be used at all
 * @param cancelled whether the run was cancelled before it was complete
 */
public record CheckReport(
        List<CheckInfo> checks,
        List<CheckInfo> leftOut,
        List<Checked> checked,
        List<CheckFailure> unusable,
        boolean cancelled) {

    public CheckReport {
        checks = List.copyOf(checks);
        leftOut = List.copyOf(leftOut);
        checked = List.copyOf(checked);
        unusable = List.copyOf(unusable);
    }

    /** Returns all findings, source by source. */
    public Stream<Found> found() {
        return checked.stream().flatMap(each -> each.found().stream());
    }

    /** Returns all failures of checks, those that could not be used at all first. */
    public Stream<CheckFailure> failures() {
        return Stream.concat(
                unusable.stream(), checked.stream().flatMap(each -> each.failures().stream()));
    }

    /** Returns whether every source could be read without errors. */
    public boolean sound() {
        return checked.stream().allMatch(Checked::sound);
    }
}
