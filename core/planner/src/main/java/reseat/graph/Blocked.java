package reseat.graph;

import java.util.List;

/**
 * Why a goal cannot be reached by any acts in any order.
 *
 * @param chain sentences from the goal down to the cause, each following from the next; none
 *     repeats what another says
 */
public record Blocked(List<String> chain) {

    public Blocked {
        chain = List.copyOf(chain);
    }
}
