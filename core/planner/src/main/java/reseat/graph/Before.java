package reseat.graph;

import java.util.List;

/**
 * What every plan must do before something else.
 *
 * @param possible whether the graph allows a way at all; if not, the lists are empty
 * @param all everything, in an order in which it could be done
 * @param immediate those of {@code all} that no other of them has to wait for
 */
public record Before(boolean possible, List<Work> all, List<Work> immediate) {

    public Before {
        all = List.copyOf(all);
        immediate = List.copyOf(immediate);
    }
}
