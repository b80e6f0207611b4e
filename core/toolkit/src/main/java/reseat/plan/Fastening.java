package reseat.plan;

import java.util.List;
import reseat.fasten.SeatOrder;

/**
 * Screws of one part that are put in together: all by hand, then in a pattern.
 *
 * @param part the part that they hold down
 * @param first place of their first act in the rebuild, counted from 0
 * @param last place of their last act in the rebuild
 * @param joints ids of the joints, in the order of the rebuild
 * @param order the passes
 */
public record Fastening(String part, int first, int last, List<String> joints, SeatOrder order) {

    public Fastening {
        joints = List.copyOf(joints);
    }
}
