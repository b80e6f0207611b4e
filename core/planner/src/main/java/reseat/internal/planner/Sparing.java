package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Landmarks;

/** Leaves out of a plan each release of a joint that lets go with a later move at the same cost. */
final class Sparing {

    private final Task task;
    private final Expander expander;

    Sparing(Task task) {
        this.task = task;
        expander = new Expander(task, new Landmarks(task.c, task.need));
    }

    /** Returns a plan that costs no more, as short as it gets by leaving releases out. */
    Node of(Node plan) {
        Node best = plan;
        int at = 0;
        while (at < best.steps().size()) {
            Node without = gives(best.steps().get(at)) ? without(best, at) : null;
            if (without == null) {
                at++;
            } else {
                best = without;
            }
        }
        return best;
    }

    private boolean gives(Node.Step step) {
        return step instanceof Node.Step.Release release && task.c.gives[release.node()];
    }

    private @Nullable Node without(Node plan, int left) {
        List<Node.Step> steps = new ArrayList<>(plan.steps());
        steps.remove(left);
        Node node = new Node(task.start(), null, null, 0, 0);
        for (Node.Step step : steps) {
            if (step instanceof Node.Step.Release release) {
                if (!task.available(node.at, release.node())
                        || !task.c.unstrained(
                                task.c.options[release.node()][release.option()],
                                node.at.released)) {
                    return null;
                }
                node = expander.release(node, release.node(), release.option());
            } else if (step instanceof Node.Step.Move move) {
                if (!task.unpowered(node.at, move.parts())) {
                    return null;
                }
                node = expander.move(node, move.parts());
            }
        }
        return task.reached(node.at) && node.cost <= plan.cost ? node : null;
    }
}
