package reseat.internal.plan;

import java.util.Arrays;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

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
     * @param start where to begin
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
        boolean changed = false;
        boolean[] pins = new boolean[c.parts];
        for (int p = 0; p < c.parts; p++) {
            if (!landmarks.isPinned(p) && !Bits.get(needs, landmarks.moveBit(p))) {
                long[] with = needs.clone();
                landmarks.addMove(with, p);
                pins[p] = judge.bound(start, with, 0) >= toBeat;
            }
        }
        for (int j = 0; j < c.nodes; j++) {
            if (!landmarks.isClosed(j) && !Bits.get(needs, j)) {
                long[] with = needs.clone();
                Bits.addAll(with, landmarks.needsOfRelease(j));
                if (judge.bound(start, with, 0) >= toBeat) {
                    landmarks.close(j);
                    changed = true;
                }
            }
        }
        for (int p = 0; p < c.parts; p++) {
            if (pins[p]) {
                landmarks.pin(p);
                changed = true;
            }
        }
        return changed;
    }

    private boolean force(Node start, List<Node.Step> steps, long[] needs, long toBeat) {
        boolean changed = false;
        for (Node.Step step : steps) {
            if (limits.over()) {
                return changed;
            }
            if (step instanceof Node.Step.Release release) {
                int j = release.node();
                if (!Bits.get(needs, j) && !landmarks.isClosed(j)) {
                    landmarks.close(j);
                    boolean must = without(start) >= toBeat;
                    landmarks.reopen(j);
                    if (must) {
                        landmarks.force(j);
                        changed = true;
                    }
                }
            } else if (step instanceof Node.Step.Move move) {
                changed |=
                        Arrays.stream(move.parts())
                                        .filter(
                                                p ->
                                                        !Bits.get(needs, landmarks.moveBit(p))
                                                                && !landmarks.isPinned(p))
                                        .filter(p -> c.startPlace[p] == c.startPlace[c.base])
                                        .filter(
                                                p -> {
                                                    landmarks.pin(p);
                                                    boolean must = without(start) >= toBeat;
                                                    landmarks.unpin(p);
                                                    return must;
                                                })
                                        .peek(landmarks::forceMove)
                                        .count()
                                > 0;
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
