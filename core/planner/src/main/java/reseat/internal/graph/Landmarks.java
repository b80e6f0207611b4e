package reseat.internal.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What every way from a state to a goal must contain: releases of nodes and moves of parts, each
 * with what every way must have done before it.
 *
 * <p>The facts form an AND/OR graph. A node is released (AND) when its covers are apart from its
 * site, its supplies are cut and what strains it is released, or, if it gives (OR), when one of its
 * parts goes; a supply is cut when one of its isolators is released (OR); two parts are apart (OR)
 * when one of them has gone without the other; a part can go (AND) when each of its rigid joints is
 * released or the parts beyond go along (OR), the same for the supplies that joints which give need
 * cut, each of its covers has left or goes along (OR), and the supplies are cut that it needs cut
 * in whatever company. Facts once reached are assumed to stay reached. The needs of a fact are the
 * union over the AND and the intersection over the OR of the needs below, as the <em>greatest</em>
 * solution, so that an alternative which needs the fact itself does not count; but parts that go
 * along support each other, so the needs of going are the <em>least</em> solution for given needs
 * of the rest.
 *
 * <p>Method: complete landmarks of AND/OR graphs (Keyder, Richter, Helmert, ECAI 2010), with the
 * inner least fixpoint added here for groups. Sound: by induction over the acts of any plan,
 * whatever the plan reaches at an act, it has met all needs of it before. Not thread-safe.
 */
public final class Landmarks {

