package reseat.internal.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.plan.Plan.Ended;

/**
 * Finds a cheap order, bounds how much cheaper one could be, and proves optimality where it can.
 *
 * <p>Three kinds of work take turns, in slices that grow: {@link Annealer} and {@link ChainSearch}
 * improve the best order, {@link Pricing} raises the bound and closes steps, and {@link Beam}
 * searches states from both ends with that bound. Where precedence is dense the search alone is
 * soon exact; where it is thin the order comes from improving and the bound from pricing; in
 * between each makes the others stronger. Exact for any size in principle, at exponential cost: the
 * problem is NP-hard. One thread; under an effort limit alone the answer is the same every time.
 *
 * @see "L. F. Escudero, An inexact algorithm for the sequential ordering problem, European Journal
 *     of Operational Research 37, 1988, which states the problem"
 */
public final class OrderSolver {

    /** Effort of the first slices; later ones grow. */
    private static final long FIRST_SLICE = 8_000;

    private static final int USUAL_STATES = 500_000;

    private static final int IMPROVE = 0;
    private static final int PRICE = 1;
    private static final int BEAM = 2;
    private static final int FIRST_WIDTH = 30;

    /** Up to this width both ends are tried in turn; then the one with the better bound goes on. */
    private static final int TRIAL_WIDTH = 500;

    /**
     * How much wider the next pass is. A pass too wide costs as much again, one too narrow is lost.
     */
    private static final long WIDEN = 6;

    /** First temperatures of the annealings, in units of the middle loss of a proposal. */
    private static final double[] HEATS = {0.3, 0.1, 0.2, 0.15};

    private static final double[] HEATS_WHEN_LARGE = {0.1, 0.03, 0.2, 0.01};
    private static final int LARGE = 150;

    /** How many slices in a row one way of improving gets at most. */
    private static final int MOST_IN_ROW = 3;

    /** Maximum factor on the cost of improving when slice after slice finds nothing. */
    private static final int MOST_WEIGHT = 4;

    private final Network[] nets;
    private final Limits limits;
    private final int states;
    private final Incumbent best;
    private final Annealer annealer;
    private final Beam[] beams;
    private final Scale scale;
    private final Grain grain;
    private final double[] heats;
    private final int[] shares;
    private final int[] widths = {FIRST_WIDTH, FIRST_WIDTH};
    private final long[] passEffort = new long[2];
    private final long[] lost = new long[2];
    private @Nullable Neighbours likely;
    private @Nullable ChainSearch chains;
    private @Nullable Pricing pricing;
    private long improveSlice = FIRST_SLICE;
    private long priceSlice = FIRST_SLICE / 4;
    private int turn = 1;
    private boolean chainsNext = true;
    private int inRow;
    private int fruitless;
    private long lowerBound;

    private OrderSolver(Network net, Limits limits, int states, double density) {
        this.heats = net.n > LARGE ? HEATS_WHEN_LARGE : HEATS;
        this.shares =
                density > 0.4
                        ? new int[] {1, 2, 8}
                        : density > 0.15 ? new int[] {2, 1, 2} : new int[] {4, 3, 1};
        this.nets = new Network[] {net, net.turned()};
        this.limits = limits;
        this.states = states;
        int[] nearest = net.nearest();
        this.best = new Incumbent(nearest, net.costOf(nearest));
        this.annealer = new Annealer(net, best);
        this.beams =
                new Beam[] {
                    new Beam(nets[0], limits, Completion.NOTHING),
                    new Beam(nets[1], limits, Completion.NOTHING)
                };
        this.scale = new Scale(best.cost());
        this.grain = Grain.of(net);
    }

    /**
     * Solves a problem as well as the limit allows.
     *
     * @param problem what to put in order
     * @param limits when to stop; some valid order comes back however tight they are
     * @return an order and what is known about it
     */
    public static OrderResult solve(OrderProblem problem, Limits limits) {
        return solve(problem, limits, USUAL_STATES);
    }

    /**
     * Solves a problem in little memory.
     *
     * @param states how many states one layer of the search may hold; each takes about a hundred
     *     bytes and an eighth of a byte for each act
     */
    static OrderResult solve(OrderProblem problem, Limits limits, int states) {
        OrderSolver solver =
                new OrderSolver(Network.of(problem), limits, states, problem.density());
        if (problem.size() > 2) {
            solver.search();
        } else {
            solver.lowerBound = solver.best.cost();
        }
        return solver.result();
    }

    private OrderResult result() {
        List<Integer> order = new ArrayList<>();
        for (int act : best.order()) {
            order.add(act);
        }
        long cost = best.cost();
        boolean proved = lowerBound >= cost;
        return new OrderResult(
                order,
                cost,
                Math.min(lowerBound, cost),
                proved ? Ended.PROVED : Objects.requireNonNull(limits.ended()),
                limits.expansions());
    }

