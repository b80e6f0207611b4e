package reseat.planner;

import java.util.ArrayList;
import java.util.List;
import reseat.model.CostedAct;

/**
 * Two sequences of acts compared act by act: a longest common subsequence of stable ids, and the
 * acts found in only one of them.
 *
 * @param lines the lines in order
 */
public record PlanDifference(List<Line> lines) {

    public PlanDifference {
        lines = List.copyOf(lines);
    }

    /** In which sequence an act occurs. */
    public enum In {
        BOTH,
        FIRST_ALONE,
        SECOND_ALONE
    }

    /**
     * One act.
     *
     * @param in the sequences in which it occurs
     * @param id its stable id
     * @param firstMs its cost in the first sequence, in milliseconds; 0 if it is not in it
     * @param secondMs its cost in the second sequence, in milliseconds; 0 if it is not in it
     */
    public record Line(In in, String id, long firstMs, long secondMs) {}

    /** Compares two sequences. O(n m) time and memory. */
    public static PlanDifference of(List<CostedAct> first, List<CostedAct> second) {
        int[][] common = new int[first.size() + 1][second.size() + 1];
        for (int i = first.size() - 1; i >= 0; i--) {
            for (int k = second.size() - 1; k >= 0; k--) {
                common[i][k] =
                        same(first.get(i), second.get(k))
                                ? common[i + 1][k + 1] + 1
                                : Math.max(common[i + 1][k], common[i][k + 1]);
            }
        }
        List<Line> lines = new ArrayList<>();
        int i = 0;
        int k = 0;
        while (i < first.size() || k < second.size()) {
            boolean left = i < first.size();
            boolean right = k < second.size();
            if (left && right && same(first.get(i), second.get(k))) {
                CostedAct a = first.get(i++);
                lines.add(new Line(In.BOTH, a.act().id(), a.costMs(), second.get(k++).costMs()));
            } else if (left && (!right || common[i + 1][k] >= common[i][k + 1])) {
                CostedAct a = first.get(i++);
                lines.add(new Line(In.FIRST_ALONE, a.act().id(), a.costMs(), 0));
            } else {
                CostedAct b = second.get(k++);
                lines.add(new Line(In.SECOND_ALONE, b.act().id(), 0, b.costMs()));
            }
        }
        return new PlanDifference(lines);
    }

    /** Returns whether both have the same acts in the same order. */
    public boolean isEmpty() {
        return lines.stream().allMatch(line -> line.in() == In.BOTH);
    }

    private static boolean same(CostedAct a, CostedAct b) {
        return a.act().id().equals(b.act().id());
    }
}
