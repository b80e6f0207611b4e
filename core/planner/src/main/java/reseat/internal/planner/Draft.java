package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.order.Limits;

/**
 * Drafts a plan for a device of any size: rules out works, the most expensive first, as long as the
 * goal stays within reach; what is left is needed, and is put in order as a whole. Quick, and
 * proves nothing.
 */
final class Draft {

    private final Task task;
    private final Compiled c;
    private final Judge judge;
    private final Landmarks landmarks;
    private final Limits limits;

    Draft(Task task, Judge judge, Limits limits) {
        this.task = task;
        this.c = task.c;
        this.judge = judge;
        this.landmarks = judge.landmarks;
        this.limits = limits;
    }

    /**
     * Drafts a plan under the assumptions that the landmarks make.
     *
     * @param width states kept while the work is put in order
     * @return a goal node, or null
     */
    @Nullable Node run(int width) {
        Landmarks.Assumptions here = landmarks.assumptions();
        try {
            long[] needs = narrow();
            return landmarks.impossible(needs)
                    ? null
                    : new Following(task, landmarks)
                            .follow(fresh(), judge.order(fresh(), needs, width));
        } finally {
            landmarks.assume(here);
        }
    }

    /**
     * Looks for better plans: rules out, one after the other, the works of the best plan that not
     * every plan needs, and drafts again; what helped stays ruled out.
     *
     * @param known a plan
     * @param width states kept while work is put in order
     * @param enough cost at which to stop, in milliseconds
     * @param share share of the effort at which to stop
     * @return the best plan found, the known one if none is better
     */
    Node improve(Node known, int width, long enough, double share) {
        Landmarks.Assumptions here = landmarks.assumptions();
        Node best = known;
        long[] needs = judge.needs(fresh());
        Set<Integer> tried = new HashSet<>();
        for (int work = untried(best, needs, tried);
                work >= 0 && best.cost > enough && limits.used() < share && !limits.over();
                work = untried(best, needs, tried)) {
            tried.add(work);
            landmarks.exclude(work);
            Node probe = fresh();
            judge.judge(probe, 0);
            Node found = probe.rest < best.cost ? run(width) : null;
            if (found != null && found.cost < best.cost) {
                best = found;
            } else {
                landmarks.readmit(work);
            }
        }
        landmarks.assume(here);
        return best;
    }

    /**
     * Orders the works of a plan again.
     *
     * @param known a plan
     * @param width states kept meanwhile
     * @return the better of the two plans
     */
    Node reorder(Node known, int width) {
        Landmarks.Assumptions here = landmarks.assumptions();
        boolean[] used = new boolean[landmarks.works()];
        for (Node.Step step : known.steps()) {
            for (int work : step.works(c)) {
                used[work] = true;
            }
        }
        for (int work = 0; work < used.length; work++) {
            if (!used[work]) {
                landmarks.exclude(work);
            }
        }
        Node found = run(width);
        landmarks.assume(here);
        return found != null && found.cost < known.cost ? found : known;
    }

    /** Returns the most expensive work of a plan that is neither needed nor tried, or -1. */
    private int untried(Node node, long[] needs, Set<Integer> tried) {
        int dearest = -1;
        long most = -1;
        for (Node.Step step : node.steps()) {
            for (int work : step.works(c)) {
                if (!Bits.get(needs, work)
                        && !tried.contains(work)
                        && !landmarks.isExcluded(work)) {
                    long ms = work < c.nodes ? c.minCost[work] : c.moveCost(work - c.nodes);
                    if (ms > most) {
                        most = ms;
                        dearest = work;
                    }
                }
            }
        }
        return dearest;
    }

    /** Rules out works until all that are left are needed; returns them. */
    private long[] narrow() {
        long[] needs = judge.needs(fresh());
        if (landmarks.impossible(needs)) {
            return needs;
        }
        Map<Integer, Long> extra = new TreeMap<>();
        for (int work = 0; work < landmarks.works(); work++) {
            if (!landmarks.isExcluded(work) && !Bits.get(needs, work)) {
                long[] with = needs.clone();
                landmarks.addWork(with, work);
                extra.put(work, judge.workMs(with) - judge.workMs(needs));
            }
        }
        List<Integer> works = new ArrayList<>(extra.keySet());
        works.sort(Comparator.comparingLong((Integer work) -> -extra.getOrDefault(work, 0L)));
        ruleOut(works, needs);
        // the last attempt may have failed: recompute the landmarks for what is left
        return judge.needs(fresh());
    }

    private long[] ruleOut(List<Integer> works, long[] needs) {
        List<Integer> open =
                works.stream()
                        .filter(work -> !Bits.get(needs, work) && !landmarks.isExcluded(work))
                        .toList();
        if (open.isEmpty() || limits.over()) {
            return needs;
        }
        open.forEach(landmarks::exclude);
        long[] now = judge.needs(fresh());
        if (!landmarks.impossible(now)) {
            return now;
        }
        open.forEach(landmarks::readmit);
        if (open.size() == 1) {
            return needs;
        }
        int half = open.size() / 2;
        return ruleOut(open.subList(half, open.size()), ruleOut(open.subList(0, half), needs));
    }

    private Node fresh() {
        return new Node(task.start(), null, null, 0, 0);
    }
}
