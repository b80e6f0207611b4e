package reseat.internal.planner;

import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.order.Limits;
import reseat.plan.Plan.Ended;

/**
 * Finds the best plan: a draft for some plan soon, a tree of cases to bound it, a beam that widens
 * for a better one, probing to bound and narrow, A* for the rest.
 */
final class Search {

    /** The result: the best goal node if any, a bound on every plan, and why the search ended. */
    record Outcome(@Nullable Node best, long lowerBoundMs, Ended ended) {}

    private static final int FIRST_WIDTH = 2;
    private static final int WIDER = 4;
    private static final int DRAFT_WIDTH = 20;
    private static final int ORDER_WIDTH = 200;
    private static final double DRAFT_SHARE = 0.15;
    private static final double CASES_SHARE = 0.9;

    private static final int WIDEST_BEFORE_CASES = 8;
    private static final int WIDEST = 2048;

    private final Task task;
    private final Limits limits;
    private final Judge judge;
    private @Nullable Node best;

    Search(Task task, Limits limits) {
        this.task = task;
        this.limits = limits;
        judge = new Judge(task, limits);
    }

    Outcome run() {
        Node start = new Node(task.start(), null, null, 0, 0);
        judge.judge(start, 0);
        if (start.rest >= Bound.NEVER) {
            return new Outcome(null, Bound.NEVER, Ended.PROVED);
        }
        Beam beam = new Beam(task, judge, new Expander(task, judge.landmarks), limits);
        Draft draft = new Draft(task, judge, limits);
        // an early plan, for small limits and cancelled searches
        if (task.isLarge()) {
            better(draft.run(DRAFT_WIDTH));
        }
        if (best == null) {
            widen(beam, start, 1);
        }
        judge.judge(start, 0);
        long[] needs = judge.needs(start);
        long setups = judge.setups(start, needs, judge.thorough());
        long bound = Math.max(start.rest, judge.withoutSetups(start, needs) + setups);
        if (task.isLarge()) {
            bound = tellApart(draft, setups, bound, CASES_SHARE);
        }
        // where routes part, cases find more than a wide beam does; a full teardown has one route
        double share = task.need.teardown() ? 0.8 : 0.3;
        int widest = task.need.teardown() ? WIDEST : WIDEST_BEFORE_CASES;
        for (int width = FIRST_WIDTH;
                width <= widest && cost() > bound && limits.used() < share;
                width *= WIDER) {
            widen(beam, start, width);
        }
        if (!task.isLarge()) {
            bound = tellApart(draft, setups, bound, share + DRAFT_SHARE);
        }
        if (cost() > bound) {
            Cases cases = new Cases(task, judge, limits);
            bound = Math.max(bound, cases.run(best));
            better(cases.best());
        }
        bound = Math.min(bound, cost());
        Ended ended = limits.ended();
        if (bound == cost()) {
            ended = Ended.PROVED;
        } else if (ended == null) {
            ended = Ended.MEMORY;
        }
        return new Outcome(best, bound, ended);
    }

    /** Improves plan and bound by drafts and by a tree of cases; returns the bound. */
    private long tellApart(Draft draft, long setups, long known, double share) {
        long bound = known;
        if (best != null && cost() > bound) {
            better(draft.improve(best, DRAFT_WIDTH, bound, DRAFT_SHARE));
            better(draft.reorder(best, ORDER_WIDTH));
        }
        if (best != null && cost() > bound && !task.need.teardown()) {
            CaseTree cases = new CaseTree(task, judge, limits, best);
            bound = Math.max(bound, cases.run(setups, share));
            better(draft.reorder(cases.best(), ORDER_WIDTH));
        }
        return bound;
    }

    private void widen(Beam beam, Node start, int width) {
        for (boolean eager : List.of(true, false)) {
            better(beam.run(new Node(start.at, null, null, 0, 0), width, eager, cost()));
        }
        limits.report(best == null ? -1 : cost(), start.rest);
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
