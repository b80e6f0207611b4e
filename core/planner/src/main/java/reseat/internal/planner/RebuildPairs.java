package reseat.internal.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.Act;
import reseat.model.FunctionTest;
import reseat.model.Joint;
import reseat.plan.RebuildAct;

/**
 * What the order of a rebuild has to keep besides being a valid teardown backwards: beds before
 * what covers them, isolators after everything that needs their supplies cut, nothing flammable
 * after an isolator, and what closes for good or has to rest after everything that can be done
 * before it. All but the first are kept as far as the device allows.
 */
public final class RebuildPairs {

    private final RebuildItems items;
    private final RebuildTests tests;
    private final List<Pair> pairs = new ArrayList<>();
    private final Precedence known;

    /**
     * Finds the pairs.
     *
     * @param rules what makes the order a valid teardown backwards
     */
    public RebuildPairs(RebuildItems items, RebuildTests tests, List<Rule> rules) {
        this.items = items;
        this.tests = tests;
        List<Rule> all = new ArrayList<>(rules);
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind() == RebuildAct.Kind.BED) {
                bed(at);
            }
        }
        pairs.forEach(pair -> all.add(new Rule(List.of(pair), "a bed is laid before")));
        known = new Precedence(items.size(), all);
        isolators();
        late();
    }

    /** Returns the pairs, each with the number of the item that comes first. */
    public List<Pair> all() {
        return List.copyOf(pairs);
    }

    private void bed(int bed) {
        Joint joint = items.get(bed).joints().get(0);
        Set<Integer> later = new LinkedHashSet<>();
        for (int at = 0; at < items.size(); at++) {
            if (items.get(at).kind() == RebuildAct.Kind.MAKE
                    && items.get(at).joints().contains(joint)) {
                later.add(at);
            }
        }
        Set<String> covers = new LinkedHashSet<>(joint.holds());
        covers.addAll(joint.under());
        covers.remove(joint.site());
        for (String cover : covers) {
            List<Integer> joining = items.joining(cover, joint.site());
            if (!joining.isEmpty()) {
                later.add(joining.get(joining.size() - 1));
            }
        }
        later.forEach(at -> pairs.add(new Pair(bed, at)));
    }

    private void isolators() {
        for (int isolator : tests.isolators()) {
            Set<String> cuts = new LinkedHashSet<>();
            items.get(isolator).joints().forEach(joint -> cuts.addAll(joint.cuts()));
            for (int at = 0; at < items.size(); at++) {
                int each = at;
                boolean needs = items.needs(at).stream().anyMatch(cuts::contains);
                boolean burns =
                        items.get(at).kind() == RebuildAct.Kind.BED
                                && items.get(at).isFlammable(items.device());
                if (at != isolator && (needs || burns)) {
                    want(List.of(new Pair(each, isolator)));
                }
            }
        }
    }

    /** Puts what closes for good, or has to rest, after all that can be done before it. */
    private void late() {
        List<Integer> late =
                IntStream.range(0, items.size()).filter(at -> items.get(at).isLate()).boxed().toList();
        for (int closing : late) {
            for (FunctionTest test : tests.due()) {
                List<Pair> needed =
                        tests.needs(test).stream()
                                .filter(at -> at != closing)
                                .map(at -> new Pair(at, closing))
                                .toList();
                if (!tests.needs(test).contains(closing)) {
                    want(needed);
                }
            }
        }
        for (int closing : late) {
            for (int at = 0; at < items.size(); at++) {
                if (!items.get(at).isLate() && !(items.get(at).act() instanceof Act.Prepared)) {
                    want(List.of(new Pair(at, closing)));
                }
            }
        }
    }

    private void want(List<Pair> wanted) {
        if (known.add(wanted)) {
            pairs.addAll(wanted);
        }
    }
}
