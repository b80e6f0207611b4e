package reseat.planner;

import java.util.List;

/**
 * The explanation why something must come off.
 *
 * @param subject the subject of the question: id of an act, a joint or a part
 * @param links the chain of facts from it down to the goal, each a sentence with ids; at least one
 * @param necessity whether a plan could do without it
 */
public record Explanation(String subject, List<String> links, Necessity necessity) {

    public Explanation {
        links = List.copyOf(links);
    }
}
