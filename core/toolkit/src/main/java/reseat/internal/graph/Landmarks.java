package reseat.internal.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What every way from a state to a goal must contain: releases of nodes and moves of parts, each
 * with what every way must have done before it.
 *
 * <p>The facts form an AND/OR graph. A node is released (AND) when its covers are apart from its
 * site and its supplies are cut; two parts are apart (OR) when one of them has gone without the
 * other; a part can go (AND) when each of its rigid joints is released or the parts beyond go along
 * (OR), and each of its covers is gone or goes along (OR). Facts once reached are taken to stay
 * reached. The needs of a fact are the union over the AND and the intersection over the OR of the
 * needs below, as the <em>greatest</em> solution, so that an alternative which needs the fact
 * itself does not count; but parts that go along support each other, so the needs of going are the
 * <em>least</em> solution for given needs of the rest.
 *
 * <p>Method: complete landmarks of AND/OR graphs (Keyder, Richter, Helmert, ECAI 2010), with the
 * inner least fixpoint added here for groups. Sound: by induction over the acts of any plan,
 * whatever it reaches at an act, it has done all needs of before. Not for use by several threads.
 */
public final class Landmarks {

    private final Compiled c;
    private final Need need;
    private final int words;
    private final int impossibleBit;

    private final int[] pairA;
    private final int[] pairB;
    private final int[][] nodePairs;
    private final int[][] partPairs;
    private final int[] goalPairs;
    private final int[][] pairRigid;

    /**
     * Nodes taken to be never released, parts taken to be never moved: given by the caller, kept
     * between calls.
     */
    private final boolean[] closedNode;

    private final boolean[] pinned;
    private final boolean[] forcedNode;
    private final boolean[] forcedPart;

    private final long[][] rel;
    private final long[][] sep;
    private final long[][] go;
    private final long[] all;
    private final int[] component;
    private final boolean[] @Nullable [] company;
    private final long[] scratchA;
    private final long[] scratchB;
    private final long[] scratchC;

    private long[] released = new long[0];
    private char[] place = new char[0];
    private long cut;

    /**
     * Prepares for a goal.
     *
     * @param c the compiled request
     * @param need the goal
     */
    public Landmarks(Compiled c, Need need) {
        this.c = c;
        this.need = need;
        impossibleBit = c.nodes + c.parts;
        words = Bits.words(impossibleBit + 1);
        Map<Long, Integer> index = new HashMap<>();
        List<int[]> pairs = new ArrayList<>();
        nodePairs = new int[c.nodes][];
        for (int j = 0; j < c.nodes; j++) {
            int at = c.site[j];
            nodePairs[j] = Arrays.stream(c.under[j]).map(u -> pair(u, at, index, pairs)).toArray();
        }
        partPairs = new int[c.parts][];
        for (int p = 0; p < c.parts; p++) {
            int part = p;
            partPairs[p] =
                    Arrays.stream(c.partUnder[p]).map(u -> pair(u, part, index, pairs)).toArray();
        }
        goalPairs =
                need.apart().stream().mapToInt(ab -> pair(ab[0], ab[1], index, pairs)).toArray();
        pairA = pairs.stream().mapToInt(ab -> ab[0]).toArray();
        pairB = pairs.stream().mapToInt(ab -> ab[1]).toArray();
        pairRigid = new int[pairs.size()][];
        for (int i = 0; i < pairs.size(); i++) {
            int other = pairB[i];
            pairRigid[i] =
                    Arrays.stream(c.nodesOf[pairA[i]])
                            .filter(
                                    j ->
                                            !c.slack[j]
                                                    && Arrays.stream(c.holds[j])
                                                            .anyMatch(h -> h == other))
                            .toArray();
        }
        closedNode = new boolean[c.nodes];
        for (int j = 0; j < c.nodes; j++) {
            closedNode[j] = c.options[j].length == 0 || j == need.reach();
        }
        pinned = c.stuck.clone();
        forcedNode = new boolean[c.nodes];
        forcedPart = new boolean[c.parts];
        rel = new long[c.nodes][words];
        sep = new long[pairs.size()][words];
        go = new long[c.parts][words];
        all = new long[words];
        for (int bit = 0; bit <= impossibleBit; bit++) {
            Bits.set(all, bit);
        }
        component = new int[c.parts];
        company = new boolean[c.parts][];
        scratchA = new long[words];
        scratchB = new long[words];
        scratchC = new long[words];
    }

