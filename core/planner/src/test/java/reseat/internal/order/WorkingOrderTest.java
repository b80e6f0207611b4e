package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WorkingOrderTest {

    private static final int N = 14;

    /** What an order becomes when ends are joined as told, or nothing when it falls apart. */
    private static List<Integer> joined(int[] order, int[] chain, int count) {
        int[] next = new int[N];
        for (int k = 0; k < N - 1; k++) {
            next[order[k]] = order[k + 1];
        }
        for (int c = 0; c < count; c++) {
            next[order[chain[c]]] = order[chain[(c + 1) % count] + 1];
        }
        Integer[] result = new Integer[N];
        int act = 0;
        for (int k = 0; k < N; k++) {
            result[k] = act;
            if (act == N - 1 && k < N - 1) {
                return List.of();
            }
            act = next[act];
        }
        return List.of(result);
    }

    private static int[] someCuts(Random random, int count) {
        return random.ints(0, N - 1).distinct().limit(count).toArray();
    }

    @Test
    void joinsEndsAsToldWheneverThatIsAValidOrder() {
        Random random = new Random(20_260_301);
        OrderProblem problem = RandomProblems.make(0, N);
        WorkingOrder work = new WorkingOrder(Network.of(problem));
        int made = 0;
        for (int k = 0; k < 20_000; k++) {
            if (k % 100 == 0) {
                problem = RandomProblems.make(k, N);
                work = new WorkingOrder(Network.of(problem));
                work.load(Network.of(problem).nearest());
            }
            int[] old = work.order.clone();
            int count = random.nextBoolean() ? 3 : 5;
            int[] chain = someCuts(random, count);
            List<Integer> expected = joined(old, chain, count);
            boolean possible = problem.isValid(expected);
            assertEquals(possible, work.join(chain, count), "case " + k);
            List<Integer> now = Arrays.stream(work.order).boxed().toList();
            assertEquals(possible ? expected : Arrays.stream(old).boxed().toList(), now);
            for (int p = 0; p < N; p++) {
                assertEquals(p, work.place[work.order[p]]);
            }
            made += possible ? 1 : 0;
        }
        assertTrue(made > 1000, "made " + made);
    }

    @Test
    void putsThreeStretchesInTheOppositeSequence() {
        WorkingOrder free = new WorkingOrder(Network.of(OrderProblem.ofSize(8).build()));
        free.load(new int[] {0, 1, 2, 3, 4, 5, 6, 7});
        int[] cuts = {0, 1, 3, 6};
        System.arraycopy(cuts, 0, free.cuts, 0, 4);
        assertTrue(free.oppose());
        assertArrayEquals(new int[] {0, 4, 5, 6, 2, 3, 1, 7}, free.order);
        assertArrayEquals(new int[] {0, 3, 5, 6}, Arrays.copyOf(free.cuts, 4));
    }

    @Test
    void goesBackToTheOrderThatWasKept() {
        Random random = new Random(20_260_302);
        OrderProblem problem = RandomProblems.make(7, N);
        WorkingOrder some = new WorkingOrder(Network.of(problem));
        some.load(Network.of(problem).nearest());
        for (int k = 0; k < 500; k++) {
            int[] kept = some.order.clone();
            for (int change = 0; change < 4; change++) {
                some.join(someCuts(random, 3), 3);
            }
            if (random.nextBoolean()) {
                some.undo();
                assertArrayEquals(kept, some.order);
            } else {
                some.keep();
            }
        }
    }
}
