package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;
import reseat.internal.order.Limits;

/**
 * Looks for a good plan layer by layer, keeping the most promising nodes of each. Finds plans,
 * proves nothing.
 */
final class Beam {

    /**
     * Ties go to the node with less to do, then to the one found first: the result does not depend
     * on hashes.
     */
    private static final Comparator<Node> PROMISE =
            Comparator.comparingLong(Node::bound).thenComparingLong(node -> node.rest);

    /** Number of candidates judged for each node kept. */
    private static final int JUDGED_PER_KEPT = 3;

    private final Task task;
    private final Judge judge;
    private final Expander expander;
    private final Limits limits;

    Beam(Task task, Judge judge, Expander expander, Limits limits) {
        this.task = task;
        this.judge = judge;
        this.expander = expander;
        this.limits = limits;
    }

    /**
     * Runs once.
     *
     * @param start the node to begin with
     * @param width nodes kept in each layer
     * @param eager whether to take needed releases at once even where they may split a group
     * @param incumbent cost to beat, in milliseconds
     * @return the best goal node found that beats it, or null
     */
    @Nullable Node run(Node start, int width, boolean eager, long incumbent) {
        long toBeat = incumbent;
        Node best = null;
        List<Node> layer = List.of(start);
        Map<Position, Long> seen = new HashMap<>();
        while (!layer.isEmpty() && !limits.over()) {
            Map<Position, Node> next = new LinkedHashMap<>();
            for (Node kept : layer) {
                if (limits.over()) {
                    break;
                }
                long[] needs = judge.judge(kept, 0);
                Node node = expander.allAtOnce(kept, needs, eager);
                if (task.reached(node.at)) {
                    if (node.cost < toBeat) {
                        toBeat = node.cost;
                        best = node;
                    }
                    continue;
                }
                if (node != kept) {
                    needs = judge.judge(node, 0);
                }
                if (node.bound() >= toBeat) {
                    continue;
                }
                for (Node child : expander.all(node)) {
                    discourage(child, node, needs);
                    Long known = seen.get(child.at);
                    if (child.bound() < toBeat && (known == null || child.cost < known)) {
                        seen.put(child.at, child.cost);
                        next.merge(child.at, child, (old, now) -> now.cost < old.cost ? now : old);
                    }
                }
            }
            layer = keep(next.values(), width);
        }
        return best;
    }

    /** An unneeded act leaves all the rest to do. */
    private void discourage(Node child, Node parent, long[] needs) {
        int[] works = Objects.requireNonNull(child.step).works(task.c);
        if (Arrays.stream(works).noneMatch(work -> Bits.get(needs, work))) {
            child.rest = parent.rest;
        }
    }

    private List<Node> keep(Collection<Node> candidates, int width) {
        List<Node> sorted = new ArrayList<>(candidates);
        sorted.sort(PROMISE);
        List<Node> judged = new ArrayList<>();
        for (Node node : sorted.subList(0, Math.min(sorted.size(), JUDGED_PER_KEPT * width))) {
            if (limits.over()) {
                break;
            }
            node.rest = 0;
            judge.judge(node, 0);
            if (node.rest < Bound.NEVER) {
                judged.add(node);
            }
        }
        judged.sort(PROMISE);
        return judged.subList(0, Math.min(judged.size(), width));
    }
}
