package reseat.graph;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What every way to a goal needs, and in which order.
 *
 * @param possible whether the graph allows a way at all; if not, there is no work
 * @param works all of it, in an order in which it could be done
 * @param justBefore for each work, those works that must come before it with none of the others
 *     between
 */
public record Needed(boolean possible, List<Work> works, Map<Work, List<Work>> justBefore) {

    public Needed {
        works = List.copyOf(works);
        Map<Work, List<Work>> copy = new LinkedHashMap<>();
        justBefore.forEach((work, before) -> copy.put(work, List.copyOf(before)));
        justBefore = java.util.Collections.unmodifiableMap(copy);
    }
}
