package reseat.check;

import java.util.List;

/**
 * Examines a device and reports what is wrong. Stateless; the same input gives the same findings.
 */
public interface Check {

    /** Returns the description of the check; always the same. */
    CheckInfo info();

    /**
     * Runs the check.
     *
     * @param input what to examine, {@linkplain CheckInput#forCheck its own}
     * @return findings in any order; empty if nothing is wrong, or if facts are missing that
     *     another check reports
     */
    List<Finding> run(CheckInput input);

    /**
     * Runs the check on its own view of an input; returns nothing if the input lacks what the check
     * needs.
     */
    default List<Finding> on(CheckInput input) {
        CheckInfo info = info();
        return info.needs().stream().allMatch(input::has) ? run(input.forCheck(info)) : List.of();
    }
}
