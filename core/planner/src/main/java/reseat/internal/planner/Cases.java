package reseat.internal.planner;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Landmarks;
import reseat.internal.order.Limits;

/**
 * Separates routes by cases. Where a good plan contains an act that not every way needs, plans
 * without it and plans with it are examined in turn: each case is bounded with what it assumes,
 * narrowed by probing, and split again until its bound reaches the best plan known or no such act
 * is left; then A* searches the case. Bounds are weak where routes part and strong within one, so
 * few cases are left to search.
 */
final class Cases {

    private static final int BEAM_WIDTH = 4;

    private final Task task;
    private final Judge judge;
    private final Landmarks landmarks;
    private final Limits limits;
    private final Probing probing;
    private @Nullable Node best;
    private boolean cutShort;

    Cases(Task task, Judge judge, Limits limits) {
        this.task = task;
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
        long before = Bound.NEVER;
        while (cost() < before) {
            before = cost();
            descend();
        }
        long bound = known == null ? search(fresh()) : split(route(), 0);
        return Math.min(bound, cost());
    }

    /**
     * Descends to a good plan: repeatedly excludes an act that not every way needs and follows the
     * route that a beam then finds, even if it costs more for the moment, as long as the bound
     * allows an improvement.
     */
    private void descend() {
        Landmarks.Assumptions here = landmarks.assumptions();
        Set<Integer> tried = new HashSet<>();
        List<Node.Step> route = route();
        while (!limits.over()) {
            List<Integer> open = judge.undecided(judge.judge(fresh(), 0), route);
            open.removeAll(tried);
            if (open.isEmpty()) {
                break;
            }
            int act = open.get(0);
            tried.add(act);
            Landmarks.Assumptions before = landmarks.assumptions();
            landmarks.exclude(act);
            Node probe = fresh();
            judge.judge(probe, 0);
            Node found = probe.rest < cost() ? beam(cost()) : null;
            if (found == null) {
                landmarks.assume(before);
            } else {
                better(found);
                route = found.steps();
            }
        }
        landmarks.assume(here);
    }

    private List<Node.Step> route() {
        return best == null ? List.of() : best.steps();
    }

    private @Nullable Node beam(long toBeat) {
        Node draft = new Draft(task, judge, limits).run(BEAM_WIDTH);
        if (draft != null && draft.cost < toBeat && task.isLarge()) {
            return draft;
        }
        return new Beam(task, judge, new Expander(task, landmarks), limits)
                .run(fresh(), BEAM_WIDTH, true, toBeat);
    }

    private long split(List<Node.Step> route, long inherited) {
        Node start = fresh();
        long bound = Math.max(inherited, probing.run(start, route, cost()));
        if (bound >= cost() || limits.over()) {
            return bound;
        }
        int act = choose(start, route);
        if (act < 0) {
            return Math.max(bound, search(start));
        }
        Landmarks.Assumptions here = landmarks.assumptions();
        landmarks.exclude(act);
        long without = otherRoute(bound);
        landmarks.assume(here);
        landmarks.require(act);
        long with = split(route, bound);
        landmarks.assume(here);
        return Math.max(bound, Math.min(without, with));
    }

    /** Examines the plans that lack an act just excluded. */
    private long otherRoute(long inherited) {
        Node start = fresh();
        judge.judge(start, 0);
        if (start.rest >= cost()) {
            return start.rest;
        }
        Node found = beam(Bound.NEVER);
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

    /** Returns the act of a route whose two cases have the best bounds, or -1. */
    private int choose(Node start, List<Node.Step> route) {
        long[] needs = judge.judge(start, 0);
        Map<Integer, Long> with = new LinkedHashMap<>();
        for (int act : judge.undecided(needs, route)) {
            long[] more = needs.clone();
            landmarks.addWork(more, act);
            with.put(act, judge.bound(start, more, 0));
        }
        int chosen = -1;
        long most = -1;
        Landmarks.Assumptions here = landmarks.assumptions();
        for (Map.Entry<Integer, Long> act : with.entrySet()) {
            landmarks.exclude(act.getKey());
            Node probe = fresh();
            judge.judge(probe, 0);
            landmarks.assume(here);
            long least = Math.min(cost(), Math.min(probe.rest, act.getValue()));
            if (least > most) {
                most = least;
                chosen = act.getKey();
            }
        }
        return chosen;
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
