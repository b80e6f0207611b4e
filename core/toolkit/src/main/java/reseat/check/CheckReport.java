package reseat.check;

import java.util.List;
import java.util.stream.Stream;

/**
 * What came of a run of checks. The same whatever the number of threads.
 *
 * @param checks the checks that were run, in their order
 * @param leftOut checks that were run on nothing, because what they need was missing everywhere
 * @param checked what was checked, in the order of the sources; those that a cancelled run did not
 *     come to, or not to the end of, are left out
 * @param unusable checks that could not be used at all
 * @param cancelled whether the run was ended before it was through
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

    /** Tells whether every source could be read without errors. */
    public boolean sound() {
        return checked.stream().allMatch(Checked::sound);
    }
}
