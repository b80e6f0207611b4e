package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;

/**
 * Where a move of several parts is asked for that some order of acts allows, the planner's cost is
 * the exhaustive optimum, and it says that there is no way only where there is none.
 */
class RequiredMovesAgainstOracleTest {

    private static final int DEVICES = 250;
    private static final int STEPS = 10;
    private static final Effort ENOUGH = Effort.ofExpansions(5_000_000);

    private int asked;

    @Test
    void findsTheOptimumWithARequiredMove() {
        Map<Long, AssertionError> failures = new TreeMap<>();
        long first = Seeds.first();
        for (long seed = first; seed < first + Seeds.devices(DEVICES); seed++) {
            long each = seed;
            Seeds.check(getClass(), seed, this::compare).ifPresent(e -> failures.put(each, e));
        }
        Seeds.report(failures);
        assertTrue(asked > 0 || Seeds.devices(DEVICES) < DEVICES, "no move of several parts");
    }

    private void compare(long seed) {
        Case plain = RandomDevices.of(seed);
        List<String> moves = moves(plain, new Random(seed));
        if (moves.isEmpty()) {
            return;
        }
        asked++;
        Rules rules = Rules.none().permitRuin(plain.device().parts().keySet());
        rules = rules.requireActs(moves.subList(0, 1));
        Case of = new Case(seed, plain.device(), plain.start(), plain.goal(), rules);
        Optional<Oracle.Optimum> optimum = Oracle.solve(of);
        PlanResult result =
                new Planner()
                        .plan(
                                new PlanRequest(
                                        of.device(), of.goal(), of.start(), of.rules(), ENOUGH));
        if (optimum.isEmpty()) {
            assertFalse(result instanceof PlanResult.Found, () -> "no way, but: " + result);
            return;
        }
        Plan plan = assertInstanceOf(PlanResult.Found.class, result, () -> moves + "").plan();
        assertEquals(optimum.get().ms(), plan.totalMs(), () -> "best is " + optimum.get());
        assertTrue(plan.proved());
    }

    /** Walks at random and notes the moves of several parts that it could make. */
    private static List<String> moves(Case of, Random random) {
        Masks masks = new Masks(of.device());
        long state = masks.encode(of.start().released().isEmpty() ? State.closed() : of.start());
        List<String> moves = new ArrayList<>();
        for (int step = 0; step < STEPS; step++) {
            List<Long> next =
                    masks.next(
                            state,
                            set -> {
                                if (Integer.bitCount(set) > 1) {
                                    moves.add(id(masks, set));
                                }
                            });
            if (next.isEmpty()) {
                break;
            }
            state = next.get(random.nextInt(next.size()));
        }
        return moves;
    }

    private static String id(Masks masks, int set) {
        List<String> parts = new ArrayList<>();
        for (int p = 0; p < masks.parts; p++) {
            if ((set >> p & 1) != 0) {
                parts.add(masks.partIds.get(p));
            }
        }
        return new Act.MoveParts(parts).id();
    }
}
