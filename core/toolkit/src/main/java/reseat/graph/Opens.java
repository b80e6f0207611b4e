package reseat.graph;

import java.util.List;

/**
 * What the release of a joint or the move of a part is good for.
 *
 * @param uncovers joints that it hides no longer
 * @param unpowers joints that need a supply cut which it cuts
 * @param loosens parts that it holds no longer, or lies on no longer
 * @param nowPossible works that wait for nothing more that every way needs, once it and all before
 *     it is done
 * @param neededBy works that no way reaches without it
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
