package reseat.check;

import java.util.List;

/**
 * Something that looks at a device and says what is wrong. Stateless; the same input gives the same
 * findings.
 */
public interface Check {

    /** Returns what the check says of itself; always the same. */
    CheckInfo info();

    /**
     * Runs the check.
     *
     * @param input what to look at, {@linkplain CheckInput#forCheck its own}
     * @return findings in any order; empty where nothing is wrong, or where facts are missing that
     *     another check asks for
     */
    List<Finding> run(CheckInput input);

    /** Runs the check on an input as its own; empty where the input lacks what the check needs. */
    default List<Finding> on(CheckInput input) {
        CheckInfo info = info();
        return info.needs().stream().allMatch(input::has) ? run(input.forCheck(info)) : List.of();
    }
}
