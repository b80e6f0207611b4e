package reseat.internal.plan;

import java.util.Arrays;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.graph.Need;

/**
 * A lower bound on what is still to be paid from a state: the releases that every way needs at
 * their cheapest, the moves that every way needs, and the set-ups with which both can be ordered.
 * Set-ups and work are different money, so the three add up.
 */
final class Bound {

    /** More than any plan costs. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private final Compiled c;
    private final Landmarks landmarks;
    private final OrderBound order;
    private final MoveBound moves;
    private final boolean teardown;

    Bound(Compiled c, Need need, Landmarks landmarks, OrderBound order) {
        this.c = c;
        this.landmarks = landmarks;
        this.order = order;
        this.moves = new MoveBound(c, need, landmarks);
        this.teardown = need.teardown();
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

    /** Bounds needs as they are; a choice between isolators is not looked at. */
    private long plain(long[] needs, char[] place, int clazz, int effort) {
        long sum = 0;
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            sum += c.minCost[j];
        }
        sum += teardown ? separations(place) : moves.of(needs, place);
        return sum + order.bound(work(needs), clazz, effort);
    }

    /**
     * What separating all parts costs at least. For any threshold, parts that are dearer to move
     * must be parted from each other and from what never moves, each time by a move that contains
     * one of them; summed over thresholds this is the sum of all, less the dearest of each place
     * without the base.
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

    private OrderBound.Work work(long[] needs) {
        int n = Bits.count(needs);
        int[] items = new int[n];
        for (int bit = Bits.next(needs, 0), k = 0; bit >= 0; bit = Bits.next(needs, bit + 1)) {
            items[k++] = bit;
        }
        int[][] classes = new int[n][];
        long[][] extra = new long[n][];
        long[][] before = new long[n][];
        for (int k = 0; k < n; k++) {
            int item = items[k];
            long[] own;
            if (item < c.nodes) {
                Compiled.Option[] options = c.options[item];
                classes[k] = Arrays.stream(options).mapToInt(Compiled.Option::clazz).toArray();
                extra[k] =
                        Arrays.stream(options)
                                .mapToLong(option -> option.costMs() - c.minCost[item])
                                .toArray();
                own = landmarks.needsOfRelease(item);
            } else {
                classes[k] = new int[] {c.partClass[item - c.nodes]};
                extra[k] = new long[1];
                own = landmarks.needsOfMove(item - c.nodes);
            }
            before[k] = new long[Bits.words(n)];
            for (int i = 0; i < n; i++) {
                if (i != k && Bits.get(own, items[i])) {
                    Bits.set(before[k], i);
                }
            }
        }
        return new OrderBound.Work(classes, extra, before);
    }
}
