package reseat.internal.graph;

import java.util.Arrays;

/**
 * The needs of all facts of a state: the greatest solution for releases and separations, with the
 * least one for going inside it. Facts are visited in the order in which they first became
 * reachable, and again only when something that they depend on has shrunk.
 */
final class Fixpoint {

    private final Compiled c;
    private final Links links;
    private final Footing at;
    private final int words;
    private final long[] all;
    private final int impossible;

    final long[][] rel;
    final long[][] sep;

    /** For each supply, what must be done for it to be cut. */
    private final long[][] cut;

    /**
     * For each node, what must be done before it lets go: its release, but for a node that gives
     * the cut of what it needs.
     */
    private final long[][] loose;

    final Going going;
    private final long[][] go;

    /** Rank of each fact: releases, then separations, then goings; and the fact of each rank. */
    private int[] rank;

    private int[] fact;
    private boolean ranked;
    private int reached;

    private final int firstPair;
    private final int firstPart;
    private final long[] dirty;

    private final long[] one;
    private final long[] other;
    private final long[] beyond;
    private final long[] was;

    Fixpoint(Compiled c, Links links, Footing at) {
        this.c = c;
        this.links = links;
        this.at = at;
        impossible = c.nodes + c.parts;
        words = Bits.words(impossible + 1);
        all = new long[words];
        for (int bit = 0; bit <= impossible; bit++) {
            Bits.set(all, bit);
        }
        int pairs = links.pairA.length;
        rel = new long[c.nodes][words];
        sep = new long[pairs][words];
        cut = new long[links.needers.length][words];
        loose = rel.clone();
        for (int j = 0; j < c.nodes; j++) {
            if (c.gives[j]) {
                loose[j] = new long[words];
            }
        }
        going = new Going(c, links, at, all, loose, sep, cut);
        go = going.go;
        firstPair = c.nodes;
        firstPart = c.nodes + pairs;
        int facts = firstPart + c.parts;
        fact = new int[facts];
        rank = new int[facts];
        for (int f = 0; f < facts; f++) {
            fact[f] = f;
            rank[f] = f;
        }
        dirty = new long[Bits.words(facts)];
        one = new long[words];
        other = new long[words];
        beyond = new long[words];
        was = new long[words];
    }

    /** Returns the set of all works, which represents the needs of what cannot be reached. */
    long[] all() {
        return all;
    }

    /** Solves for the current state of the footing. */
    void solve() {
        for (int j = 0; j < c.nodes; j++) {
            Footing.fill(rel[j], all, !at.isReleased(j));
            Footing.fill(loose[j], all, !at.isReleased(j));
            if (!at.isReleased(j) && !at.closedNode[j]) {
                mark(j);
            }
        }
        for (int s = 0; s < cut.length; s++) {
            Footing.fill(cut[s], all, (at.cut >> s & 1) == 0);
        }
        for (int i = 0; i < sep.length; i++) {
            boolean near = at.samePlace(links.pairA[i], links.pairB[i]);
            Footing.fill(sep[i], all, near);
            if (near) {
                mark(firstPair + i);
            }
        }
        going.begin();
        int[] order = ranked ? rank : new int[rank.length];
        if (!ranked) {
            Arrays.fill(order, -1);
            reached = 0;
        }
        int k = Bits.next(dirty, 0);
        while (k >= 0) {
            Bits.clear(dirty, k);
            look(fact[k], order);
            k = Bits.next(dirty, 0);
        }
        if (!ranked) {
            rankBy(order);
        }
    }

    private void rankBy(int[] order) {
        for (int f = 0; f < order.length; f++) {
            if (order[f] < 0) {
                order[f] = reached++;
            }
            fact[order[f]] = f;
        }
        rank = order;
        ranked = true;
    }

    private void mark(int f) {
        Bits.set(dirty, rank[f]);
    }

    private void look(int f, int[] order) {
        boolean changed;
        if (f < firstPair) {
            changed = release(f);
        } else if (f < firstPart) {
            changed = apart(f - firstPair);
        } else {
            going.settle(f - firstPart);
            for (int k = 0; k < going.touchedCount; k++) {
                wentDown(going.touched[k]);
            }
            changed = going.touchedCount > 0;
        }
        if (!ranked && changed && order[f] < 0) {
            order[f] = reached++;
        }
    }

