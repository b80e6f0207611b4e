package reseat.internal.order;

import java.util.List;

/**
 * At least one of some pairs holds. With one pair it is a plain "before".
 *
 * @param oneOf the pairs; never empty
 * @param why what the rule comes from, as the end of a sentence
 */
public record Rule(List<Pair> oneOf, String why) {

    public Rule {
        oneOf = List.copyOf(oneOf);
        if (oneOf.isEmpty()) {
            throw new IllegalArgumentException("a rule needs a pair: " + why);
        }
    }
}
