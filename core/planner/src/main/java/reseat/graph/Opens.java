package reseat.graph;

import java.util.List;

/**
 * What the release of a joint or the move of a part makes possible.
 *
 * @param uncovers joints that it no longer hides
 * @param unpowers joints that need a supply that it cuts
 * @param loosens parts that it no longer holds, or no longer lies on
 * @param nowPossible works that wait for nothing else that every way needs, once it and everything
 *     before it is done
 * @param neededBy works that cannot be reached without it
 */
public record Opens(
        List<String> uncovers,
        List<String> unpowers,
        List<String> loosens,
        List<Work> nowPossible,
        List<Work> neededBy) {

    public Opens {
        uncovers = List.copyOf(uncovers);
        unpowers = List.copyOf(unpowers);
        loosens = List.copyOf(loosens);
        nowPossible = List.copyOf(nowPossible);
        neededBy = List.copyOf(neededBy);
    }
}
