package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import reseat.internal.graph.Bits;

/**
 * The least set-ups with which given work can be ordered. This is what remains of planning when
 * only what every way to the goal needs is kept, so its optimum bounds the set-ups of every plan.
 * Here doing an item that is ready, costs no set-up and costs nothing extra is never worse: states
 * are closed over such items and the search (A*) runs over changes of class alone.
 */
final class OrderBound {

    private static final Comparator<OrderState> PROMISE =
            Comparator.<OrderState>comparingLong(state -> state.bound)
                    .thenComparingLong(state -> -state.cost);

    /** Number of states examined between two checks of the clock. */
    private static final int UNWATCHED = 1024;

    /** The most states kept: 100 MB or so. */
    private static final int MOST_STATES = 600_000;

    /** From this number of states on, packing sets pays off. */
    private static final int WORTH_PACKING = 1_000;

    private final long[][] setup;
    private final boolean packs;
    private final BooleanSupplier over;

    /**
     * Creates a bound.
     *
     * @param setup what a change from one class to another costs, in milliseconds
     * @param packs whether bounds without a search pack sets as well; takes longer
     * @param over returns whether to stop and return the bound reached
     */
    OrderBound(long[][] setup, boolean packs, BooleanSupplier over) {
        this.setup = setup;
        this.packs = packs;
        this.over = over;
    }

    /**
     * Bounds the set-ups and extra costs.
     *
     * @param from class in hand
     * @param expansions most states to expand; the bound is exact if they suffice
     * @return a lower bound in milliseconds
     */
    long bound(OrderWork work, int from, int expansions) {
        return expansions == 0
                ? start(work, from, new OrderRest(work, from, packs)).bound
                : search(work.condensed(), from, expansions);
    }

    private long search(OrderWork work, int from, int expansions) {
        OrderRest rest = new OrderRest(work, from, packs || expansions >= WORTH_PACKING);
        OrderState start = start(work, from, rest);
        Map<OrderState, OrderState> best = new HashMap<>();
        PriorityQueue<OrderState> open = new PriorityQueue<>(PROMISE);
        best.put(start, start);
        open.add(start);
        List<OrderState> next = new ArrayList<>();
        for (int left = expansions; ; left--) {
            OrderState at = open.remove();
            while (best.getOrDefault(at, at).cost < at.cost) {
                at = open.remove();
            }
            boolean stop =
                    left == 0
                            || best.size() > MOST_STATES
                            || (left % UNWATCHED == 0 && over.getAsBoolean());
            if (stop || work.all(at.done)) {
                return at.bound;
            }
            next.clear();
            expand(work, rest, at, next);
            for (OrderState state : next) {
                OrderState known = best.get(state);
                if (known == null || known.cost > state.cost) {
                    best.remove(state);
                    best.put(state, state);
                    open.add(state);
                }
            }
        }
    }

    /**
     * Finds a cheap order.
     *
     * @param from class in hand
     * @param width states kept after each number of changes
     * @return the items in order
     */
    List<Integer> order(OrderWork work, int from, int width) {
        OrderRest rest = new OrderRest(work, from, packs);
        OrderState best = null;
        List<OrderState> layer = List.of(start(work, from, rest));
        List<OrderState> next = new ArrayList<>();
        while (!layer.isEmpty()) {
            Map<OrderState, OrderState> found = new HashMap<>();
            for (OrderState at : layer) {
                if (work.all(at.done)) {
                    best = best == null || at.cost < best.cost ? at : best;
                    continue;
                }
                next.clear();
                expand(work, rest, at, next);
                for (OrderState state : next) {
                    OrderState known = found.get(state);
                    if (known == null || known.cost > state.cost) {
                        found.remove(state);
                        found.put(state, state);
                    }
                }
            }
            long toBeat = best == null ? Long.MAX_VALUE : best.cost;
            layer =
                    found.values().stream()
                            .filter(state -> state.bound < toBeat)
                            .sorted(PROMISE.thenComparing(OrderBound::byWork))
                            .limit(width)
                            .toList();
        }
        return best == null ? List.of() : items(work, best);
    }

    private static int byWork(OrderState a, OrderState b) {
        int byDone = Arrays.compare(a.done, b.done);
        return byDone != 0 ? byDone : Integer.compare(a.clazz, b.clazz);
    }

    private static List<Integer> items(OrderWork work, OrderState last) {
        List<OrderState> states = new ArrayList<>();
        for (OrderState at = last; at != null; at = at.from) {
            states.add(at);
        }
        Collections.reverse(states);
        List<Integer> items = new ArrayList<>();
        long[] done = new long[work.words];
        for (OrderState at : states) {
            for (int pass = 0; pass < 2; pass++) {
                // what was chosen at extra cost comes first: it may have made the others ready
                long[] of = work.freeIn[at.clazz];
                for (int i = Bits.next(at.done, 0); i >= 0; i = Bits.next(at.done, i + 1)) {
                    if (!Bits.get(done, i) && (pass == 1 || !Bits.get(of, i))) {
                        Bits.set(done, i);
                        items.add(work.names[i]);
                    }
                }
            }
        }
        return items;
    }

    private OrderState start(OrderWork work, int clazz, OrderRest rest) {
        short[] tools = rest.tools(clazz);
        short[] postures = rest.postures(clazz);
        long[] done = new long[work.words];
        long[] ready = work.ready();
        work.close(done, ready, clazz);
        long bound = rest.of(done, clazz, tools, postures);
        return new OrderState(done, ready, clazz, tools, postures, 0, bound, null);
    }

    private void expand(OrderWork work, OrderRest rest, OrderState at, List<OrderState> next) {
        long[] tried = new long[Bits.words(setup.length)];
        for (int w = 0; w < work.words; w++) {
            for (long open = at.ready[w]; open != 0; open &= open - 1) {
                int i = (w << 6) + Long.numberOfTrailingZeros(open);
                if (untried(tried, work.classes[i], work.extra[i])) {
                    take(work, rest, at, i, tried, next);
                }
            }
        }
    }

    private static boolean untried(long[] tried, int[] classes, long[] extra) {
        for (int o = 0; o < classes.length; o++) {
            if (extra[o] > 0 || !Bits.get(tried, classes[o])) {
                return true;
            }
        }
        return false;
    }

    private void take(
            OrderWork work,
            OrderRest rest,
            OrderState at,
            int item,
            long[] tried,
            List<OrderState> next) {
        int[] classes = work.classes[item];
        for (int o = 0; o < classes.length; o++) {
            long extra = work.extra[item][o];
            if (extra == 0 && Bits.get(tried, classes[o])) {
                continue;
            }
            int clazz = classes[o];
            long[] done = at.done.clone();
            long[] ready = at.ready.clone();
            if (extra == 0) {
                Bits.set(tried, clazz);
            } else {
                work.take(done, ready, item);
            }
            work.close(done, ready, clazz);
            short[] tools = rest.tools(at.tools, at.clazz, clazz, done);
            short[] postures = rest.postures(at.postures, at.clazz, clazz, done);
            long cost = at.cost + setup[at.clazz][clazz] + extra;
            long bound = Math.max(at.bound, cost + rest.of(done, clazz, tools, postures));
            next.add(new OrderState(done, ready, clazz, tools, postures, cost, bound, at));
        }
    }
}
