package reseat.internal.graph;

import java.util.List;

/**
 * What a goal and the requirements of a request come to, in numbers: all of it has to hold at the
 * end.
 *
 * @param released nodes that must be released
 * @param reach node that must be left ready to be released, or -1
 * @param apart pairs of parts that must end in different places; {@code apart[i] = {a, b}}
 * @param teardown whether every part must end alone
 */
// arrays: made here, handed on, never changed
@SuppressWarnings("ArrayRecordComponent")
public record Need(int[] released, int reach, List<int[]> apart, boolean teardown) {

    public Need {
        apart = List.copyOf(apart);
    }
}
