package reseat.internal.graph;

import java.util.ArrayList;
import java.util.List;

/**
 * The choices that needs leave open: two parts that must part, where either one may go without the
 * other; a joint of a part that must go, which is released or whose other parts go along; a cover
 * of such a part, which has left or goes along.
 */
final class Choices {

    private final Compiled c;
    private final Links links;
    private final Footing at;
    private final Fixpoint facts;
    private final long[] needs;
    private final boolean[] seen;
    private final List<long[][]> choices = new ArrayList<>();
    private final long[] alternatives;

    Choices(Compiled c, Need need, Links links, Footing at, Fixpoint facts, long[] needs) {
        this.c = c;
        this.links = links;
        this.at = at;
        this.facts = facts;
        this.needs = needs;
        seen = new boolean[links.pairA.length];
        alternatives = new long[needs.length];
        for (int i : links.goalPairs) {
            parting(i);
        }
        if (need.reach() >= 0) {
            partings(links.nodePairs[need.reach()]);
        }
        for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
            if (work < c.nodes) {
                partings(links.nodePairs[work]);
            } else if (work < c.nodes + c.parts) {
                going(work - c.nodes);
            }
        }
    }

    List<long[][]> list() {
        return choices;
    }

    /** Returns the works outside the needs that could replace needs. */
    long[] alternatives() {
        return alternatives;
    }

    private void partings(int[] pairs) {
        for (int i : pairs) {
            parting(i);
        }
    }

    private void parting(int i) {
        if (seen[i] || !at.samePlace(links.pairA[i], links.pairB[i])) {
            return;
        }
        seen[i] = true;
        long[] one = new long[needs.length];
        long[] other = new long[needs.length];
        if (facts.goesWithout(i, false, one) && facts.goesWithout(i, true, other)) {
            add(one, other);
        }
    }

    private void going(int p) {
        for (int i : links.partPairs[p]) {
            int cover = links.pairA[i] == p ? links.pairB[i] : links.pairA[i];
            if (cover == p || !at.samePlace(cover, p)) {
                continue;
            }
            if (at.mayGoTogether(p, cover)) {
                add(facts.sep[i].clone(), facts.going.go[cover].clone());
            } else {
                parting(i);
            }
        }
        for (int j : links.rigidOf[p]) {
            if (at.together[j]) {
                long[] along = new long[needs.length];
                for (int x : c.holds[j]) {
                    if (x != p) {
                        Bits.addAll(along, facts.going.go[x]);
                    }
                }
                add(facts.rel[j].clone(), along);
            }
        }
    }

    private void add(long[] one, long[] other) {
        boolean first = false;
        boolean second = false;
        for (int w = 0; w < needs.length; w++) {
            one[w] &= ~needs[w];
            other[w] &= ~needs[w];
            first |= one[w] != 0;
            second |= other[w] != 0;
        }
        if (first && second) {
            choices.add(new long[][] {one, other});
        } else if (first) {
            Bits.addAll(alternatives, one);
        } else if (second) {
            Bits.addAll(alternatives, other);
        }
    }
}