    private boolean open() {
        return lowerBound < best.cost() && !limits.over();
    }

    private long limit() {
        return scale.up(grain.below(best.cost()));
    }

    private void raise(long scaledBound) {
        lowerBound = Math.max(lowerBound, grain.up(scale.down(scaledBound)));
    }

    private void search() {
        annealer.run(FIRST_SLICE / 4, heats[0], limits);
        Assignment assignment = new Assignment(nets[0], scale, limits);
        raise(assignment.bound());
        if (!open()) {
            return;
        }
        Neighbours neighbours = Neighbours.of(assignment);
        likely = neighbours;
        annealer.prefer(neighbours);
        chains = new ChainSearch(nets[0], best, neighbours, assignment, scale);
        if (Pricing.suits(nets[0])) {
            pricing = new Pricing(nets[0], nets[1], scale, assignment);
            price();
        } else {
            beams[0].use(Completion.of(assignment), null);
            beams[1].use(Completion.of(new Assignment(nets[1], scale, limits)), null);
            shares[PRICE] = 0;
        }
        long[] spent = new long[shares.length];
        while (open()) {
            int work = mostBehind(spent);
            long before = limits.expansions();
            switch (work) {
                case IMPROVE -> improve();
                case PRICE -> price();
                default -> beam();
            }
            // improving that finds nothing counts for more, so that proving gets its time
            long weight = work == IMPROVE ? Math.min(MOST_WEIGHT, 1 + fruitless / 2) : 1;
            spent[work] += weight * Math.max(1, limits.expansions() - before);
        }
    }

    /** The kind of work that has had least of its share. */
    private int mostBehind(long[] spent) {
        int work = IMPROVE;
        for (int other = PRICE; other <= BEAM; other++) {
            if (shares[other] > 0 && spent[other] * shares[work] < spent[work] * shares[other]) {
                work = other;
            }
        }
        return work;
    }

    /** Lets the two improvers take turns; one that finds something continues for a while. */
    private void improve() {
        long before = best.cost();
        if (chainsNext) {
            Objects.requireNonNull(chains).run(improveSlice, limits);
        } else {
            annealer.run(improveSlice, heats[turn++ % heats.length], limits);
        }
        boolean found = best.cost() < before;
        fruitless = found ? 0 : fruitless + 1;
        inRow++;
        if (!found || inRow == MOST_IN_ROW) {
            chainsNext = !chainsNext;
            inRow = 0;
        }
        improveSlice += improveSlice / 4;
    }

    private void price() {
        Pricing current = Objects.requireNonNull(pricing);
        boolean ready = current.run(priceSlice, limit(), nets[0], limits);
        raise(current.bound());
        if (ready) {
            beams[0].use(current.completion(0), current.windows(0));
            beams[1].use(current.completion(1), current.windows(1));
            Objects.requireNonNull(likely).avoidClosed(current.windows(0));
        }
        priceSlice *= 2;
    }

    /** Makes one pass from the end that promises more, wider than the last one from there. */
    private void beam() {
        int side = lost[1] > lost[0] || (lost[1] == lost[0] && widths[1] < widths[0]) ? 1 : 0;
        if (Math.max(widths[0], widths[1]) < TRIAL_WIDTH) {
            side = widths[1] < widths[0] ? 1 : 0;
        }
        int words = nets[0].words;
        long widest = Math.max(1, states * 100L / (60 + 8 * words));
        long wanted = Math.min(widest, widths[side] * WIDEN);
        long expected = passEffort[side] * wanted / Math.max(1, widths[side]);
        long left = Math.max(1, limits.left());
        if (expected > left) {
            wanted = wanted * left / expected * 3 / 4;
            if (wanted < widths[side]) {
                shares[BEAM] = 0; // no pass that could end in time would improve on the last one
                return;
            }
        }
        widths[side] = (int) wanted;
        long before = limits.expansions();
        if (!beams[side].pass(scale, limit(), widths[side])) {
            return;
        }
        passEffort[side] = limits.expansions() - before;
        lost[side] = beams[side].lost();
        int[] found = beams[side].order();
        if (found != null) {
            int[] order = side == 0 ? found : turned(found);
            best.offer(order, nets[0].costOf(order));
        }
        if (lost[side] == Long.MAX_VALUE) {
            lowerBound = best.cost();
        } else {
            raise(lost[side]);
        }
    }

    private static int[] turned(int[] order) {
        int n = order.length;
        int[] result = new int[n];
        for (int k = 0; k < n; k++) {
            result[k] = n - 1 - order[n - 1 - k];
        }
        return result;
    }
}