    /** Returns the width of a set of needs, in words. */
    public int words() {
        return words;
    }

    /** Returns the bit that stands for the move of a part; the release of node j is bit j. */
    public int moveBit(int part) {
        return c.nodes + part;
    }

    /** Tells whether a set of needs is that of something that cannot be reached. */
    public boolean impossible(long[] needs) {
        return Bits.get(needs, impossibleBit);
    }

    /** Returns the number of works: releases of nodes first, then moves of parts. */
    public int works() {
        return impossibleBit;
    }

    /** Takes a work to be never done, in all later calls. */
    public void exclude(int work) {
        excluded(work, true);
    }

    /** Undoes {@link #exclude}, for trying out; never for a work that the request rules out. */
    public void readmit(int work) {
        excluded(work, false);
    }

    private void excluded(int work, boolean never) {
        if (work < c.nodes) {
            closedNode[work] = never;
        } else {
            pinned[work - c.nodes] = never;
        }
    }

    /** Tells whether a work is never done: ruled out by the request, or excluded. */
    public boolean isExcluded(int work) {
        return work < c.nodes ? closedNode[work] : pinned[work - c.nodes];
    }

    /**
     * Returns the parts that never move; the array follows {@link #exclude} and must not be
     * changed.
     */
    public boolean[] pinnedParts() {
        return pinned;
    }

    public boolean isPinned(int part) {
        return pinned[part];
    }

    /**
     * Tells whether a work can be required: a state shows whether a part was moved only where the
     * part shares the place of the base at the start.
     */
    public boolean canRequire(int work) {
        return work < c.nodes || c.startPlace[work - c.nodes] == c.startPlace[c.base];
    }

    /**
     * Takes a work to be needed, in all later calls.
     *
     * @param work one that {@link #canRequire can be required}
     */
    public void require(int work) {
        if (work < c.nodes) {
            forcedNode[work] = true;
        } else {
            forcedPart[work - c.nodes] = true;
        }
    }

    /**
     * Computes the needs of everything from a state.
     *
     * @param releasedNodes released nodes
     * @param placeOf place of every part
     * @param toMove parts that still have to be moved, whatever else the goal needs
     * @return the needs of the goal; a set of its own
     */
    public long[] compute(long[] releasedNodes, char[] placeOf, int[] toMove) {
        released = releasedNodes;
        place = placeOf;
        cut = c.startCut;
        for (int j = Bits.next(releasedNodes, 0); j >= 0; j = Bits.next(releasedNodes, j + 1)) {
            cut |= c.cuts[j];
        }
        components();
        Arrays.fill(company, null);
        for (int j = 0; j < c.nodes; j++) {
            fill(rel[j], !Bits.get(released, j));
        }
        for (int i = 0; i < sep.length; i++) {
            fill(sep[i], place[pairA[i]] == place[pairB[i]]);
        }
        boolean changed = true;
        while (changed) {
            going();
            changed = false;
            for (int i = 0; i < sep.length; i++) {
                if (place[pairA[i]] == place[pairB[i]]) {
                    changed |= apart(i);
                }
            }
            for (int j = 0; j < c.nodes; j++) {
                if (!Bits.get(released, j)) {
                    changed |= release(j);
                }
            }
        }
        long[] goal = new long[words];
        for (int j : need.released()) {
            Bits.addAll(goal, rel[j]);
        }
        if (need.reach() >= 0) {
            beforeRelease(need.reach(), goal);
        }
        for (int i : goalPairs) {
            Bits.addAll(goal, sep[i]);
        }
        for (int p : toMove) {
            addWork(goal, moveBit(p));
        }
        for (int j = 0; j < c.nodes; j++) {
            if (forcedNode[j]) {
                Bits.addAll(goal, rel[j]);
            }
        }
        for (int p = 0; p < c.parts; p++) {
            if (forcedPart[p] && place[p] == place[c.base]) {
                addWork(goal, moveBit(p));
            }
        }
        return goal;
    }

