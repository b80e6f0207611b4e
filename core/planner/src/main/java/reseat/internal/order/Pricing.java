package reseat.internal.order;

import java.util.Arrays;

/**
 * Looks for the prices of visits that make the cheapest walk as expensive as possible, and draws
 * conclusions.
 *
 * <p>Subgradient ascent (Held and Karp 1971): acts that the cheapest walk leaves out get cheaper,
 * acts that it visits twice get more expensive. Where the walk returns to an act or breaks the
 * precedence, the acts in between learn to remember (Roberti and Mingozzi 2014). With the best
 * prices, walks from both ends meeting in a step give a lower bound on orders with that step at
 * that place; steps that are too expensive are closed for good.
 */
final class Pricing {

    private static final long MOST_TABLE = 24_000_000;
    private static final int PATIENCE = 4;
    private static final int MOST_TURNS = 1000;

    private final int n;
    private final PathRelaxation[] relaxations = new PathRelaxation[2];
    private final StepWindows[] windows = new StepWindows[2];
    private final int[][][] memories;
    private final int priceCap;
    private int[] best;
    private long bestBound;
    private double eagerness = 0.3;

    /** Starts with the prices of an assignment. */
    Pricing(Network net, Network turned, Scale scale, Assignment assignment) {
        this.n = net.n;
        this.windows[0] = StepWindows.of(net);
        this.windows[1] = windows[0].turned();
        this.relaxations[0] = new PathRelaxation(net, scale, windows[0]);
        this.relaxations[1] = new PathRelaxation(turned, scale, windows[1]);
        this.memories = new int[2][n][0];
        this.priceCap = (1 << 28) / n;
        this.best = new int[n];
        this.bestBound = Math.max(0, assignment.bound());
        for (int act = 1; act < n - 1; act++) {
            best[act] = capped(assignment.leaving[act] + assignment.entering[act]);
        }
    }

    /** Returns whether a network is small enough for this. */
    static boolean suits(Network net) {
        return StepWindows.sizeFor(net) <= 12_000_000;
    }

    /** The best bound so far, scaled. */
    long bound() {
        return bestBound;
    }

    /** What the searches forward (0) and backward (1) may use after {@link #run}. */
    PathRelaxation completion(int direction) {
        return relaxations[direction];
    }

    /** The steps open forward (0) and backward (1). */
    StepWindows windows(int direction) {
        return windows[direction];
    }

    /**
     * Ascends for about the given effort, then closes steps and leaves both tables ready for
     * searching.
     *
     * @param limit the highest scaled cost that is still of interest
     * @return false when the budget ended before
     */
    boolean run(long effort, long limit, Network net, Limits limits) {
        long until = limits.expansions() + effort;
        int[] prices = best.clone();
        double[] direction = new double[n];
        int turns = 0;
        long lowest = Long.MAX_VALUE;
        long highest = Long.MIN_VALUE;
        while (limits.expansions() < until && bestBound <= limit && turns < MOST_TURNS) {
            if (!limits.spend(relaxations[0].effort())) {
                return false;
            }
            long bound = evaluate(0, prices);
            if (bound > bestBound) {
                bestBound = bound;
                best = prices.clone();
            }
            if (bound > limit) {
                break;
            }
            lowest = Math.min(lowest, bound);
            highest = Math.max(highest, bound);
            int[] walk = relaxations[0].walk();
            if (++turns % PATIENCE == 0) {
                if (highest - lowest > room(limit) / 10) {
                    eagerness /= 2;
                } else if (highest - lowest < room(limit) / 50) {
                    eagerness = Math.min(1, eagerness * 1.5);
                }
                learn(walk, net, effort);
                lowest = Long.MAX_VALUE;
                highest = Long.MIN_VALUE;
            }
            int[] next = step(walk, prices, direction, room(limit));
            if (Arrays.equals(next, prices) && !learn(walk, net, effort)) {
                break; // this walk leaves nothing out, so prices cannot make it more expensive
            }
            prices = next;
        }
        return conclude(limit, limits);
    }

    private long room(long limit) {
        return limit - bestBound + 1;
    }

    private long evaluate(int direction, int[] prices) {
        int[] own = direction == 0 ? prices : mirrored(prices);
        long walk = relaxations[direction].evaluate(own);
        return walk + Arrays.stream(prices).asLongStream().sum();
    }

