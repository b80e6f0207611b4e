package reseat.order;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds a cheap order, bounds how much cheaper one could be, and proves that there is none where it can.
 *
 * <p>Three kinds of work take turns, in slices that double: {@link Annealer} improves the best order, {@link Pricing}
 * raises the bound and closes steps, and {@link Beam} searches states from both ends with that bound. Where precedence
 * is dense the search alone is soon exact; where it is thin the order comes from annealing and the bound from pricing;
 * in between each makes the others stronger. Exact for any size in principle, at exponential cost: the problem is
 * NP-hard. One thread; under an effort limit alone the answer is the same every time.
 *
 * @see <a href="https://doi.org/10.1016/0167-6377(88)90069-8">L. F. Escudero, An inexact algorithm for the sequential
 *     ordering problem, 1988: the problem</a>
 */
public final class OrderSolver {

    private static final long FIRST_SLICE = 8_000;
    private static final double[] HEATS = {0.2, 0.35, 0.1, 0.5};

    private final Network[] nets;
    private final Budget budget;
    private final Annealer annealer;
    private final Beam[] beams;
    private final Scale scale;
    private long lowerBound;

    private OrderSolver(Network net, OrderLimit limit) {
        this.nets = new Network[] {net, net.turned()};
        this.budget = new Budget(limit);
        this.annealer = new Annealer(net, net.nearest());
        this.beams = new Beam[] {new Beam(nets[0], budget), new Beam(nets[1], budget)};
        this.scale = new Scale(annealer.bestCost());
    }

    /**
     * Solves a problem as well as the limit allows.
     *
     * @param problem what to put in order
     * @param limit when to stop; some valid order comes back however tight it is
     * @return an order and what is known about it
     */
    public static OrderResult solve(OrderProblem problem, OrderLimit limit) {
        OrderSolver solver = new OrderSolver(Network.of(problem), limit);
        if (problem.size() > 2) {
            solver.search();
        } else {
            solver.lowerBound = solver.annealer.bestCost();
        }
        return solver.result();
    }

    private OrderResult result() {
        List<Integer> order = new ArrayList<>();
        for (int act : annealer.best()) {
            order.add(act);
        }
        long cost = annealer.bestCost();
        boolean proved = lowerBound >= cost;
        return new OrderResult(
                order,
                cost,
                Math.min(lowerBound, cost),
                proved ? OrderResult.Ended.PROVED : budget.ended(),
                budget.spent());
    }

    private boolean open() {
        return lowerBound < annealer.bestCost() && !budget.over();
    }

    private long limit() {
        return scale.up(annealer.bestCost() - 1);
    }

    private void raise(long scaledBound) {
        lowerBound = Math.max(lowerBound, scale.down(scaledBound));
    }

    private void search() {
        int n = nets[0].n;
        annealer.run(FIRST_SLICE / 4, HEATS[0], budget);
        if (!budget.spend(1 + (long) n * n * n / 4096)) {
            return;
        }
        Assignment assignment = new Assignment(nets[0], scale);
        raise(assignment.bound());
        Pricing pricing = Pricing.suits(nets[0]) ? new Pricing(nets[0], nets[1], scale, assignment) : null;
        Completion[] plain = pricing == null
                ? new Completion[] {Completion.of(assignment), Completion.of(new Assignment(nets[1], scale))}
                : new Completion[0];
        long slice = FIRST_SLICE;
        for (int round = 0; open(); round++) {
            annealer.run(slice, HEATS[round % HEATS.length], budget);
            if (pricing != null && open()) {
                boolean ready = pricing.run(slice, limit(), nets[0], budget);
                raise(pricing.bound());
                if (!ready) {
                    return;
                }
            }
            for (int direction = 0; direction < 2 && open(); direction++) {
                Completion ahead = pricing == null ? plain[direction] : pricing.completion(direction);
                beam(direction, ahead, pricing == null ? null : pricing.windows(direction), slice);
            }
            slice *= 2;
        }
    }

    private void beam(int direction, Completion ahead, @Nullable StepWindows steps, long effort) {
        int words = nets[0].words;
        long widest = Math.max(1, budget.states() * 100L / (60 + 8 * words));
        int width = (int) Math.max(32, Math.min(widest, effort / nets[0].n));
        Beam beam = beams[direction];
        if (!beam.pass(ahead, steps, scale, limit(), width)) {
            return;
        }
        int[] found = beam.order();
        if (found != null) {
            int[] order = direction == 0 ? found : turned(found);
            annealer.offer(order, nets[0].costOf(order));
        }
        if (beam.lost() == Long.MAX_VALUE) {
            lowerBound = annealer.bestCost();
        } else {
            raise(beam.lost());
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