    /**
     * Returns what must be done before and for the release of a node, itself included; valid until
     * the next call.
     */
    public long[] needsOfRelease(int node) {
        return rel[node];
    }

    /** Returns what must be done before a part can be moved; valid until the next call. */
    public long[] needsOfMove(int part) {
        return go[part];
    }

    /** Adds a work and all that it needs. */
    public void addWork(long[] needs, int work) {
        Bits.addAll(needs, work < c.nodes ? rel[work] : go[work - c.nodes]);
        Bits.set(needs, work);
    }

    /**
     * Returns what must be done for a part to go while another stays behind, its move included;
     * refers to the last call of {@link #compute}.
     */
    public long[] needsOfLeaving(int part, int stays) {
        if (pinned[part] || part == stays || covers(stays, part)) {
            return all.clone();
        }
        long[] needs = go[part].clone();
        Bits.set(needs, moveBit(part));
        for (int j : c.nodesOf[part]) {
            if (!c.slack[j]
                    && !Bits.get(released, j)
                    && Arrays.stream(c.holds[j]).anyMatch(h -> h == stays)) {
                Bits.addAll(needs, rel[j]);
            }
        }
        return needs;
    }

    /**
     * Returns the parts that a move of a part could take along at most: those of its tool and
     * posture that hang on it by joints which need not be released before any part between them can
     * go. Valid until the next call of {@link #compute}.
     *
     * @param part the part
     * @param without a part that the move leaves behind, or -1
     */
    public boolean[] company(int part, int without) {
        return without < 0 ? company(part) : reach(part, without);
    }

    /** Returns the parts that a move of a part could take along at most; not to be changed. */
    public boolean[] company(int part) {
        boolean[] known = company[part];
        if (known == null) {
            known = reach(part, -1);
            company[part] = known;
        }
        return known;
    }

    private boolean[] reach(int part, int without) {
        boolean[] near = new boolean[c.parts];
        int[] queue = new int[c.parts];
        int end = 0;
        queue[end++] = part;
        near[part] = true;
        for (int k = 0; k < end; k++) {
            int x = queue[k];
            for (int j : c.nodesOf[x]) {
                if (Bits.get(released, j) || Bits.get(go[x], j) || Bits.get(go[part], j)) {
                    continue;
                }
                for (int y : c.holds[j]) {
                    if (!near[y]
                            && y != without
                            && !pinned[y]
                            && c.partClass[y] == c.partClass[part]
                            && !Bits.get(go[y], j)) {
                        near[y] = true;
                        queue[end++] = y;
                    }
                }
            }
        }
        return near;
    }

