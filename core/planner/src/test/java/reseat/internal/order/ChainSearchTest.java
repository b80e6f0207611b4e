package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChainSearchTest {

    private static final long SEED = 20_260_201;

    /** The best order after annealing is left out and chains alone had the given effort. */
    private static Incumbent improved(OrderProblem problem, long effort) {
        Network net = Network.of(problem);
        int[] nearest = net.nearest();
        Incumbent best = new Incumbent(nearest, net.costOf(nearest));
        Scale scale = new Scale(best.cost());
        Limits limits = Efforts.of(Long.MAX_VALUE);
        Assignment assignment = new Assignment(net, scale, limits);
        Neighbours likely = Neighbours.of(assignment);
        ChainSearch chains = new ChainSearch(net, best, likely, assignment, scale);
        for (int slice = 0; slice < 4; slice++) {
            chains.run(effort / 4, limits);
        }
        return best;
    }

    private static List<Integer> acts(Incumbent best) {
        return Arrays.stream(best.order()).boxed().toList();
    }

    @Test
    void ordersStayValidAndCostWhatIsSaid() {
        for (int k = 0; k < 60; k++) {
            long seed = SEED + k;
            OrderProblem problem = RandomProblems.make(seed, 1 + k * 2);
            Incumbent best = improved(problem, 400);
            assertEquals(best.cost(), problem.costOf(acts(best)), "seed " + seed);
        }
    }

    @Test
    void findsTheOptimumOfNearlyAllSmallProblems() {
        int found = 0;
        for (int k = 0; k < 50; k++) {
            OrderProblem problem = RandomProblems.make(SEED + k, 5 + k % 6);
            long cost = improved(problem, 2000).cost();
            long optimum = RandomProblems.optimum(problem);
            assertTrue(cost >= optimum);
            found += cost == optimum ? 1 : 0;
        }
        assertTrue(found >= 45, "found " + found + " of 50");
    }

    @Test
    void comesToAnEndWhereThereIsOneOrderOnly() {
        OrderProblem.Builder chain = OrderProblem.ofSize(70);
        for (int act = 1; act < 69; act++) {
            chain.precede(act - 1, act).cost(act - 1, act, act);
        }
        assertEquals(68 * 69 / 2, improved(chain.build(), 100).cost());
    }

    @Test
    void rightsAnOrderThatIsWrongInOnePlace() {
        // the nearest neighbour falls for one step that costs nothing
        int n = 60;
        OrderProblem.Builder builder = OrderProblem.ofSize(n);
        for (int from = 0; from < n; from++) {
            for (int to = 0; to < n; to++) {
                builder.cost(from, to, to == from + 1 ? 1 : 50);
            }
        }
        builder.cost(10, 30, 0);
        assertEquals(n - 1, improved(builder.build(), 4000).cost());
    }
}
