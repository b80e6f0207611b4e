package reseat.internal.planner;

import java.util.List;
import java.util.function.BooleanSupplier;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * A lower bound on what is still to be paid from a state: the releases that every way needs at
 * their cheapest, the moves that every way needs, and the set-ups with which both can be ordered.
 * Set-ups and work are counted separately, so the three add up.
 */
final class Bound {

    /** More than any plan costs. */
    static final long NEVER = Long.MAX_VALUE / 4;

    /** Tools and postures together get the effort divided by this. */
    private static final int JOINT_SHARE = 8;

    private final Compiled c;
    private final Landmarks landmarks;
    private final Works works;
    private final OrderBound order;
    private final OrderBound tools;
    private final OrderBound postures;
    private final Visits visits;
    private final MoveBound moves;
    private final ChoiceBound choices;
    private final boolean teardown;

    Bound(Task task, Landmarks landmarks, BooleanSupplier over) {
        this.c = task.c;
        boolean large = task.isLarge();
        this.landmarks = landmarks;
        visits = new Visits(c);
        works = new Works(c, landmarks, visits);
        order = new OrderBound(c.setup, large, over);
        tools = new OrderBound(visits.toolChanges(), large, over);
        postures = new OrderBound(visits.postureChanges(), large, over);
        this.moves = new MoveBound(c, task.need, landmarks);
        choices = new ChoiceBound(c, landmarks, moves);
        this.teardown = task.need.teardown();
    }

    /**
     * Bounds the cost of reaching a set of needs.
     *
     * @param needs the needs; computed by {@link Landmarks#compute} for the state and not overtaken
     *     by a later call
     * @param place place of every part
     * @param clazz class in hand
     * @param effort states that the order of the set-ups may expand
     * @return milliseconds, or {@link #NEVER}
     */
    long of(long[] needs, char[] place, int clazz, int effort) {
        if (landmarks.impossible(needs)) {
            return NEVER;
        }
        long bound = plain(needs, place, clazz, effort);
        for (int[] choice : landmarks.isolatorChoices(needs)) {
            long least = NEVER;
            for (int isolator : choice) {
                long[] with = needs.clone();
                landmarks.addWork(with, isolator);
                if (!landmarks.impossible(with)) {
                    least = Math.min(least, plain(with, place, clazz, effort));
                }
            }
            bound = Math.max(bound, least);
        }
        return bound;
    }

    /** Bounds needs as they are; choices between isolators are ignored. */
    private long plain(long[] needs, char[] place, int clazz, int effort) {
        return withoutSetups(needs, place) + setups(needs, clazz, effort);
    }

    /** Sets which moves of parts together are still to be made in the next states. */
    void owe(List<int[]> asOne) {
        moves.owe(asOne);
    }

    /** Bounds releases and moves. */
    long withoutSetups(long[] needs, char[] place) {
        long sum = 0;
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            sum += c.minCost[j];
        }
        sum += teardown ? separations(place) : moves(needs, place);
        return sum;
    }

    private long moves(long[] needs, char[] place) {
        List<MoveBound.Debt> debts = moves.debts(needs, place);
        return moves.sum(debts) + choices.of(needs, debts);
    }

    /**
     * What separating all parts costs at least. For any threshold, parts that are more expensive to
     * move must be separated from each other and from what never moves, each time by a move that
     * contains one of them; summed over thresholds this is the sum of all, less the most expensive
     * of each place without the base.
     */
    private long separations(char[] place) {
        long sum = 0;
        long[] dearest = new long[c.parts];
        for (int p = 0; p < c.parts; p++) {
            if (p == c.base) {
                continue;
            }
            long cost = c.moveCost(p);
            sum += cost;
            dearest[place[p]] = Math.max(dearest[place[p]], cost);
        }
        for (int at = 0; at < c.parts; at++) {
            if (at != place[c.base]) {
                sum -= dearest[at];
            }
        }
        return sum;
    }

    /** Puts needs in a cheap order. */
    List<Integer> order(long[] needs, int clazz, int width) {
        return order.order(works.eachByItself(needs), clazz, width);
    }

    /**
     * Changes of tool and changes of posture are bounded together with some effort and each by
     * itself with more: fewer classes make fewer states.
     */
    long setups(long[] needs, int clazz, int effort) {
        long together = order.bound(works.of(needs), clazz, effort / JOINT_SHARE);
        if (effort < JOINT_SHARE) {
            return together;
        }
        long alone =
                tools.bound(works.byTool(needs), visits.toolOf[clazz], effort)
                        + postures.bound(works.byPosture(needs), visits.postureOf[clazz], effort);
        return Math.max(together, alone);
    }
}
