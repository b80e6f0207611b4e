package reseat.internal.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.PriorityQueue;
import reseat.internal.graph.Bits;

/**
 * The least set-ups with which given work can be ordered: each item is done once, after the items
 * it needs, in one of its classes. This is what remains of planning when only what every way to the
 * goal needs is kept, so its optimum bounds the set-ups of every plan. Here doing an item that is
 * ready, costs no set-up and costs nothing extra is never worse: states are closed over such items
 * and the search (A*) runs over changes of class alone.
 */
final class OrderBound {

    /**
     * The work.
     *
     * @param classes for each item, the classes it can be done in
     * @param extra for each item and class, what it costs above its cheapest class, in milliseconds
     * @param before for each item, the items that come before it
     */
    // arrays: made here, handed on, never changed
    @SuppressWarnings("ArrayRecordComponent")
    record Work(int[][] classes, long[][] extra, long[][] before) {}

    private final long[][] setup;
    private final Visits visits;

    OrderBound(long[][] setup, Visits visits) {
        this.setup = setup;
        this.visits = visits;
    }

    /**
     * Bounds the set-ups and extra costs.
     *
     * @param work the work
     * @param from class in hand
     * @param expansions most states to expand; the bound is exact if they suffice
     * @return a lower bound in milliseconds
     */
    long bound(Work work, int from, int expansions) {
        if (work.classes().length == 0) {
            return 0;
        }
        return new Run(work).least(from, expansions);
    }

    // arrays: made here, handed on, never changed
    @SuppressWarnings("ArrayRecordComponent")
    private record Key(long[] done, int clazz) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && key.clazz == clazz && Arrays.equals(key.done, done);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(done) * 31 + clazz;
        }
    }

    private record Open(Key key, long cost, long bound) {}

    private final class Run {
        private final Work work;
        private final int n;
        private final long[][] tail;

        Run(Work work) {
            this.work = work;
            n = work.classes().length;
            tail = tails();
        }

        /**
         * For each item and class: the set-ups along the dearest chain of items that must follow
         * it.
         */
        private long[][] tails() {
            long[][] after = new long[n][];
            int[] order = inOrder();
            for (int i = 0; i < n; i++) {
                after[i] = new long[work.classes()[i].length];
            }
            for (int k = n - 1; k >= 0; k--) {
                int later = order[k];
                for (int i = Bits.next(work.before()[later], 0);
                        i >= 0;
                        i = Bits.next(work.before()[later], i + 1)) {
                    for (int o = 0; o < after[i].length; o++) {
                        after[i][o] =
                                Math.max(
                                        after[i][o],
                                        enter(work.classes()[i][o], later, after[later]));
                    }
                }
            }
            return after;
        }

        private int[] inOrder() {
            Integer[] order = new Integer[n];
            int[] size = new int[n];
            for (int i = 0; i < n; i++) {
                order[i] = i;
                size[i] = Bits.count(work.before()[i]);
            }
            // the needs are transitive, so an item has fewer of them than what comes after it
            Arrays.sort(order, (a, b) -> Integer.compare(size[a], size[b]));
            return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        }

        private long enter(int clazz, int item, long[] after) {
            long least = Long.MAX_VALUE;
            int[] classes = work.classes()[item];
            for (int o = 0; o < classes.length; o++) {
                least =
                        Math.min(
                                least, setup[clazz][classes[o]] + work.extra()[item][o] + after[o]);
            }
            return least;
        }

        long least(int from, int expansions) {
            Map<Key, Long> best = new HashMap<>();
            PriorityQueue<Open> open =
                    new PriorityQueue<>(
                            (a, b) -> {
                                int byBound = Long.compare(a.bound, b.bound);
                                return byBound != 0 ? byBound : Long.compare(b.cost, a.cost);
                            });
            push(new long[Bits.words(n)], from, 0, 0, best, open);
            int left = expansions;
            while (!open.isEmpty()) {
                Open next = open.peek();
                if (left == 0) {
                    return next.bound;
                }
                open.remove();
                if (next.cost > best.getOrDefault(next.key, Long.MAX_VALUE)) {
                    continue;
                }
                if (Bits.count(next.key.done) == n) {
                    return next.cost;
                }
                left--;
                expand(next, best, open);
            }
            return 0;
        }

        private void expand(Open at, Map<Key, Long> best, PriorityQueue<Open> open) {
            long[] tried = new long[Bits.words(setup.length)];
            for (int i = 0; i < n; i++) {
                if (Bits.get(at.key.done, i) || !Bits.subset(work.before()[i], at.key.done)) {
                    continue;
                }
                int[] classes = work.classes()[i];
                for (int o = 0; o < classes.length; o++) {
                    long extra = work.extra()[i][o];
                    if (extra == 0 && Bits.get(tried, classes[o])) {
                        continue;
                    }
                    long[] done = at.key.done.clone();
                    if (extra == 0) {
                        Bits.set(tried, classes[o]);
                    } else {
                        Bits.set(done, i);
                    }
                    push(
                            done,
                            classes[o],
                            at.cost + setup[at.key.clazz][classes[o]] + extra,
                            at.bound,
                            best,
                            open);
                }
            }
        }

        private void push(
                long[] done,
                int clazz,
                long cost,
                long floor,
                Map<Key, Long> best,
                PriorityQueue<Open> open) {
            close(done, clazz);
            Key key = new Key(done, clazz);
            Long known = best.get(key);
            if (known != null && known <= cost) {
                return;
            }
            best.put(key, cost);
            open.add(new Open(key, cost, Math.max(floor, cost + rest(done, clazz))));
        }

        private void close(long[] done, int clazz) {
            boolean more = true;
            while (more) {
                more = false;
                for (int i = 0; i < n; i++) {
                    if (!Bits.get(done, i)
                            && free(i, clazz)
                            && Bits.subset(work.before()[i], done)) {
                        Bits.set(done, i);
                        more = true;
                    }
                }
            }
        }

        private boolean free(int item, int clazz) {
            int[] classes = work.classes()[item];
            for (int o = 0; o < classes.length; o++) {
                if (classes[o] == clazz && work.extra()[item][o] == 0) {
                    return true;
                }
            }
            return false;
        }

        private long rest(long[] done, int clazz) {
            long tools = 0;
            long postures = 0;
            long chain = 0;
            for (int i = 0; i < n; i++) {
                if (Bits.get(done, i)) {
                    continue;
                }
                int[] classes = work.classes()[i];
                tools |= common(classes, visits.toolOf);
                postures |= common(classes, visits.postureOf);
                chain = Math.max(chain, enter(clazz, i, tail[i]));
            }
            return Math.max(chain, visits.bound(clazz, tools, postures));
        }

        private long common(int[] classes, int[] of) {
            int first = of[classes[0]];
            for (int k = 1; k < classes.length; k++) {
                if (of[classes[k]] != first) {
                    return 0;
                }
            }
            return first < 64 ? 1L << first : 0;
        }
    }
}