    private boolean apart(int i) {
        if (!goesWithout(i, false, one)) {
            System.arraycopy(all, 0, one, 0, words);
        }
        if (!goesWithout(i, true, other)) {
            System.arraycopy(all, 0, other, 0, words);
        }
        for (int w = 0; w < words; w++) {
            one[w] &= other[w];
        }
        if (!shrink(sep[i], one)) {
            return false;
        }
        for (int j : links.nodesOfPair[i]) {
            markNode(j);
        }
        for (int p : links.partsOfPair[i]) {
            if (!at.pinned[p]) {
                going.lose(p, was, sep[i]);
                mark(firstPart + p);
            }
        }
        return true;
    }

    /** Collects what one of a pair needs to go without the other; false if it never can. */
    boolean goesWithout(int pair, boolean second, long[] needs) {
        int mover = second ? links.pairB[pair] : links.pairA[pair];
        int stays = second ? links.pairA[pair] : links.pairB[pair];
        boolean covered = second ? links.firstOnSecond[pair] : links.secondOnFirst[pair];
        if (at.pinned[mover] || mover == stays || covered || Bits.get(go[mover], impossible)) {
            return false;
        }
        System.arraycopy(go[mover], 0, needs, 0, words);
        Bits.set(needs, c.nodes + mover);
        for (int j : links.pairRigid[pair]) {
            if (!at.isReleased(j)) {
                Bits.addAll(needs, rel[j]);
            }
        }
        for (int j : links.pairGives[pair]) {
            if (!at.isReleased(j)) {
                Bits.addAll(needs, rel[j]);
            }
        }
        if (at.component[mover] == at.component[stays]) {
            companionsGoWithout(links.companions(pair, second), needs);
        }
        return !Bits.get(needs, impossible);
    }

    /**
     * What goes along with a part must not be held by what stays: each rigid joint of the mover is
     * released, or the parts beyond go along and their own joints to the one that stays are. Looks
     * one joint far.
     */
    private void companionsGoWithout(int[][] companions, long[] needs) {
        for (int[] row : companions) {
            int j = row[0];
            if (!at.together[j]) {
                continue;
            }
            Arrays.fill(beyond, 0);
            int parts = 2 + row[1];
            for (int k = 2; k < parts; k++) {
                Bits.addAll(beyond, go[row[k]]);
            }
            for (int k = parts; k < row.length; k++) {
                if (!at.isReleased(row[k])) {
                    Bits.addAll(beyond, rel[row[k]]);
                }
            }
            Going.addEither(needs, rel[j], beyond);
        }
    }

    private boolean release(int j) {
        boolean changed = c.gives[j] && letGo(j);
        Arrays.fill(one, 0);
        if (c.gives[j]) {
            beforeReleaseOrMove(j, one);
        } else {
            beforeRelease(j, one);
        }
        if (Bits.get(one, impossible)) {
            return changed;
        }
        Bits.set(one, j);
        if (!shrink(rel[j], one)) {
            return changed;
        }
        if (!c.slack[j]) {
            released(j);
        }
        for (int other : links.strained[j]) {
            markNode(other);
        }
        for (long cuts = c.cuts[j] & ~at.cut; cuts != 0; cuts &= cuts - 1) {
            cut(Long.numberOfTrailingZeros(cuts), rel[j]);
        }
        return true;
    }

    private void markNode(int j) {
        if (!at.isReleased(j) && !at.closedNode[j]) {
            mark(j);
        }
    }

    /** What a node that gives needs cut. */
    private boolean letGo(int j) {
        Arrays.fill(one, 0);
        addCut(c.needs[j], one);
        if (!shrink(loose[j], one)) {
            return false;
        }
        lose(j);
        return true;
    }

    /** What the parts of a node need to go has shrunk. */
    private void lose(int j) {
        for (int p : c.holds[j]) {
            if (!at.pinned[p]) {
                going.lose(p, was, loose[j]);
                mark(firstPart + p);
            }
        }
    }

    private void cut(int supply, long[] by) {
        if (!shrink(cut[supply], by)) {
            return;
        }
        for (int needer : links.needers[supply]) {
            markNode(needer);
        }
        for (int p = 0; p < c.parts; p++) {
            if ((at.moveNeeds[p] >> supply & 1) != 0 && !at.pinned[p]) {
                going.lose(p, was, cut[supply]);
                mark(firstPart + p);
            }
        }
    }

