package reseat.euindex;

import java.util.HashSet;
import java.util.List;

/**
 * Counts the steps that it takes to reach a part.
 *
 * <p>Source: Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026, Annex I 20 and
 * Annex IV point 5. An operation ends when a part has been removed or the tool is changed; warming
 * and cleaning are steps; each of several tools needed at the same time is one; each remote
 * notification or authorisation of a serial number adds five.
 */
public final class StepCount {

    private static final int PER_SERIAL_ACTION = 5;

    /** How a change of tool right after a removal counts; the text of the law allows both. */
    public enum Reading {
        /** The removal ended the operation; the tool change that follows is not a step. */
        MERGED,
        /** The tool change is a further step. */
        STRICT
    }

    private StepCount() {}

    /**
     * Counts the steps.
     *
     * @param operations the operations in order
     * @param serialActions remote notifications and authorisations of serial numbers that full
     *     function needs
     */
    public static int count(List<Operation> operations, int serialActions, Reading reading) {
        int steps = PER_SERIAL_ACTION * serialActions;
        for (int i = 0; i < operations.size(); i++) {
            Operation operation = operations.get(i);
            steps += Math.max(1, operation.tools().size());
            if (reading == Reading.STRICT
                    && operation.end() == Operation.End.REMOVED
                    && i + 1 < operations.size()
                    && changes(operation, operations.get(i + 1))) {
                steps++;
            }
        }
        return steps;
    }

    /** Putting a tool down is not a change, and neither is picking up the first one. */
    private static boolean changes(Operation from, Operation to) {
        return !to.tools().isEmpty()
                && !from.tools().isEmpty()
                && !new HashSet<>(from.tools()).equals(new HashSet<>(to.tools()));
    }

    /** Returns the points for a number of steps: 5 for two at most, 1 for more than fifteen. */
    public static int points(int steps) {
        if (steps <= 2) {
            return 5;
        }
        if (steps <= 5) {
            return 4;
        }
        if (steps <= 10) {
            return 3;
        }
        return steps <= 15 ? 2 : 1;
    }
}
