package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.order.Limits;
import reseat.oracle.SmallDevices;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;

/** One request with the pieces of a search, each to be tried alone. */
final class Trial {

    /** More than any of the small devices takes. */
    private static final long ENOUGH = 1_000_000;

    final Task task;
    final Limits limits;
    final Judge judge;

    /** Takes a request with more effort than it needs. */
    Trial(PlanRequest request) {
        this(request, ENOUGH);
    }

    /** Takes a request with so many nodes to judge. */
    Trial(PlanRequest request, long expansions) {
        task = new Task(request);
        limits = new Limits(Effort.ofExpansions(expansions), Watch.NONE);
        judge = new Judge(task, limits);
    }

    /** So many small random devices with something to do, and what that costs at least. */
    static List<SmallDevices.Stand> small(int number) {
        List<SmallDevices.Stand> all = new ArrayList<>();
        for (long seed = 1; all.size() < number; seed++) {
            SmallDevices.Stand stand = SmallDevices.start(seed);
            if (stand.restMs().orElse(0) > 0) {
                all.add(stand);
            }
        }
        return all;
    }

    Node start() {
        return new Node(task.start(), null, null, 0, 0);
    }

    /** The start with its bound; the landmarks speak of it from then on. */
    Node judged() {
        Node start = start();
        judge.judge(start, 0);
        return start;
    }

    Expander expander() {
        return new Expander(task, judge.landmarks);
    }

    Beam beam() {
        return new Beam(task, judge, expander(), limits);
    }

    BestFirst exact() {
        return new BestFirst(task, judge, expander(), limits);
    }

    /** The plan of a beam that keeps a single node: some plan, seldom the best; null if none. */
    @Nullable Node greedy() {
        judged();
        return beam().run(start(), 1, true, Bound.NEVER);
    }
}
