package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * Carries out works in a given order as far as the device allows: what is not possible yet is done
 * as soon as it is. A part goes with what hangs on it and lies on it, if it cannot go alone.
 */
final class Following {

    private static final int ANY = -1;

    private final Task task;
    private final Compiled c;
    private final Landmarks landmarks;
    private final Expander expander;

    private final List<Integer> left = new ArrayList<>();
    private final boolean[] moved;

    Following(Task task, Landmarks landmarks) {
        this.task = task;
        this.c = task.c;
        this.landmarks = landmarks;
        expander = new Expander(task, landmarks);
        moved = new boolean[c.parts];
    }

    /** Returns the goal node at the end, or null if the works do not lead there. */
    @Nullable Node follow(Node start, List<Integer> works) {
        left.clear();
        left.addAll(works);
        Node node = start;
        while (!task.reached(node.at)) {
            Node next = asOne(node);
            if (next == null) {
                next = next(node, node.at.clazz, false);
            }
            if (next == null) {
                next = next(node, ANY, false);
            }
            if (next == null) {
                next = next(node, ANY, true);
            }
            if (next == null) {
                return null;
            }
            node = next;
        }
        return node;
    }

    /** Makes a required move as soon as it is possible. */
    private @Nullable Node asOne(Node node) {
        for (int[] move : task.asOne(node.at.met)) {
            boolean[] in = new boolean[c.parts];
            for (int p : move) {
                in[p] = true;
            }
            if (mayGo(node.at, move, in)) {
                for (int p : move) {
                    moved[p] = true;
                }
                return expander.move(node, move);
            }
        }
        return null;
    }

    private boolean mayGo(Position at, int[] move, boolean[] in) {
        for (int p : move) {
            if (landmarks.isPinned(p) || c.partClass[p] != c.partClass[move[0]]) {
                return false;
            }
            for (int j : c.nodesOf[p]) {
                for (int q : c.holds[j]) {
                    if (!in[q] && isRigid(j) && !Bits.get(at.released, j)) {
                        return false;
                    }
                }
            }
            for (int u : c.partUnder[p]) {
                if (!in[u] && at.place[u] == at.place[p]) {
                    return false;
                }
            }
        }
        return !task.forbidden(move) && task.unpowered(at, move) && hangsTogether(at, move, in);
    }

    private boolean isRigid(int j) {
        return !c.slack[j] && (!c.gives[j] || landmarks.isExcluded(j));
    }

    /** Does the first work of a class that can be done; in need also one that splits a group. */
    private @Nullable Node next(Node node, int clazz, boolean inNeed) {
        for (Iterator<Integer> works = left.iterator(); works.hasNext(); ) {
            int work = works.next();
            if (work < c.nodes && Bits.get(node.at.released, work)) {
                works.remove();
                continue;
            }
            if (work < c.nodes) {
                int option = option(node.at, work);
                if (option >= 0
                        && (clazz == ANY || isFree(work, option, clazz))
                        && task.available(node.at, work)) {
                    works.remove();
                    return expander.release(node, work, option);
                }
                continue;
            }
            int part = work - c.nodes;
            if (moved[part]) {
                works.remove();
                continue;
            }
            if (clazz != ANY && c.partClass[part] != clazz) {
                continue;
            }
            int[] group = group(node.at, part, inNeed);
            if (group.length > 0 && !task.forbidden(group) && task.unpowered(node.at, group)) {
                works.remove();
                for (int p : group) {
                    moved[p] = true;
                }
                return expander.move(node, group);
            }
        }
        return null;
    }

    private boolean isFree(int j, int option, int clazz) {
        return c.options[j][option].clazz() == clazz
                && c.options[j][option].costMs() == c.minCost[j];
    }

    private int option(Position at, int j) {
        int best = -1;
        long least = Long.MAX_VALUE;
        for (int o = 0; o < c.options[j].length; o++) {
            Compiled.Option option = c.options[j][o];
            long cost = c.setup[at.clazz][option.clazz()] + option.costMs();
            if (cost < least && c.unstrained(option, at.released)) {
                least = cost;
                best = o;
            }
        }
        return best;
    }

    /** Returns the fewest parts that a move of a part takes, rising; none if it cannot be moved. */
    private int[] group(Position at, int part, boolean inNeed) {
        boolean[] in = new boolean[c.parts];
        int[] queue = new int[c.parts];
        int end = 0;
        queue[end++] = part;
        in[part] = true;
        for (int k = 0; k < end; k++) {
            int p = queue[k];
            if (landmarks.isPinned(p) || c.partClass[p] != c.partClass[part]) {
                return new int[0];
            }
            for (int j : c.nodesOf[p]) {
                if (!isRigid(j) || Bits.get(at.released, j)) {
                    continue;
                }
                if (!inNeed && left.contains(j)) {
                    return new int[0];
                }
                for (int q : c.holds[j]) {
                    if (!in[q]) {
                        in[q] = true;
                        queue[end++] = q;
                    }
                }
            }
            for (int u : c.partUnder[p]) {
                if (at.place[u] == at.place[p] && !in[u]) {
                    in[u] = true;
                    queue[end++] = u;
                }
            }
        }
        int[] group = new int[end];
        int n = 0;
        for (int p = 0; p < c.parts; p++) {
            if (in[p]) {
                group[n++] = p;
            }
        }
        return hangsTogether(at, group, in) && parts(at, group) ? group : new int[0];
    }

    private boolean hangsTogether(Position at, int[] group, boolean[] in) {
        boolean[] near = new boolean[c.parts];
        int[] queue = new int[group.length];
        int end = 0;
        queue[end++] = group[0];
        near[group[0]] = true;
        for (int k = 0; k < end; k++) {
            for (int j : c.nodesOf[queue[k]]) {
                if (Bits.get(at.released, j)) {
                    continue;
                }
                for (int q : c.holds[j]) {
                    if (in[q] && !near[q]) {
                        near[q] = true;
                        queue[end++] = q;
                    }
                }
            }
        }
        return end == group.length;
    }

    /** Returns whether a move would part anything: not if all that share a place move. */
    private static boolean parts(Position at, int[] group) {
        char place = at.place[group[0]];
        int mates = 0;
        for (char other : at.place) {
            mates += other == place ? 1 : 0;
        }
        for (int p : group) {
            if (at.place[p] != place) {
                return true;
            }
            mates--;
        }
        return mates > 0;
    }
}
