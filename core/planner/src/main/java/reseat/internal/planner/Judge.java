package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.order.Limits;

/**
 * Judges nodes: what every way on needs, and what that costs at least. Counts states, and
 * determines when to stop.
 */
final class Judge {

    final Landmarks landmarks;
    private final Task task;
    private final Compiled c;
    private final Bound bound;
    private final Limits limits;

    Judge(Task task, Limits limits) {
        this.task = task;
        this.c = task.c;
        this.limits = limits;
        landmarks = new Landmarks(c, task.need);
        bound = new Bound(task, landmarks, limits::over);
    }

    /**
     * Computes the needs of the goal at a node and raises its bound.
     *
     * @param effort states that the bound on set-ups may expand
     * @return the needs; valid, like all results of the landmarks, until the next call
     */
    long[] judge(Node node, int effort) {
        limits.count();
        long[] needs = compute(node.at);
        node.rest = Math.max(node.rest, bound.of(needs, node.at.place, node.at.clazz, effort));
        node.judged = true;
        return needs;
    }

    /** Computes the needs of the goal at a node, without a bound. */
    long[] needs(Node node) {
        limits.count();
        return compute(node.at);
    }

    private long[] compute(Position at) {
        List<int[]> asOne = task.asOne(at.met);
        bound.owe(asOne);
        return landmarks.compute(at.released, at.place, task.toMove(at.met), asOne);
    }

    /**
     * Returns the acts of a route that are neither needed nor decided: nodes, and parts past all
     * nodes. Refers to the node judged last.
     */
    List<Integer> undecided(long[] needs, List<Node.Step> route) {
        List<Integer> acts = new ArrayList<>();
        for (Node.Step step : route) {
            for (int act : step.works(c)) {
                if (!Bits.get(needs, act)
                        && !landmarks.isExcluded(act)
                        && landmarks.canRequire(act)
                        && !acts.contains(act)) {
                    acts.add(act);
                }
            }
        }
        return acts;
    }

    /**
     * Bounds the set-ups and extra costs of some needs of the node judged last. More needs in the
     * same node never have less.
     */
    long setups(Node node, long[] needs, int effort) {
        return bound.setups(needs, node.at.clazz, effort);
    }

    /** Bounds the rest of some needs of the node judged last, or {@link Bound#NEVER}. */
    long withoutSetups(Node node, long[] needs) {
        return landmarks.impossible(needs)
                ? Bound.NEVER
                : bound.withoutSetups(needs, node.at.place);
    }

    /** Returns what some works cost apart from set-ups, each separately, in milliseconds. */
    long workMs(long[] needs) {
        long sum = 0;
        for (int work = Bits.next(needs, 0); work >= 0; work = Bits.next(needs, work + 1)) {
            sum +=
                    work < c.nodes
                            ? c.minCost[work]
                            : work < landmarks.works() ? c.moveCost(work - c.nodes) : Bound.NEVER;
        }
        return sum;
    }

    /**
     * Puts the needs of the node judged last in a cheap order, with nodes that give at the end: a
     * move may release them on the way.
     */
    List<Integer> order(Node node, long[] needs, int width) {
        List<Integer> order = new ArrayList<>(bound.order(needs, node.at.clazz, width));
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            if (c.gives[j]) {
                order.add(j);
            }
        }
        return order;
    }

    /** Bounds the cost from a node judged last of reaching some needs. */
    long bound(Node node, long[] needs, int effort) {
        return bound.of(needs, node.at.place, node.at.clazz, effort);
    }

    /** Returns an effort for the set-ups of a whole plan that takes a fraction of a second. */
    int thorough() {
        double items = (double) c.nodes + c.parts;
        return (int) Math.max(50, Math.min(300_000, 6e10 / (items * items)));
    }
}
