package reseat.graph;

import java.util.List;

/**
 * Parts that one move can take together: the largest such set around them. They hang together by
 * joints, and agree on tool and posture.
 *
 * @param parts ids, in the order of the device file
 * @param tool id of the tool they are moved with
 * @param posture id of the posture
 * @param ties why they stay together
 * @param first what must hold before all of them can go as one
 */
public record Group(
        List<String> parts, String tool, String posture, List<Tie> ties, List<Fact> first) {

    public Group {
        parts = List.copyOf(parts);
        ties = List.copyOf(ties);
        first = List.copyOf(first);
    }
}
