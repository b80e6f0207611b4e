package reseat.internal.planner;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.order.Limits;

/**
 * Uses a known plan to narrow the search for a better one: what costs too much as soon as it
 * contains some act cannot contain it, and what costs too much without an act must. Each finding
 * makes the next bound larger; often the bound reaches the plan and nothing is left to search.
 */
final class Probing {

    private final Compiled c;
    private final Judge judge;
    private final Landmarks landmarks;
    private final Limits limits;

    Probing(Task task, Judge judge, Limits limits) {
        this.c = task.c;
        this.judge = judge;
        this.landmarks = judge.landmarks;
        this.limits = limits;
    }

    /**
     * Narrows what plans cheaper than one may contain.
     *
     * @param start the node to begin with
     * @param steps the known plan
     * @param toBeat its cost, in milliseconds
     * @return a lower bound on plans that cost less; at least {@code toBeat} if there is none
     */
    long run(Node start, List<Node.Step> steps, long toBeat) {
        long best = 0;
        boolean changed = true;
        while (changed && !limits.over()) {
            long[] needs = judge.judge(start, judge.thorough());
            best = Math.max(best, start.rest);
            if (best >= toBeat) {
                return best;
            }
            changed = exclude(start, needs, toBeat);
            changed |= force(start, steps, needs, toBeat);
        }
        return best;
    }

    private boolean exclude(Node start, long[] needs, long toBeat) {
        int[] tooDear =
                IntStream.range(0, landmarks.works())
                        .filter(
                                work ->
                                        !limits.over()
                                                && !landmarks.isExcluded(work)
                                                && !Bits.get(needs, work))
                        .filter(
                                work -> {
                                    long[] with = needs.clone();
                                    landmarks.addWork(with, work);
                                    return judge.bound(start, with, 0) >= toBeat;
                                })
                        .toArray();
        Arrays.stream(tooDear).forEach(landmarks::exclude);
        return tooDear.length > 0;
    }

    private boolean force(Node start, List<Node.Step> steps, long[] needs, long toBeat) {
        boolean changed = false;
        for (Node.Step step : steps) {
            for (int work : step.works(c)) {
                if (limits.over()) {
                    return changed;
                }
                if (Bits.get(needs, work)
                        || landmarks.isExcluded(work)
                        || !landmarks.canRequire(work)) {
                    continue;
                }
                landmarks.exclude(work);
                boolean must = without(start) >= toBeat;
                landmarks.readmit(work);
                if (must) {
                    landmarks.require(work);
                    changed = true;
                }
            }
        }
        return changed;
    }

    private long without(Node start) {
        Node probe = new Node(start.at, null, null, 0, 0);
        judge.judge(probe, 0);
        return probe.rest;
    }
}
