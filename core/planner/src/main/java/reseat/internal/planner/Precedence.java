package reseat.internal.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;

/**
 * What must come before what, closed under transitivity and under rules that leave a choice as far
 * as they leave none any more.
 */
final class Precedence {

    private final int size;
    private final List<Rule> choices;
    private List<BitSet> after = new ArrayList<>();

    /**
     * Creates the relation of rules that can be kept together.
     *
     * @param size number of items
     */
    Precedence(int size, List<Rule> rules) {
        this.size = size;
        for (int k = 0; k < size; k++) {
            after.add(new BitSet(size));
        }
        List<Rule> open = new ArrayList<>();
        for (Rule rule : rules) {
            if (rule.oneOf().size() == 1) {
                close(rule.oneOf().get(0));
            } else {
                open.add(rule);
            }
        }
        choices = open;
        decide();
    }

    /** Returns whether one item must come before another. */
    boolean has(int earlier, int later) {
        return after.get(earlier).get(later);
    }

    /**
     * Adds rules unless they contradict what is known.
     *
     * @return whether they were added; none is if one cannot be
     */
    boolean add(List<Rule> rules) {
        List<BitSet> known = new ArrayList<>();
        after.forEach(row -> known.add((BitSet) row.clone()));
        int before = choices.size();
        boolean kept = true;
        for (Rule rule : rules) {
            if (rule.oneOf().size() > 1) {
                choices.add(rule);
            } else {
                kept &= close(rule.oneOf().get(0));
            }
        }
        if (!kept || !decide()) {
            after = known;
            choices.subList(before, choices.size()).clear();
            return false;
        }
        return true;
    }

    private boolean close(Pair pair) {
        int earlier = pair.earlier();
        int later = pair.later();
        if (has(later, earlier)) {
            return false;
        }
        if (!has(earlier, later)) {
            BitSet more = (BitSet) after.get(later).clone();
            more.set(later);
            for (int k = 0; k < size; k++) {
                if (k == earlier || has(k, earlier)) {
                    after.get(k).or(more);
                }
            }
        }
        return true;
    }

    /** Decides what rules leave no choice; false if one of them cannot be kept. */
    private boolean decide() {
        boolean more = true;
        while (more) {
            more = false;
            for (Rule rule : choices) {
                if (rule.oneOf().stream().anyMatch(p -> has(p.earlier(), p.later()))) {
                    continue;
                }
                List<Pair> left =
                        rule.oneOf().stream().filter(p -> !has(p.later(), p.earlier())).toList();
                if (left.isEmpty()) {
                    return false;
                }
                if (left.size() == 1) {
                    close(left.get(0));
                    more = true;
                }
            }
        }
        return true;
    }
}