    /**
     * Finds choices of an isolator: for each supply that some needs ask to be cut and none of the
     * needs cuts, the unreleased nodes of which one must be released. Valid until the next call of
     * {@link #compute}.
     */
    public List<int[]> isolatorChoices(long[] needs) {
        long wanted = 0;
        long given = cut;
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            wanted |= c.needs[j];
            given |= c.cuts[j];
        }
        List<int[]> choices = new ArrayList<>();
        for (long open = wanted & ~given; open != 0; open &= open - 1) {
            long supply = Long.lowestOneBit(open);
            choices.add(
                    IntStream.range(0, c.nodes)
                            .filter(j -> (c.cuts[j] & supply) != 0 && !closedNode[j])
                            .toArray());
        }
        return choices;
    }

    /** What is closed, pinned and forced. */
    public static final class Assumptions {
        private final boolean[] closedNode;
        private final boolean[] pinned;
        private final boolean[] forcedNode;
        private final boolean[] forcedPart;

        private Assumptions(Landmarks of) {
            closedNode = of.closedNode.clone();
            pinned = of.pinned.clone();
            forcedNode = of.forcedNode.clone();
            forcedPart = of.forcedPart.clone();
        }
    }

    /** Returns what is closed, pinned and forced now. */
    public Assumptions assumptions() {
        return new Assumptions(this);
    }

    /** Goes back to earlier assumptions. */
    public void assume(Assumptions earlier) {
        System.arraycopy(earlier.closedNode, 0, closedNode, 0, closedNode.length);
        System.arraycopy(earlier.pinned, 0, pinned, 0, pinned.length);
        System.arraycopy(earlier.forcedNode, 0, forcedNode, 0, forcedNode.length);
        System.arraycopy(earlier.forcedPart, 0, forcedPart, 0, forcedPart.length);
    }

    /**
     * Returns a number that parts share if one move could take them together: unreleased joints
     * link them over parts of the same tool and posture that may move. Valid until the next call of
     * {@link #compute}.
     */
    public int component(int part) {
        return component[part];
    }

    private static int pair(int a, int b, Map<Long, Integer> index, List<int[]> pairs) {
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        return index.computeIfAbsent(
                key,
                k -> {
                    pairs.add(new int[] {Math.min(a, b), Math.max(a, b)});
                    return pairs.size() - 1;
                });
    }

    private void fill(long[] set, boolean withAll) {
        if (withAll) {
            System.arraycopy(all, 0, set, 0, words);
        } else {
            Arrays.fill(set, 0);
        }
    }

    /**
     * Parts that a move could ever take together: linked by unreleased joints over parts of one
     * tool and posture.
     */
    private void components() {
        for (int p = 0; p < c.parts; p++) {
            component[p] = p;
        }
        for (int j = 0; j < c.nodes; j++) {
            if (Bits.get(released, j)) {
                continue;
            }
            for (int p : c.holds[j]) {
                for (int q : c.holds[j]) {
                    if (p < q && !pinned[p] && !pinned[q] && c.partClass[p] == c.partClass[q]) {
                        link(root(p), root(q));
                    }
                }
            }
        }
        for (int p = 0; p < c.parts; p++) {
            component[p] = root(p);
        }
    }

    private void link(int p, int q) {
        component[Math.max(p, q)] = Math.min(p, q);
    }

    private int root(int part) {
        int p = part;
        while (component[p] != p) {
            p = component[p];
        }
        return p;
    }

    /**
     * Least solution of the needs of going, for the needs of releases and separations as they
     * stand.
     */
    private void going() {
        for (int p = 0; p < c.parts; p++) {
            fill(go[p], pinned[p]);
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int p = 0; p < c.parts; p++) {
                if (!pinned[p]) {
                    changed |= go(p);
                }
            }
        }
    }

    private boolean go(int p) {
        long[] needs = scratchA;
        System.arraycopy(go[p], 0, needs, 0, words);
        for (int j : c.nodesOf[p]) {
            if (c.slack[j] || Bits.get(released, j)) {
                continue;
            }
            if (together(p, c.holds[j])) {
                Arrays.fill(scratchB, 0);
                for (int x : c.holds[j]) {
                    if (x != p) {
                        Bits.addAll(scratchB, go[x]);
                    }
                }
                addEither(needs, rel[j], scratchB);
            } else {
                Bits.addAll(needs, rel[j]);
            }
        }
        for (int i : partPairs[p]) {
            int cover = pairA[i] == p ? pairB[i] : pairA[i];
            if (place[cover] != place[p] || cover == p) {
                continue;
            }
            if (mayGoTogether(p, cover)) {
                addEither(needs, sep[i], go[cover]);
            } else {
                Bits.addAll(needs, sep[i]);
            }
        }
        if (Arrays.equals(needs, go[p])) {
            return false;
        }
        System.arraycopy(needs, 0, go[p], 0, words);
        return true;
    }

    private boolean together(int p, int[] parts) {
        for (int x : parts) {
            if (x != p && !mayGoTogether(p, x)) {
                return false;
            }
        }
        return true;
    }

    /** Parts of one move agree on tool and posture and hang together. */
    private boolean mayGoTogether(int p, int x) {
        return !pinned[x] && component[x] == component[p];
    }

    private static void addEither(long[] needs, long[] one, long[] other) {
        for (int i = 0; i < needs.length; i++) {
            needs[i] |= one[i] & other[i];
        }
    }

    private boolean apart(int i) {
        long[] one = scratchA;
        long[] other = scratchB;
        goesWithout(pairA[i], pairB[i], i, one);
        goesWithout(pairB[i], pairA[i], i, other);
        return shrink(sep[i], one, other);
    }

    private void goesWithout(int mover, int stays, int pair, long[] needs) {
        if (pinned[mover] || mover == stays || covers(stays, mover)) {
            System.arraycopy(all, 0, needs, 0, words);
            return;
        }
        System.arraycopy(go[mover], 0, needs, 0, words);
        Bits.set(needs, moveBit(mover));
        for (int j : pairRigid[pair]) {
            if (!Bits.get(released, j)) {
                Bits.addAll(needs, rel[j]);
            }
        }
        if (component[mover] == component[stays]) {
            companionsGoWithout(mover, stays, needs);
        }
    }

    /**
     * What goes along with a part must not be held by what stays: each rigid joint of the mover is
     * released, or the parts beyond go along and their own joints to the one that stays are. Looks
     * one joint far.
     */
    private void companionsGoWithout(int mover, int stays, long[] needs) {
        for (int j : c.nodesOf[mover]) {
            if (c.slack[j]
                    || Bits.get(released, j)
                    || holds(j, stays)
                    || !together(mover, c.holds[j])) {
                continue;
            }
            Arrays.fill(scratchC, 0);
            for (int x : c.holds[j]) {
                if (x == mover) {
                    continue;
                }
                Bits.addAll(scratchC, go[x]);
                for (int beyond : c.nodesOf[x]) {
                    if (!c.slack[beyond] && !Bits.get(released, beyond) && holds(beyond, stays)) {
                        Bits.addAll(scratchC, rel[beyond]);
                    }
                }
            }
            addEither(needs, rel[j], scratchC);
        }
    }

    private boolean holds(int node, int part) {
        for (int p : c.holds[node]) {
            if (p == part) {
                return true;
            }
        }
        return false;
    }

    private boolean covers(int cover, int part) {
        for (int u : c.partUnder[part]) {
            if (u == cover) {
                return true;
            }
        }
        return false;
    }

    private static boolean shrink(long[] set, long[] one, long[] other) {
        boolean changed = false;
        for (int w = 0; w < set.length; w++) {
            long now = set[w] & one[w] & other[w];
            changed |= now != set[w];
            set[w] = now;
        }
        return changed;
    }

    private boolean release(int j) {
        if (closedNode[j]) {
            return false;
        }
        long[] needs = scratchA;
        Arrays.fill(needs, 0);
        beforeRelease(j, needs);
        Bits.set(needs, j);
        return shrink(rel[j], needs, needs);
    }

    private void beforeRelease(int j, long[] needs) {
        for (int i : nodePairs[j]) {
            Bits.addAll(needs, sep[i]);
        }
        for (long open = c.needs[j] & ~cut; open != 0; open &= open - 1) {
            isolators(Long.lowestOneBit(open), needs);
        }
    }

    private void isolators(long supply, long[] needs) {
        System.arraycopy(all, 0, scratchB, 0, words);
        for (int j = 0; j < c.nodes; j++) {
            if ((c.cuts[j] & supply) != 0) {
                for (int w = 0; w < words; w++) {
                    scratchB[w] &= rel[j][w];
                }
            }
        }
        Bits.addAll(needs, scratchB);
    }
}
