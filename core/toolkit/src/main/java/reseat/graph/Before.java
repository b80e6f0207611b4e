package reseat.graph;

import java.util.List;

/**
 * What every way must have done before something else.
 *
 * @param possible whether there is a way at all as far as the graph tells; if not, the lists are
 *     empty
 * @param all everything, in an order in which it could be done
 * @param immediate those of all that nothing else of them has to wait for
 */
public record Before(boolean possible, List<Work> all, List<Work> immediate) {

    public Before {
        all = List.copyOf(all);
        immediate = List.copyOf(immediate);
    }
}
