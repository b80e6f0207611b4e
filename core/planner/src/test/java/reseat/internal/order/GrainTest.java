package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GrainTest {

    /** Costs that are multiples of a number but for an amount an act adds, before and after it. */
    private static OrderProblem coarse(long seed, int size, int step) {
        Random random = new Random(seed);
        OrderProblem.Builder builder = OrderProblem.ofSize(size);
        int[] in = random.ints(size, 0, 100).toArray();
        int[] out = random.ints(size, 0, 100).toArray();
        for (int from = 0; from < size; from++) {
            for (int to = 0; to < size; to++) {
                builder.cost(from, to, out[from] + in[to] + step * random.nextInt(30));
            }
        }
        return builder.precede(2, 1).precede(3, 5).build();
    }

    @Test
    void seesTheStepBehindWhatActsAdd() {
        for (int seed = 0; seed < 50; seed++) {
            Grain grain = Grain.of(Network.of(coarse(seed, 12, 7)));
            assertEquals(0, (1000 - grain.below(1000)) % 7);
        }
    }

    @Test
    void roundsBoundsUpToAtMostTheOptimum() {
        for (int seed = 0; seed < 50; seed++) {
            OrderProblem problem = coarse(seed, 9, 10);
            Grain grain = Grain.of(Network.of(problem));
            long optimum = RandomProblems.optimum(problem);
            for (long bound = optimum - 25; bound <= optimum; bound++) {
                long rounded = grain.up(bound);
                assertTrue(rounded >= bound && rounded <= optimum, "seed " + seed);
            }
            assertEquals(optimum, grain.up(optimum - 9));
        }
    }

    @Test
    void roundsNothingWhereCostsAreFine() {
        for (int seed = 0; seed < 100; seed++) {
            OrderProblem problem = RandomProblems.make(seed, 8);
            long optimum = RandomProblems.optimum(problem);
            assertEquals(optimum, Grain.of(Network.of(problem)).up(optimum), "seed " + seed);
        }
    }

    @Test
    void knowsTheCostWhenAllOrdersCostTheSame() {
        OrderProblem.Builder builder = OrderProblem.ofSize(6);
        for (int from = 0; from < 6; from++) {
            for (int to = 0; to < 6; to++) {
                builder.cost(from, to, 10 * from + to);
            }
        }
        // every act but the last is left, every act but the first is entered
        assertEquals(10 * 10 + 15, Grain.of(Network.of(builder.build())).up(0));
    }
}