    private void released(int j) {
        if (!c.gives[j]) {
            lose(j);
        }
        for (int p : c.holds[j]) {
            for (int i : links.pairsOf[p]) {
                int x = links.pairA[i] == p ? links.pairB[i] : links.pairA[i];
                if (at.samePlace(x, p)
                        && (at.component[x] == at.component[p] || Links.contains(c.holds[j], x))) {
                    mark(firstPair + i);
                }
            }
        }
    }

    /** Adds what must be done before the moves of parts together that are still to be made. */
    void beforeMoves(long[] needs) {
        if (at.asOne.broken()) {
            Bits.addAll(needs, all);
        }
        for (int[] move : at.asOne.moves()) {
            addCut(c.moving.needs(move), needs);
            for (int j : c.moving.given(move, at.released)) {
                Bits.addAll(needs, loose[j]);
            }
            for (int p : move) {
                for (int j : links.rigidOf[p]) {
                    if (!at.isReleased(j) && !within(c.holds[j], move)) {
                        Bits.addAll(needs, rel[j]);
                    }
                }
                for (int i : links.partPairs[p]) {
                    int cover = links.pairA[i] == p ? links.pairB[i] : links.pairA[i];
                    if (at.samePlace(cover, p) && !Links.contains(move, cover)) {
                        Bits.addAll(needs, sep[i]);
                    }
                }
            }
        }
    }

    private static boolean within(int[] some, int[] all) {
        for (int each : some) {
            if (!Links.contains(all, each)) {
                return false;
            }
        }
        return true;
    }

    /** Adds what must be done before a node can be released. */
    void beforeRelease(int j, long[] needs) {
        for (int p : at.asOne.movedBefore(j)) {
            Bits.addAll(needs, go[p]);
            Bits.set(needs, c.nodes + p);
        }
        for (int i : links.nodePairs[j]) {
            Bits.addAll(needs, sep[i]);
        }
        addCut(c.needs[j], needs);
        addStrain(j, needs);
    }

    private void addCut(long supplies, long[] needs) {
        for (long open = supplies & ~at.cut; open != 0; open &= open - 1) {
            Bits.addAll(needs, cut[Long.numberOfTrailingZeros(open)]);
        }
    }

    /** Adds what must be released before a node by whichever way. */
    private void addStrain(int j, long[] needs) {
        Compiled.Option[] options = c.options[j];
        if (options.length == 1) {
            for (int by : options[0].strain()) {
                Bits.addAll(needs, rel[by]);
            }
            return;
        }
        System.arraycopy(all, 0, other, 0, words);
        for (Compiled.Option option : options) {
            Arrays.fill(beyond, 0);
            for (int by : option.strain()) {
                Bits.addAll(beyond, rel[by]);
            }
            for (int w = 0; w < words; w++) {
                other[w] &= beyond[w];
            }
        }
        Bits.addAll(needs, other);
    }

    /** What must be done for a node that gives to be released, by an act or by a move. */
    private void beforeReleaseOrMove(int j, long[] needs) {
        beforeRelease(j, needs);
        for (int p : c.holds[j]) {
            if (!at.pinned[p]) {
                System.arraycopy(go[p], 0, other, 0, words);
                Bits.set(other, c.nodes + p);
                for (int w = 0; w < words; w++) {
                    needs[w] &= other[w];
                }
            }
        }
        addCut(c.needs[j], needs);
    }

    private void wentDown(int p) {
        for (int j : at.asOne.waitingFor(p)) {
            if (!at.closedNode[j]) {
                mark(j);
            }
        }
        for (int j : links.givesOf[p]) {
            markNode(j);
        }
        markPairs(p);
        for (int x : links.neighbours[p]) {
            if (at.component[x] == at.component[p]) {
                for (int i : links.pairsOf[x]) {
                    int a = links.pairA[i];
                    int b = links.pairB[i];
                    if (at.component[a] == at.component[b] && at.samePlace(a, b)) {
                        mark(firstPair + i);
                    }
                }
            }
        }
    }

    private void markPairs(int p) {
        for (int i : links.pairsOf[p]) {
            if (at.samePlace(links.pairA[i], links.pairB[i])) {
                mark(firstPair + i);
            }
        }
    }

    private boolean shrink(long[] set, long[] needs) {
        boolean changed = false;
        for (int w = 0; w < words; w++) {
            long now = set[w] & needs[w];
            was[w] = set[w];
            changed |= now != set[w];
            set[w] = now;
        }
        return changed;
    }
}
