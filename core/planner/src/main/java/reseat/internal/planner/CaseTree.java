package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Landmarks;
import reseat.internal.order.Limits;

/**
 * Raises the bound of a large device. Plans with a work and plans without it are bounded as two
 * cases, and the case with the least bound is split again: by an act of a good plan, which all
 * others lack at a high cost, or by a work that would let acts of the plan change places and costs
 * something itself. What a case needs has at least the set-ups of what the case before needs, so
 * its set-ups are searched again only when it has the least bound.
 */
final class CaseTree {

    private static final int DRAFT_WIDTH = 4;

    /** How often the set-ups of a case get more effort, each time several times as much. */
    private static final int MOST_EFFORT = 3;

    private static final int FIRST_EFFORT_SHARE = 8;
    private static final int MORE_EFFORT = 8;

    /** So many works that promised most before are examined again when a case is split. */
    private static final int LOOKED_AT_AGAIN = 4;

    /** The weight of the better of two cases, relative to the worse. */
    private static final int BETTER_CASE_SHARE = 8;

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

    /** Plans under some assumptions, and what is known of them. */
    private final class Case {
        final Landmarks.Assumptions assumptions;
        final long bound;
        final long setups;
        final @Nullable Node route;

        /** The gain that splitting by a work promised in an earlier case, in milliseconds. */
        final Map<Integer, Long> promises;

        final int effort;
        final long order = CaseTree.this.order++;

        Case(
                long bound,
                long setups,
                @Nullable Node route,
                Map<Integer, Long> promises,
                int effort) {
            this.assumptions = landmarks.assumptions();
            this.bound = bound;
            this.setups = setups;
            this.route = route;
            this.promises = promises;
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
        open.add(
                new Case(
                        judge.withoutSetups(start, needs) + setups,
                        setups,
                        best,
                        new TreeMap<>(),
                        1));
        while (!open.isEmpty() && limits.used() < share && !limits.over()) {
            Case next = open.element();
            limits.report(best.cost, Math.min(best.cost, next.bound));
            if (next.bound >= best.cost || next.effort > MOST_EFFORT) {
                break;
            }
            open.remove();
            landmarks.assume(next.assumptions);
            if (next.effort == 0) {
                harder(next, next.promises);
            } else {
                split(next);
            }
        }
        long bound = open.isEmpty() ? best.cost : Math.min(best.cost, open.element().bound);
        landmarks.assume(here);
        return bound;
    }

    /** Bounds the set-ups of a case with more effort than before. */
    private void harder(Case one, Map<Integer, Long> promises) {
        Node start = fresh();
        long[] needs = judge.needs(start);
        if (landmarks.impossible(needs)) {
            return;
        }
        long effort = judge.thorough() / FIRST_EFFORT_SHARE;
        for (int k = 0; k < one.effort; k++) {
            effort *= MORE_EFFORT;
        }
        int most = (int) Math.min(Integer.MAX_VALUE, effort);
        long setups = Math.max(one.setups, judge.setups(start, needs, most));
        long bound = Math.max(one.bound, judge.withoutSetups(start, needs) + setups);
        push(new Case(bound, setups, one.route, promises, one.effort + 1));
    }

    private void split(Case one) {
        Node route = one.route;
        if (route == null) {
            route = draft.run(DRAFT_WIDTH);
            if (route == null) {
                // no plan found: the case stays with the bound it has
                open.add(new Case(one.bound, one.setups, null, one.promises, MOST_EFFORT + 1));
                return;
            }
            if (route.cost < best.cost) {
                best = route;
            }
        }
        Map<Integer, Long> promises = new TreeMap<>(one.promises);
        int chosen = choose(one, route, promises);
        Node start = fresh();
        long[] needs = judge.needs(start);
        if (landmarks.impossible(needs)) {
            // no plan of this case is better than the best
            return;
        }
        long bound = Math.max(one.bound, judge.withoutSetups(start, needs) + one.setups);
        if (chosen < 0) {
            harder(new Case(bound, one.setups, route, promises, one.effort), promises);
            return;
        }
        Landmarks.Assumptions here = landmarks.assumptions();
        boolean onRoute = judge.undecided(needs, route.steps()).contains(chosen);
        landmarks.exclude(chosen);
        pushChild(bound, one.setups, onRoute ? null : route, promises);
        landmarks.assume(here);
        landmarks.require(chosen);
        pushChild(bound, one.setups, route, promises);
    }

    /**
     * Chooses the work whose two cases are bounded best; rules out and requires on the way what
     * bounds decide. Returns -1 if no work promises anything.
     */
    private int choose(Case one, Node route, Map<Integer, Long> promises) {
        Node start = fresh();
        long[] needs = judge.needs(start);
        List<Integer> works = judge.undecided(needs, route.steps());
        for (int work : landmarks.alternatives(needs)) {
            if (landmarks.canRequire(work) && !works.contains(work)) {
                works.add(work);
            }
        }
        works.sort(
                Comparator.comparingLong(
                        (Integer work) -> -promises.getOrDefault(work, Long.MAX_VALUE)));
        long plain = judge.withoutSetups(start, needs);
        long rough = judge.setups(start, needs, 0);
        List<Integer> looked = new ArrayList<>();
        List<Long> gains = new ArrayList<>();
        int again = 0;
        for (int work : works) {
            if (promises.getOrDefault(work, 1L) == 0
                    || (promises.containsKey(work) && ++again > LOOKED_AT_AGAIN)) {
                break;
            }
            long[] with = needs.clone();
            landmarks.addWork(with, work);
            if (bound(start, with, one) < best.cost) {
                looked.add(work);
                gains.add(gain(start, with, plain + rough));
            } else {
                landmarks.exclude(work);
            }
        }
        int chosen = -1;
        long most = 0;
        for (int k = 0; k < looked.size(); k++) {
            int work = looked.get(k);
            landmarks.exclude(work);
            long[] without = judge.needs(start);
            landmarks.readmit(work);
            if (bound(start, without, one) >= best.cost) {
                landmarks.require(work);
                continue;
            }
            long with = gains.get(k);
            long less = gain(start, without, plain + rough);
            long worse = Math.min(with, less);
            long promise = worse == 0 ? 0 : worse + Math.max(with, less) / BETTER_CASE_SHARE;
            promises.put(work, promise);
            if (promise > most) {
                most = promise;
                chosen = work;
            }
        }
        return chosen;
    }

    private long gain(Node start, long[] needs, long before) {
        long now = judge.withoutSetups(start, needs) + judge.setups(start, needs, 0);
        return Math.max(0, now - before);
    }

    private long bound(Node start, long[] needs, Case one) {
        long plain = judge.withoutSetups(start, needs);
        return plain >= Bound.NEVER
                ? Bound.NEVER
                : plain + Math.max(one.setups, judge.setups(start, needs, 0));
    }

    private void pushChild(
            long atLeast, long setups, @Nullable Node route, Map<Integer, Long> promises) {
        Node start = fresh();
        long[] needs = judge.needs(start);
        long plain = judge.withoutSetups(start, needs);
        if (plain < Bound.NEVER) {
            long now = Math.max(setups, judge.setups(start, needs, 0));
            push(new Case(Math.max(atLeast, plain + now), now, route, promises, 0));
        }
    }

    private void push(Case one) {
        if (one.bound < best.cost) {
            open.add(one);
        }
    }

    private Node fresh() {
        return new Node(task.start(), null, null, 0, 0);
    }
}
