package reseat.internal.graph;

import java.util.List;

/**
 * A goal and the requirements of a request, in numbers: all of it must hold at the end.
 *
 * @param released nodes that must be released
 * @param reach node that must be left ready to be released, or -1
 * @param apart pairs of parts that must end in different places; {@code apart[i] = {a, b}}
 * @param teardown whether every part must end alone
 */
// arrays: created here, passed on, never modified
@SuppressWarnings("ArrayRecordComponent")
public record Need(int[] released, int reach, List<int[]> apart, boolean teardown) {

    public Need {
        apart = List.copyOf(apart);
    }
}
