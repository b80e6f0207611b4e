package reseat.internal.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;

/**
 * The least set-ups with which given work can be ordered. This is what remains of planning when
 * only what every way to the goal needs is kept, so its optimum bounds the set-ups of every plan.
 * Here doing an item that is ready, costs no set-up and costs nothing extra is never worse: states
 * are closed over such items and the search (A*) runs over changes of class alone.
 */
final class OrderBound {

    private static final Comparator<State> PROMISE =
            Comparator.<State>comparingLong(state -> state.bound)
                    .thenComparingLong(state -> -state.cost);

    /** So many states are looked at between two looks at the clock. */
    private static final int UNWATCHED = 1024;

    /** The most states kept: 100 MB or so. */
    private static final int MOST_STATES = 600_000;

    private final long[][] setup;
    private final BooleanSupplier over;

    /**
     * Makes a bound.
     *
     * @param setup what a change from one class to another costs, in milliseconds
     * @param over tells whether to stop and return the bound reached
     */
    OrderBound(long[][] setup, BooleanSupplier over) {
        this.setup = setup;
        this.over = over;
    }

    /** Work done, the class in hand, and how it came to that. */
    private static final class State {
        final long[] done;
        final int clazz;
        final long cost;
        final long bound;
        final @Nullable State from;
        private final int hash;

        State(long[] done, int clazz, long cost, long bound, @Nullable State from) {
            this.done = done;
            this.clazz = clazz;
            this.cost = cost;
            this.bound = bound;
            this.from = from;
            // sets that differ in few bits must not share a hash, as they would under a sum of
            // 31sts
            long mixed = clazz;
            for (long word : done) {
                mixed = (mixed ^ word) * 0x9E3779B97F4A7C15L;
                mixed ^= mixed >>> 32;
            }
            hash = (int) mixed;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof State that
                    && hash == that.hash
                    && clazz == that.clazz
                    && Arrays.equals(done, that.done);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /**
     * Bounds the set-ups and extra costs.
     *
     * @param work the work
     * @param from class in hand
     * @param expansions most states to expand; the bound is exact if they suffice
     * @return a lower bound in milliseconds
     */
    long bound(OrderWork work, int from, int expansions) {
        return expansions == 0
                ? start(work, from, new OrderRest(work, from)).bound
                : search(work.condensed(), from, expansions);
    }

    private long search(OrderWork work, int from, int expansions) {
        OrderRest rest = new OrderRest(work, from);
        State start = start(work, from, rest);
        Map<State, State> best = new HashMap<>();
        PriorityQueue<State> open = new PriorityQueue<>(PROMISE);
        best.put(start, start);
        open.add(start);
        List<State> next = new ArrayList<>();
        for (int left = expansions; ; left--) {
            State at = open.remove();
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
            for (State state : next) {
                State known = best.get(state);
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
     * @param work the work
     * @param from class in hand
     * @param width states kept after each number of changes
     * @return the items in order
     */
    List<Integer> order(OrderWork work, int from, int width) {
        OrderRest rest = new OrderRest(work, from);
        State best = null;
        List<State> layer = List.of(start(work, from, rest));
        List<State> next = new ArrayList<>();
        while (!layer.isEmpty()) {
            Map<State, State> found = new HashMap<>();
            for (State at : layer) {
                if (work.all(at.done)) {
                    best = best == null || at.cost < best.cost ? at : best;
                    continue;
                }
                next.clear();
                expand(work, rest, at, next);
                for (State state : next) {
                    State known = found.get(state);
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

    private static int byWork(State a, State b) {
        int byDone = Arrays.compare(a.done, b.done);
        return byDone != 0 ? byDone : Integer.compare(a.clazz, b.clazz);
    }

    private static List<Integer> items(OrderWork work, State last) {
        List<State> states = new ArrayList<>();
        for (State at = last; at != null; at = at.from) {
            states.add(at);
        }
        Collections.reverse(states);
        List<Integer> items = new ArrayList<>();
        long[] done = new long[work.words];
        for (State at : states) {
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

    private State start(OrderWork work, int clazz, OrderRest rest) {
        long[] done = new long[work.words];
        work.close(done, clazz);
        return new State(done, clazz, 0, rest.of(done, clazz), null);
    }

    private void expand(OrderWork work, OrderRest rest, State at, List<State> next) {
        long[] tried = new long[Bits.words(setup.length)];
        for (int w = 0; w < work.words; w++) {
            long open = ~at.done[w];
            for (; open != 0; open &= open - 1) {
                int i = (w << 6) + Long.numberOfTrailingZeros(open);
                if (i >= work.n) {
                    return;
                }
                int[] classes = work.classes[i];
                if (untried(tried, classes, work.extra[i])
                        && Bits.subset(work.before[i], at.done)) {
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
            OrderWork work, OrderRest rest, State at, int item, long[] tried, List<State> next) {
        int[] classes = work.classes[item];
        for (int o = 0; o < classes.length; o++) {
            long extra = work.extra[item][o];
            if (extra == 0 && Bits.get(tried, classes[o])) {
                continue;
            }
            long[] done = at.done.clone();
            if (extra == 0) {
                Bits.set(tried, classes[o]);
            } else {
                Bits.set(done, item);
            }
            work.close(done, classes[o]);
            long cost = at.cost + setup[at.clazz][classes[o]] + extra;
            long bound = Math.max(at.bound, cost + rest.of(done, classes[o]));
            next.add(new State(done, classes[o], cost, bound, at));
        }
    }
}