    private final Compiled c;
    private final Need need;
    private final int words;
    private final int impossibleBit;
    private final Links links;
    private final Footing at;
    private final Fixpoint facts;
    private final long[][] rel;
    private final long[][] sep;
    private final long[][] go;
    private final Hanging hanging;
    private final boolean[] forcedNode;
    private final boolean[] forcedPart;
    private final boolean[] @Nullable [] company;

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
        links = new Links(c, need);
        at = new Footing(c, need.reach());
        facts = new Fixpoint(c, links, at);
        rel = facts.rel;
        sep = facts.sep;
        go = facts.going.go;
        hanging = new Hanging(c, at, go);
        forcedNode = new boolean[c.nodes];
        forcedPart = new boolean[c.parts];
        company = new boolean[c.parts][];
    }

    /** Returns the width of a set of needs, in words. */
    public int words() {
        return words;
    }

    /** Returns the bit that stands for the move of a part; the release of node j is bit j. */
    public int moveBit(int part) {
        return c.nodes + part;
    }

    /** Returns whether a set of needs is that of something that cannot be reached. */
    public boolean impossible(long[] needs) {
        return Bits.get(needs, impossibleBit);
    }

    /** Returns the number of works: releases of nodes first, then moves of parts. */
    public int works() {
        return impossibleBit;
    }

    /** Assumes in all later calls that a work is never done. */
    public void exclude(int work) {
        excluded(work, true);
    }

    /** Undoes {@link #exclude} after a trial; never for a work that the request rules out. */
    public void readmit(int work) {
        excluded(work, false);
    }

    private void excluded(int work, boolean never) {
        if (work < c.nodes) {
            at.closedNode[work] = never;
        } else {
            at.pinned[work - c.nodes] = never;
        }
    }

    /** Returns whether a work is never done: ruled out by the request, or excluded. */
    public boolean isExcluded(int work) {
        return work < c.nodes ? at.closedNode[work] : at.pinned[work - c.nodes];
    }

    /**
     * Returns the parts that never move; the array follows {@link #exclude} and must not be
     * changed.
     */
    public boolean[] pinnedParts() {
        return at.pinned;
    }

    /**
     * Returns the nodes that are never released; the array follows {@link #exclude} and must not be
     * changed.
     */
    public boolean[] closedNodes() {
        return at.closedNode;
    }

    /**
     * Returns the supplies that must be cut before a part is moved in whatever company; refers to
     * the last call of {@link #compute}.
     */
    public long supplies(int part) {
        return at.moveNeeds[part];
    }

    public boolean isPinned(int part) {
        return at.pinned[part];
    }

    /**
     * Returns whether a work can be required: a state shows whether a part was moved only where the
     * part shares the place of the base at the start.
     */
    public boolean canRequire(int work) {
        return work < c.nodes || c.startPlace[work - c.nodes] == c.startPlace[c.base];
    }

    /**
     * Assumes in all later calls that a work is needed.
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
     * @param asOne moves of parts together that still have to be made
     * @return the needs of the goal; a fresh set
     */
    public long[] compute(long[] releasedNodes, char[] placeOf, int[] toMove, List<int[]> asOne) {
        at.stand(releasedNodes, placeOf, asOne);
        Arrays.fill(company, null);
        facts.solve();
        long[] goal = new long[words];
        for (int j : need.released()) {
            Bits.addAll(goal, rel[j]);
        }
        if (need.reach() >= 0) {
            facts.beforeRelease(need.reach(), goal);
        }
        for (int i : links.goalPairs) {
            Bits.addAll(goal, sep[i]);
        }
        for (int p : toMove) {
            addWork(goal, moveBit(p));
        }
        facts.beforeMoves(goal);
        for (int j = 0; j < c.nodes; j++) {
            if (forcedNode[j]) {
                Bits.addAll(goal, rel[j]);
            }
        }
        for (int p = 0; p < c.parts; p++) {
            if (forcedPart[p] && at.samePlace(p, c.base)) {
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
        if (at.pinned[part] || part == stays || Links.contains(c.partUnder[part], stays)) {
            return facts.all().clone();
        }
        long[] needs = go[part].clone();
        Bits.set(needs, moveBit(part));
        for (int j : c.nodesOf[part]) {
            // a node that gives is released by the move itself, so its release is needed, too
            if (!c.slack[j] && !at.isReleased(j) && Links.contains(c.holds[j], stays)) {
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
     * @param without a part that the move leaves behind, or -1
     */
    public boolean[] company(int part, int without) {
        return without < 0 ? company(part) : hanging.on(part, without);
    }

    /** Returns the parts that a move of a part could take along at most; not to be changed. */
    public boolean[] company(int part) {
        boolean[] known = company[part];
        if (known == null) {
            known = hanging.on(part, -1);
            company[part] = known;
        }
        return known;
    }

    /**
     * Finds choices of an isolator: for each supply that some needs require to be cut and none of
     * the needs cuts, the unreleased nodes of which one must be released. Valid until the next call
     * of {@link #compute}.
     */
    public List<int[]> isolatorChoices(long[] needs) {
        long wanted = 0;
        long given = at.cut;
        for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
            if (work < c.nodes) {
                wanted |= c.needs[work];
                given |= c.cuts[work];
            } else if (work < impossibleBit) {
                wanted |= at.moveNeeds[work - c.nodes];
            }
        }
        List<int[]> choices = new ArrayList<>();
        for (long open = wanted & ~given; open != 0; open &= open - 1) {
            long supply = Long.lowestOneBit(open);
            choices.add(
                    IntStream.range(0, c.nodes)
                            .filter(j -> (c.cuts[j] & supply) != 0 && !at.closedNode[j])
                            .toArray());
        }
        return choices;
    }

    /**
     * Finds choices between two ways that some needs leave open: of each two sets, both outside the
     * needs, every plan does one. Valid until the next call of {@link #compute}.
     */
    public List<long[][]> choices(long[] needs) {
        return new Choices(c, need, links, at, facts, needs).list();
    }

    /**
     * Finds works outside some needs that could replace some of them: while they may be done, fewer
     * orderings among the needs are certain. Valid until the next call of {@link #compute}.
     */
    public int[] alternatives(long[] needs) {
        long[] works = new Choices(c, need, links, at, facts, needs).alternatives();
        return IntStream.range(0, impossibleBit)
                .filter(work -> Bits.get(works, work) && !isExcluded(work))
                .toArray();
    }

    /** Returns whether the release of a node would part what hangs together. */
    public static boolean breaks(Compiled c, int[] parts, long[] released, int node) {
        return AsOne.breaks(c, parts, released, node);
    }

    /** The assumptions: what is closed, pinned and forced. */
    public static final class Assumptions {
        private final boolean[] closedNode;
        private final boolean[] pinned;
        private final boolean[] forcedNode;
        private final boolean[] forcedPart;

        private Assumptions(Landmarks of) {
            closedNode = of.at.closedNode.clone();
            pinned = of.at.pinned.clone();
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
        System.arraycopy(earlier.closedNode, 0, at.closedNode, 0, c.nodes);
        System.arraycopy(earlier.pinned, 0, at.pinned, 0, c.parts);
        System.arraycopy(earlier.forcedNode, 0, forcedNode, 0, forcedNode.length);
        System.arraycopy(earlier.forcedPart, 0, forcedPart, 0, forcedPart.length);
    }

    /**
     * Returns a number that parts share if one move could take them together: unreleased joints
     * link them over parts of the same tool and posture that may move. Valid until the next call of
     * {@link #compute}.
     */
    public int component(int part) {
        return at.component[part];
    }
}
