package reseat.graph;

import java.util.List;
import reseat.text.ListText;

/**
 * One thing that a step needs.
 *
 * @param fact what must hold
 * @param orAlong parts that may go along instead; empty if only the fact satisfies it
 */
public record Condition(Fact fact, List<String> orAlong) {

    public Condition {
        orAlong = List.copyOf(orAlong);
    }

    /** Returns a short text. */
    public String label() {
        return fact.label() + (orAlong.isEmpty() ? "" : ", or " + ListText.and(orAlong) + " along");
    }
}
