package reseat.internal.order;

/**
 * Improves an order by chains of exchanged steps until none helps, then kicks it and tries again.
 *
 * <p>A chain takes out a step, brings in a likelier one from the same act, takes out the one that
 * this displaces, and so on, as long as the sum is a gain (Lin and Kernighan 1973); after three or
 * five steps it may be closed. No stretch is ever reversed, so an odd number of steps is needed
 * (Kanellakis and Papadimitriou 1980). Steps are weighed above the prices of an assignment: what an
 * exchange gains is the same, but the likely steps come first and hopeless chains end early. Only
 * acts that a change has touched are examined again. A kick puts three short neighbouring stretches
 * in the opposite order, which no chain of three can undo; whether the outcome stays is decided as
 * in annealing (Martin, Otto and Felten 1992). Deterministic.
 */
final class ChainSearch {

    /** How many likely followers are tried for each step of a chain. */
    private static final int[] NARROW = {5, 5, 3, 2};

    private static final int[] BROAD = {8, 6, 4, 3};

    /**
     * How hot to begin, in steps of median cost, how long kicked stretches are at most, and whether
     * chains are broad.
     */
    private record Manner(double heat, int kick, boolean broad) {}

    private static final Manner[] MANNERS = {
        new Manner(2, 10, false),
        new Manner(0.1, 30, true),
        new Manner(1, 30, false),
        new Manner(0.3, 10, true)
    };

    private static final int LONGEST = WorkingOrder.MOST_CUTS;
    private static final int KICK_TRIES = 50;
    private static final int LOOKS_PER_EFFORT = 512;

    private final int n;
    private final Incumbent best;
    private final int[][] followers;
    private final int[] weight;
    private final WorkingOrder work;
    private final int[] order;
    private final Dice dice = new Dice(0x6A09E667F3BCC909L);

    /** The places of a chain after which the order is cut, as the chain runs. */
    private final int[] chain = new int[LONGEST];

    private int turn;
    private Manner manner = MANNERS[0];
    private int[] breadth = NARROW;

    ChainSearch(
            Network net, Incumbent best, Neighbours likely, Assignment assignment, Scale scale) {
        this.n = net.n;
        this.best = best;
        this.followers = likely.followers;
        this.weight = weights(net, assignment, scale);
        this.work = new WorkingOrder(net);
        this.order = work.order;
    }

    /** Costs minus rounded prices; the bare costs where the prices would be too large. */
    private static int[] weights(Network net, Assignment assignment, Scale scale) {
        int n = net.n;
        int[] weights = new int[n * n];
        for (int k = 0; k < weights.length; k++) {
            long weight = net.cost[k];
            if (weight != Network.NEVER) {
                weight -= scale.down(assignment.leaving[k / n]);
                weight -= scale.down(assignment.entering[k % n]);
                if (Math.abs(weight) >= Network.NEVER) {
                    return net.cost;
                }
            }
            weights[k] = (int) weight;
        }
        return weights;
    }

    /** Searches from the best order so far, for about the given effort. */
    void run(long effort, Limits limits) {
        if (n < 5) {
            return;
        }
        manner = MANNERS[turn++ % MANNERS.length];
        breadth = manner.broad ? BROAD : NARROW;
        work.load(best.order());
        long cost = best.cost();
        long until = limits.expansions() + effort;
        long now = cost - improve();
        do {
            long spent = effort - (until - limits.expansions());
            double temperature = manner.heat * cost / n * (effort - spent) / effort;
            if (now - cost <= dice.patience(temperature)) {
                cost = now;
                best.offer(order, cost);
                work.keep();
            } else {
                work.undo();
            }
            now = cost + kick();
            now -= improve();
            long done = work.looks / LOOKS_PER_EFFORT;
            work.looks -= done * LOOKS_PER_EFFORT;
            if (!limits.spend(done)) {
                return;
            }
        } while (limits.expansions() < until);
    }

    /** Exchanges steps until no chain from a touched act helps; returns the gain. */
    private long improve() {
        long total = 0;
        for (int act = work.nextTouched(); act >= 0; act = work.nextTouched()) {
            long gain = improve(act);
            while (gain > 0) {
                total += gain;
                gain = improve(act);
            }
        }
        return total;
    }

    private long improve(int act) {
        if (act == n - 1) {
            return 0;
        }
        chain[0] = work.place[act];
        return extend(1, act, step(chain[0]));
    }

    private int step(int at) {
        return weight[order[at] * n + order[at + 1]];
    }

    /**
     * Tries to go on with a chain that has taken out some steps and left an act without a follower.
     *
     * @param length how many steps are taken out
     * @param tail the act that needs a successor
     * @param gain what the steps taken out cost above those brought in
     * @return the gain of the exchange made, 0 when none was made
     */
    private long extend(int length, int tail, long gain) {
        int row = tail * n;
        int most = Math.min(followers[tail].length, breadth[length - 1]);
        for (int k = 0; k < most; k++) {
            work.looks++;
            int head = followers[tail][k];
            long sum = gain - weight[row + head];
            int at = work.place[head] - 1;
            if (sum <= 0 || at < 0 || isCut(at, length)) {
                continue;
            }
            int next = order[at];
            sum += weight[next * n + head];
            chain[length] = at;
            if (length % 2 == 0) {
                long closed = sum - weight[next * n + order[chain[0] + 1]];
                if (closed > 0 && work.join(chain, length + 1)) {
                    return closed;
                }
            }
            if (length + 1 < LONGEST) {
                long gained = extend(length + 1, next, sum);
                if (gained > 0) {
                    return gained;
                }
            }
        }
        return 0;
    }

    private boolean isCut(int at, int length) {
        for (int c = 0; c < length; c++) {
            if (chain[c] == at) {
                return true;
            }
        }
        return false;
    }

    /** Exchanges four steps without regard to the cost; returns the loss. */
    private long kick() {
        int most = Math.min(manner.kick, (n - 2) / 3);
        int[] cuts = work.cuts;
        for (int tries = 0; tries < KICK_TRIES; tries++) {
            work.looks += 8;
            cuts[0] = dice.below(n - 1);
            for (int k = 1; k <= 3; k++) {
                cuts[k] = cuts[k - 1] + 1 + dice.below(most);
            }
            if (cuts[3] < n - 1) {
                long before = stepsAtCuts();
                if (work.oppose()) {
                    return stepsAtCuts() - before;
                }
            }
        }
        return 0;
    }

    private long stepsAtCuts() {
        int[] cuts = work.cuts;
        return (long) step(cuts[0]) + step(cuts[1]) + step(cuts[2]) + step(cuts[3]);
    }
}
