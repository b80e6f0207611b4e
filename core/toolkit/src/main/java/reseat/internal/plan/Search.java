package reseat.internal.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.plan.Plan.Ended;

/**
 * Finds the best plan: a beam that widens for a good one, probing to bound and narrow, A* for the
 * rest.
 */
final class Search {

    /** What came out: the best goal node if any, a bound on every plan, and why it ended. */
    record Outcome(@Nullable Node best, long lowerBoundMs, Ended ended) {}

    private static final int FIRST_WIDTH = 2;
    private static final int WIDER = 4;
    private static final int WIDEST_BEFORE_PROOF = 32;

    private final Task task;
    private final Limits limits;
    private final Judge judge;
    private @Nullable Node best;

    Search(Task task, Limits limits) {
        this.task = task;
        this.limits = limits;
        judge = new Judge(task, limits);
    }

    Judge judge() {
        return judge;
    }

    Outcome run() {
        Node start = new Node(task.start(), null, null, 0, 0);
        judge.judge(start, judge.thorough());
        if (start.rest >= Bound.NEVER) {
            return new Outcome(null, Bound.NEVER, Ended.PROVED);
        }
        long bound = start.rest;
        Beam beam = new Beam(task, judge, new Expander(task, judge.landmarks), limits);
        int width = FIRST_WIDTH;
        for (;
                width <= WIDEST_BEFORE_PROOF && cost() > bound && limits.used() < 0.5;
                width *= WIDER) {
            widen(beam, start, width);
        }
        if (best != null && best.cost > bound) {
            bound =
                    Math.max(
                            bound,
                            Math.min(
                                    best.cost,
                                    new Probing(task, judge, limits)
                                            .run(start, best.steps(), best.cost)));
        }
        if (best != null && best.cost <= bound) {
            return new Outcome(best, best.cost, Ended.PROVED);
        }
        Expander expander = new Expander(task, judge.landmarks);
        BestFirst exact = new BestFirst(task, judge, expander, limits);
        better(exact.run(start, cost()));
        if (!expander.cutShort()) {
            bound = Math.max(bound, Math.min(cost(), exact.openBound()));
        }
        Ended ended = limits.ended();
        if (ended == null) {
            return new Outcome(
                    best,
                    Math.min(bound, cost()),
                    best == null || bound >= cost() ? Ended.PROVED : Ended.MEMORY);
        }
        return new Outcome(best, Math.min(bound, cost()), bound >= cost() ? Ended.PROVED : ended);
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
