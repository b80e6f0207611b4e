package reseat.internal.planner;

import java.util.List;
import reseat.internal.order.Rule;

/**
 * What the order of a rebuild should keep besides being a valid teardown backwards.
 *
 * @param rules what keeps it; all of them or none
 * @param broken what the technician has to know if it is not kept, as a sentence
 */
public record Want(List<Rule> rules, String broken) {

    public Want {
        rules = List.copyOf(rules);
    }

    /** Returns whether an order keeps it. */
    public boolean isKeptBy(List<Integer> order) {
        return rules.stream()
                .allMatch(
                        rule ->
                                rule.oneOf().stream()
                                        .anyMatch(
                                                pair ->
                                                        order.indexOf(pair.earlier())
                                                                < order.indexOf(pair.later())));
    }
}
