package reseat.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds acts that are alike: between them a step costs nothing, and to and from every other act
 * each step costs the same. Acts with the same tool and posture are.
 *
 * <p>Where a detour over such an act is never cheaper than the direct step, an act that is ready
 * after its twin may as well be done at once: taking it out of its later place costs nothing, and
 * nothing is paid for it in its new one.
 */
final class Twins {

    private final OrderProblem problem;
    private final int n;

    private Twins(OrderProblem problem) {
        this.problem = problem;
        this.n = problem.size();
    }

    /** Returns for each act the others that are like it; none where a detour may pay. */
    static int[][] of(OrderProblem problem) {
        Twins twins = new Twins(problem);
        int[][] result = new int[twins.n][0];
        for (List<Integer> alike : twins.groups()) {
            if (alike.size() > 1 && twins.noDetourPays(alike.get(0))) {
                for (int act : alike) {
                    result[act] =
                            alike.stream()
                                    .mapToInt(Integer::intValue)
                                    .filter(k -> k != act)
                                    .toArray();
                }
            }
        }
        return result;
    }

    private List<List<Integer>> groups() {
        List<List<Integer>> groups = new ArrayList<>();
        for (int act = 0; act < n; act++) {
            int each = act;
            groups.stream()
                    .filter(group -> alike(group.get(0), each))
                    .findFirst()
                    .orElseGet(
                            () -> {
                                groups.add(new ArrayList<>());
                                return groups.get(groups.size() - 1);
                            })
                    .add(act);
        }
        return groups;
    }

    private boolean alike(int one, int other) {
        if (problem.cost(one, other) != 0 || problem.cost(other, one) != 0) {
            return false;
        }
        for (int act = 0; act < n; act++) {
            if (act != one
                    && act != other
                    && (problem.cost(one, act) != problem.cost(other, act)
                            || problem.cost(act, one) != problem.cost(act, other))) {
                return false;
            }
        }
        return true;
    }

    private boolean noDetourPays(int over) {
        int[] there = new int[n];
        Arrays.setAll(there, act -> problem.cost(over, act));
        for (int from = 0; from < n; from++) {
            int here = problem.cost(from, over);
            for (int to = 0; to < n; to++) {
                if (from != to && problem.cost(from, to) > (long) here + there[to]) {
                    return false;
                }
            }
        }
        return true;
    }
}
