package reseat.internal.planner;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.plan.PlanRequest;

/** A request at its start, with what every way to the goal needs. */
final class Outset {

    final Task task;
    final Compiled c;
    final Landmarks landmarks;
    final Position start;
    final long[] needs;

    /** Takes a request; required moves and parts are still to be made. */
    Outset(PlanRequest request) {
        task = new Task(request);
        c = task.c;
        landmarks = new Landmarks(c, task.need);
        start = task.start();
        needs = compute(start.place);
    }

    /** The needs with some parts elsewhere, as the landmarks know them from then on. */
    long[] compute(char[] place) {
        return landmarks.compute(start.released, place, task.toMove(start.met), asOne());
    }

    List<int[]> asOne() {
        return task.asOne(start.met);
    }

    Bound bound() {
        Bound bound = new Bound(task, landmarks, () -> false);
        bound.owe(asOne());
        return bound;
    }

    MoveBound moves() {
        MoveBound moves = new MoveBound(c, task.need, landmarks);
        moves.owe(asOne());
        return moves;
    }

    /** The parts whose moves are counted, the dearest first, with what each costs. */
    String owed() {
        return owed(needs, start.place);
    }

    String owed(long[] of, char[] place) {
        return moves().debts(of, place).stream()
                .map(debt -> c.partIds[debt.part()] + " " + debt.ms())
                .collect(Collectors.joining(", "));
    }

    /** What is counted for the move of a part. */
    MoveBound.Debt debt(String part) {
        return moves().debts(needs, start.place).stream()
                .filter(debt -> debt.part() == c.part(part))
                .findAny()
                .orElseThrow();
    }

    /** Who may go along, in the order of the alphabet. */
    String company(MoveBound.Debt debt) {
        return names(
                works(
                        Arrays.stream(c.partIds)
                                .filter(id -> debt.company()[c.part(id)])
                                .toArray(String[]::new)));
    }

    /** The number of a work: the node of a joint, or the move of a part. */
    int work(String id) {
        int node = c.node(id);
        return node >= 0 ? node : c.nodes + c.part(id);
    }

    long[] works(String... ids) {
        long[] works = new long[landmarks.words()];
        Arrays.stream(ids).forEach(id -> Bits.set(works, work(id)));
        return works;
    }

    /** The ids of works in the order of the alphabet: the first joint of a node, or the part. */
    String names(long[] works) {
        TreeSet<String> names = new TreeSet<>();
        for (int work = Bits.next(works, 0); work >= 0; work = Bits.next(works, work + 1)) {
            names.add(name(work));
        }
        return String.join(" ", names);
    }

    String name(int work) {
        return work < c.nodes ? c.members[work][0] : c.partIds[work - c.nodes];
    }

    /** The class of a tool and a posture, or -1 if nothing is done in it. */
    int clazz(String tool, String posture) {
        for (int k = 0; k < c.classes; k++) {
            if (c.classTool[k].equals(tool) && c.classPosture[k].equals(posture)) {
                return k;
            }
        }
        return -1;
    }
}
