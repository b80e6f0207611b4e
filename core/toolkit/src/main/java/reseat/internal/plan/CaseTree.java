package reseat.internal.plan;

import java.util.Comparator;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Landmarks;

/**
 * Raises the bound of a large device. A good plan mostly takes the route that all others pay dearly
 * for not taking: so plans without an act of it and plans with it are bounded as two cases, and the
 * case with the least bound is split again. What a case needs has at least the set-ups of what the
 * case before needs, so they are bounded anew only where nothing is left to split.
 */
final class CaseTree {

    private static final int DRAFT_WIDTH = 4;

    /** So often a case that cannot be split gets more effort for its set-ups. */
    private static final int MOST_EFFORT = 1;

    private final Task task;
    private final Judge judge;
    private final Landmarks landmarks;
    private final Limits limits;
    private final Draft draft;
    private final PriorityQueue<Case> open =
            new PriorityQueue<>(
                    Comparator.<Case>comparingLong(one -> one.bound)
                            .thenComparingLong(one -> -one.order));
    private long order;
    private Node best;

    private final class Case {
        final Landmarks.Assumptions assumptions;
        final long bound;
        final long setups;
        final @Nullable Node route;
        final int effort;
        final long order = CaseTree.this.order++;

        Case(long bound, long setups, @Nullable Node route, int effort) {
            this.assumptions = landmarks.assumptions();
            this.bound = bound;
            this.setups = setups;
            this.route = route;
            this.effort = effort;
        }
    }

    CaseTree(Task task, Judge judge, Limits limits, Node best) {
        this.task = task;
        this.judge = judge;
        this.landmarks = judge.landmarks;
        this.limits = limits;
        this.draft = new Draft(task, judge, limits);
        this.best = best;
    }

    Node best() {
        return best;
    }

    /**
     * Splits cases until the bound meets the best plan, nothing is left to split, or a share of the
     * effort is used.
     *
     * @param setups bound on the set-ups of what every plan needs, in milliseconds
     * @param share share of the effort at which to stop
     * @return a lower bound on every plan, in milliseconds
     */
    long run(long setups, double share) {
        Landmarks.Assumptions here = landmarks.assumptions();
        Node start = fresh();
        long[] needs = judge.needs(start);
        open.add(new Case(judge.withoutSetups(start, needs) + setups, setups, best, 0));
        long bound = 0;
        while (!open.isEmpty() && limits.used() < share && !limits.over()) {
            Case next = open.remove();
            bound = Math.max(bound, Math.min(best.cost, next.bound));
            limits.report(best.cost, bound);
            if (next.bound >= best.cost || next.effort > MOST_EFFORT) {
                open.add(next);
                break;
            }
            landmarks.assume(next.assumptions);
            split(next);
        }
        bound = open.isEmpty() ? best.cost : Math.min(best.cost, open.element().bound);
        landmarks.assume(here);
        return bound;
    }

    private void split(Case one) {
        Node start = fresh();
        Node route = one.route;
        if (route == null) {
            route = draft.run(DRAFT_WIDTH);
            if (route == null) {
                // no plan found: the case stays with the bound it has
                open.add(new Case(one.bound, one.setups, null, MOST_EFFORT + 1));
                return;
            }
            if (route.cost < best.cost) {
                best = route;
            }
        }
        long[] needs = judge.needs(start);
        long floor = Math.max(one.setups, judge.setups(start, needs, 0));
        int chosen = -1;
        long most = -1;
        for (int act : judge.undecided(needs, route.steps())) {
            landmarks.exclude(act);
            long without = bound(start, judge.needs(start), one);
            landmarks.readmit(act);
            if (without >= best.cost) {
                landmarks.require(act);
            } else if (without > most) {
                most = without;
                chosen = act;
            }
        }
        needs = judge.needs(start);
        long bound = Math.max(one.bound, judge.withoutSetups(start, needs) + floor);
        if (chosen < 0) {
            int effort = judge.thorough() * (1 << (2 * one.effort));
            long setups = Math.max(floor, judge.setups(start, needs, effort));
            bound = Math.max(bound, judge.withoutSetups(start, needs) + setups);
            push(new Case(bound, setups, route, one.effort + 1));
            return;
        }
        if (bound > one.bound && !open.isEmpty() && bound > open.element().bound) {
            push(new Case(bound, floor, route, one.effort));
            return;
        }
        Landmarks.Assumptions here = landmarks.assumptions();
        landmarks.exclude(chosen);
        push(new Case(Math.max(bound, most), floor, null, one.effort));
        landmarks.assume(here);
        landmarks.require(chosen);
        needs = judge.needs(start);
        push(new Case(Math.max(bound, bound(start, needs, one)), floor, route, one.effort));
    }

    private void push(Case one) {
        if (one.bound < best.cost) {
            open.add(one);
        }
    }

    private long bound(Node start, long[] needs, Case one) {
        long rest = judge.withoutSetups(start, needs);
        return rest >= Bound.NEVER
                ? Bound.NEVER
                : rest + Math.max(one.setups, judge.setups(start, needs, 0));
    }

    private Node fresh() {
        return new Node(task.start(), null, null, 0, 0);
    }
}
