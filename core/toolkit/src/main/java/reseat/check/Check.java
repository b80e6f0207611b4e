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
     * @param input what to look at
     * @return findings in any order; empty where nothing is wrong, or where facts are missing that
     *     another check asks for
     */
    List<Finding> run(CheckInput input);
}