    private int[] step(int[] walk, int[] prices, double[] direction, long room) {
        int[] misses = new int[n];
        Arrays.fill(misses, 1);
        for (int act : walk) {
            misses[act]--;
        }
        double norm = 0;
        for (int act = 1; act < n - 1; act++) {
            direction[act] = 0.6 * misses[act] + 0.4 * direction[act];
            norm += direction[act] * direction[act];
        }
        int[] next = prices.clone();
        if (norm > 0) {
            double length = eagerness * Math.max(1, room) / norm;
            for (int act = 1; act < n - 1; act++) {
                next[act] = capped(prices[act] + Math.round(length * direction[act]));
            }
        }
        return next;
    }

    private int capped(long price) {
        return (int) Math.max(-priceCap, Math.min(priceCap, price));
    }

    /**
     * Makes the acts between two visits that do not go together remember, as far as there is room.
     */
    private boolean learn(int[] walk, Network net, long effort) {
        boolean[] changed = new boolean[2];
        for (int length = 2; length < n; length++) {
            for (int p = 1; p + length < n; p++) {
                int first = walk[p];
                int second = walk[p + length];
                if (first != second && !net.after.has(second, first)) {
                    continue;
                }
                changed[0] |= remember(0, walk, p, length, second, effort);
                changed[1] |= remember(1, walk, p, length, first, effort);
            }
            if (length > 8 && changed[0]) {
                break;
            }
        }
        for (int direction = 0; direction < 2; direction++) {
            if (changed[direction]) {
                relaxations[direction].remember(memories[direction].clone());
            }
        }
        return changed[0];
    }

    private boolean remember(int direction, int[] walk, int p, int length, int act, long effort) {
        int[][] memory = memories[direction];
        int seen = direction == 0 ? act : n - 1 - act;
        int most = mostMemory(direction, effort);
        for (int k = p + 1; k < p + length; k++) {
            int at = direction == 0 ? walk[k] : n - 1 - walk[k];
            if (at == seen || (memory[at].length >= most && !has(memory[at], seen))) {
                return false;
            }
        }
        boolean changed = false;
        for (int k = p + 1; k < p + length; k++) {
            int at = direction == 0 ? walk[k] : n - 1 - walk[k];
            if (!has(memory[at], seen)) {
                memory[at] = Arrays.copyOf(memory[at], memory[at].length + 1);
                memory[at][memory[at].length - 1] = seen;
                changed = true;
            }
        }
        return changed;
    }

    private int mostMemory(int direction, long effort) {
        long steps = windows[direction].size();
        int most = 0;
        while (most < PathRelaxation.MOST_MEMORY
                && (steps << (most + 1)) / 1024 < effort / 60
                && ((long) n * n) << (most + 1) <= MOST_TABLE) {
            most++;
        }
        return most;
    }

    private static boolean has(int[] acts, int act) {
        return Arrays.stream(acts).anyMatch(other -> other == act);
    }

    /** Closes steps that are too dear at a place, with the best prices, and spreads both tables. */
    private boolean conclude(long limit, Limits limits) {
        for (int round = 0; round < 2; round++) {
            for (int direction = 0; direction < 2; direction++) {
                if (!limits.spend(relaxations[direction].effort())) {
                    return false;
                }
                bestBound = Math.max(bestBound, evaluate(direction, best));
            }
            if (round == 0 && bestBound <= limit) {
                close(limit);
            }
        }
        relaxations[0].spread();
        relaxations[1].spread();
        return true;
    }

    private void close(long limit) {
        int[] ahead = relaxations[0].least();
        int[] behind = relaxations[1].least();
        long all = Arrays.stream(best).asLongStream().sum();
        windows[0] =
                windows[0].only(
                        (k, tail, head) -> {
                            long through =
                                    (long) ahead[(k + 1) * n + head]
                                            + behind[(n - 1 - k) * n + n - 1 - tail];
                            return through
                                            + relaxations[0].stepCost(tail, head)
                                            - best[tail]
                                            - best[head]
                                            + all
                                    <= limit;
                        });
        windows[1] = windows[0].turned();
        relaxations[0].narrow(windows[0]);
        relaxations[1].narrow(windows[1]);
    }

    private int[] mirrored(int[] prices) {
        int[] result = new int[n];
        for (int act = 0; act < n; act++) {
            result[n - 1 - act] = prices[act];
        }
        return result;
    }
}
