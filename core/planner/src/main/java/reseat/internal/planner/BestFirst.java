package reseat.internal.planner;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import reseat.internal.order.Limits;

/**
 * A* over positions with bounds computed only when a node is taken up: what remains open bounds
 * every plan that beats the incumbent, and an empty list is a proof. Ties go to the node with less
 * to do, then to the older one.
 */
final class BestFirst {

    /** Estimated heap for open and known nodes. */
    private static final long MOST_BYTES = 300L << 20;

    private static final int BYTES_BESIDES = 160;

    private static final int SETUP_EFFORT = 40;

    private final Task task;
    private final Judge judge;
    private final Expander expander;
    private final Limits limits;
    private final Map<Position, Long> known = new HashMap<>();
    private final PriorityQueue<Queued> open =
            new PriorityQueue<>(
                    Comparator.<Queued>comparingLong(q -> q.bound)
                            .thenComparingLong(q -> q.node.rest)
                            .thenComparingLong(q -> q.order));
    private long order;
    private long bytes;
    private @Nullable Node best;
    private long toBeat;

    private record Queued(Node node, long bound, long order) {}

    BestFirst(Task task, Judge judge, Expander expander, Limits limits) {
        this.task = task;
        this.judge = judge;
        this.expander = expander;
        this.limits = limits;
    }

    /**
     * Searches until nothing better is open or the effort ends.
     *
     * @param start the node to begin with
     * @param incumbent cost to beat, in milliseconds
     * @return the best goal node that beats it, or null
     */
    @Nullable Node run(Node start, long incumbent) {
        toBeat = incumbent;
        push(new Node(start.at, null, null, 0, 0));
        while (!open.isEmpty() && open.peek().bound < toBeat) {
            if (limits.over()) {
                return best;
            }
            if (bytes > MOST_BYTES) {
                limits.memory();
                return best;
            }
            Node node = open.remove().node;
            if (node.cost > known.getOrDefault(node.at, Long.MAX_VALUE)) {
                continue;
            }
            limits.report(toBeat == Bound.NEVER ? -1 : toBeat, node.bound());
            take(node);
        }
        return best;
    }

    /**
     * Returns what every plan that beats the incumbent costs at least; {@link Bound#NEVER} if none
     * can.
     */
    long openBound() {
        return open.isEmpty() ? Bound.NEVER : open.peek().bound;
    }

    private void take(Node node) {
        long[] needs = judge.judge(node, SETUP_EFFORT);
        if (node.bound() >= toBeat) {
            return;
        }
        if (!open.isEmpty() && open.peek().bound < node.bound()) {
            queue(node);
            return;
        }
        Node last = expander.allAtOnce(node, needs, false);
        if (last != node) {
            push(last);
            return;
        }
        expander.all(node).forEach(this::push);
    }

    private void push(Node node) {
        if (node.bound() >= toBeat) {
            return;
        }
        Long before = known.get(node.at);
        if (before != null && before <= node.cost) {
            return;
        }
        known.put(node.at, node.cost);
        bytes += node.at.bytes() + BYTES_BESIDES;
        if (task.reached(node.at)) {
            best = node;
            toBeat = node.cost;
            return;
        }
        queue(node);
    }

    private void queue(Node node) {
        open.add(new Queued(node, node.bound(), order++));
    }
}
