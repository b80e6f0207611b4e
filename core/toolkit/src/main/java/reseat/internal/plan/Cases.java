package reseat.internal.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * Tells routes apart. Where a good plan contains an act that not every way needs, plans without it
 * and plans with it are looked at in turn: each case is bounded with what it assumes, narrowed by
 * probing, and split again until its bound reaches the best plan known or no such act is left; then
 * A* searches the case. Bounds are weak where routes part and strong within one, so few cases are
 * left to search.
 */
final class Cases {

    private static final int BEAM_WIDTH = 4;

    private final Task task;
    private final Compiled c;
    private final Judge judge;
    private final Landmarks landmarks;
    private final Limits limits;
    private final Probing probing;
    private @Nullable Node best;
    private boolean cutShort;

    Cases(Task task, Judge judge, Limits limits) {
        this.task = task;
        this.c = task.c;
        this.judge = judge;
        this.landmarks = judge.landmarks;
        this.limits = limits;
        this.probing = new Probing(task, judge, limits);
    }

    /** Returns the best goal node known. */
    @Nullable Node best() {
        return best;
    }

    /**
     * Searches all cases.
     *
     * @param known the best goal node known
     * @return a lower bound on every plan, in milliseconds; the cost of {@link #best} if it is
     *     proved
     */
    long run(@Nullable Node known) {
        best = known;
        long bound = known == null ? search(fresh()) : split(known.steps(), 0);
        return Math.min(bound, cost());
    }

    private long split(List<Node.Step> route, long inherited) {
        Node start = fresh();
        long bound = Math.max(inherited, probing.run(start, route, cost()));
        if (bound >= cost() || limits.over()) {
            return bound;
        }
        int act = undecided(judge.judge(start, 0), route);
        if (act < 0) {
            return Math.max(bound, search(start));
        }
        Landmarks.Assumptions here = landmarks.assumptions();
        exclude(act);
        long without = otherRoute(bound);
        landmarks.assume(here);
        force(act);
        long with = split(route, bound);
        landmarks.assume(here);
        return Math.max(bound, Math.min(without, with));
    }

    /** Looks at the plans that lack an act just excluded. */
    private long otherRoute(long inherited) {
        Node start = fresh();
        judge.judge(start, 0);
        if (start.rest >= cost()) {
            return start.rest;
        }
        Beam beam = new Beam(task, judge, new Expander(task, landmarks), limits);
        Node found = beam.run(fresh(), BEAM_WIDTH, true, Bound.NEVER);
        if (found == null) {
            return limits.over() ? inherited : Math.max(inherited, search(start));
        }
        better(found);
        return split(found.steps(), Math.max(inherited, start.rest));
    }

    private long search(Node start) {
        Expander expander = new Expander(task, landmarks);
        BestFirst exact = new BestFirst(task, judge, expander, limits);
        better(exact.run(start, cost()));
        cutShort |= expander.cutShort();
        return cutShort ? 0 : exact.openBound();
    }

    /**
     * Returns the first act of a route that is neither needed nor decided: a node, or a part past
     * all nodes; or -1.
     */
    private int undecided(long[] needs, List<Node.Step> route) {
        for (Node.Step step : route) {
            if (step instanceof Node.Step.Release release) {
                if (!Bits.get(needs, release.node()) && !landmarks.isClosed(release.node())) {
                    return release.node();
                }
            } else if (step instanceof Node.Step.Move move) {
                for (int p : move.parts()) {
                    if (!Bits.get(needs, landmarks.moveBit(p))
                            && !landmarks.isPinned(p)
                            && c.startPlace[p] == c.startPlace[c.base]) {
                        return c.nodes + p;
                    }
                }
            }
        }
        return -1;
    }

    private void exclude(int act) {
        if (act < c.nodes) {
            landmarks.close(act);
        } else {
            landmarks.pin(act - c.nodes);
        }
    }

    private void force(int act) {
        if (act < c.nodes) {
            landmarks.force(act);
        } else {
            landmarks.forceMove(act - c.nodes);
        }
    }

    private Node fresh() {
        return new Node(task.start(), null, null, 0, 0);
    }

    private long cost() {
        return best == null ? Bound.NEVER : best.cost;
    }

    private void better(@Nullable Node found) {
        if (found != null && found.cost < cost()) {
            best = found;
        }
    }
}
