package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * The acts that a position allows, and those among them that may be done at once without losing the
 * best plan.
 */
final class Expander {

    private static final int[] NONE = {};

    private final Task task;
    private final Compiled c;
    private final Landmarks landmarks;
    private final Groups groups;

    /**
     * Makes an expander.
     *
     * @param task the request
     * @param landmarks computed for a position before its acts are requested
     */
    Expander(Task task, Landmarks landmarks) {
        this.task = task;
        this.c = task.c;
        this.landmarks = landmarks;
        this.groups = new Groups(c, landmarks.pinnedParts(), landmarks.closedNodes());
    }

    /** Returns whether any position allowed more moves than were listed. */
    boolean cutShort() {
        return groups.cutShort();
    }

    /**
     * Does one act after the other that may be done at once, and returns the node after the last;
     * the node itself if there is none.
     *
     * @param start the node; its position is the one the landmarks were computed for
     * @param needs needs of the goal there; what is done is taken out
     * @param eager also take releases that may split a group: quick, but without proof
     */
    Node allAtOnce(Node start, long[] needs, boolean eager) {
        Node node = start;
        for (Node next = atOnce(node, needs, eager);
                next != null;
                next = atOnce(node, needs, eager)) {
            node = next;
            for (int work : Objects.requireNonNull(next.step).works(c)) {
                Bits.clear(needs, work);
            }
        }
        return node;
    }

    /**
     * Returns the node after one act that may be done at once, or null if there is none.
     *
     * <p>An act costs no set-up where the class in hand is its own. If every way to the goal needs
     * it and no other way to do it is cheaper, doing it now and not later costs no more (set-ups
     * are metric), frees others earlier, and can harm in one way alone: a release may split parts
     * that could have moved as one. So a release counts as safe only where no move takes two of its
     * parts while it still links them: the joint is rigid and ends in a part that no move takes, or
     * of each two parts one is never moved, or they differ in tool or posture, or cannot go before
     * the joint is released, or are never company. A move counts only if its part is never company
     * to another; besides, a later move might find tethers released and not lay the part aside, and
     * the move releases what gives, which may split others.
     */
    private @Nullable Node atOnce(Node node, long[] needs, boolean eager) {
        Position at = node.at;
        for (int j = Bits.next(needs, 0); j >= 0 && j < c.nodes; j = Bits.next(needs, j + 1)) {
            Compiled.Option[] options = c.options[j];
            if (options.length > 1 && task.requiresTools()) {
                continue;
            }
            for (int o = 0; o < options.length; o++) {
                if (options[o].clazz() == at.clazz
                        && options[o].costMs() == c.minCost[j]
                        && c.unstrained(options[o], at.released)
                        && task.available(at, j)
                        && (eager || harmless(j))) {
                    return release(node, j, o);
                }
            }
        }
        for (int p = 0; p < c.parts; p++) {
            if (Bits.get(needs, landmarks.moveBit(p)) && c.partClass[p] == at.clazz && alone(p)) {
                int[] move = {p};
                if (movable(at, p) && !task.forbidden(move)) {
                    return move(node, move);
                }
            }
        }
        return null;
    }

    /** Returns the nodes after every act that the position allows. */
    List<Node> all(Node node) {
        Position at = node.at;
        List<Node> next = new ArrayList<>();
        for (int j = 0; j < c.nodes; j++) {
            if (!Bits.get(at.released, j) && !landmarks.isExcluded(j) && task.available(at, j)) {
                for (int o = 0; o < c.options[j].length; o++) {
                    if (c.unstrained(c.options[j][o], at.released)) {
                        next.add(release(node, j, o));
                    }
                }
            }
        }
        for (int[] parts : groups.moves(at, at.met != task.allMet)) {
            if (!task.forbidden(parts) && task.unpowered(at, parts)) {
                next.add(move(node, parts));
            }
        }
        return next;
    }

    private boolean harmless(int j) {
        int[] holds = c.holds[j];
        if (!c.slack[j] && !c.gives[j]) {
            for (int p : holds) {
                if (landmarks.isPinned(p)) {
                    return true;
                }
            }
        }
        for (int a = 0; a < holds.length; a++) {
            for (int b = 0; b < a; b++) {
                if (mayLink(j, holds[a], holds[b])) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Returns whether a move might take two parts while a joint still links them. */
    private boolean mayLink(int j, int a, int b) {
        return !landmarks.isPinned(a)
                && !landmarks.isPinned(b)
                && c.partClass[a] == c.partClass[b]
                && !Bits.get(landmarks.needsOfMove(a), j)
                && !Bits.get(landmarks.needsOfMove(b), j)
                && landmarks.company(a)[b]
                && landmarks.company(b)[a];
    }

    private boolean alone(int part) {
        boolean[] company = landmarks.company(part);
        for (int p = 0; p < c.parts; p++) {
            if (p != part && company[p]) {
                return false;
            }
        }
        return true;
    }

    private boolean movable(Position at, int part) {
        if (landmarks.isPinned(part)) {
            return false;
        }
        for (int j : c.nodesOf[part]) {
            if (Bits.get(at.released, j)) {
                continue;
            }
            if (c.gives[j] ? landmarks.isExcluded(j) || !harmless(j) : !c.slack[j]) {
                return false;
            }
            if (c.slack[j] && c.moving.asideCosts()) {
                return false;
            }
        }
        int[] move = {part};
        if (!task.unpowered(at, move)) {
            return false;
        }
        for (int u : c.partUnder[part]) {
            if (at.place[u] == at.place[part]) {
                return false;
            }
        }
        int mates = 0;
        for (char place : at.place) {
            mates += place == at.place[part] ? 1 : 0;
        }
        return mates > 1;
    }

    /** Returns the node after a release. */
    Node release(Node node, int j, int o) {
        Position at = node.at;
        Compiled.Option option = c.options[j][o];
        long[] released = at.released.clone();
        Bits.set(released, j);
        Position next =
                new Position(
                        released, at.place, option.clazz(), task.met(at.met, option.clazz(), NONE));
        return after(node, next, new Node.Step.Release(j, o), option.costMs());
    }

    /** Returns the node after a move that the position allows. */
    Node move(Node node, int[] parts) {
        Position at = node.at;
        int clazz = c.partClass[parts[0]];
        char[] place = at.place.clone();
        char fresh = (char) c.parts;
        for (int p : parts) {
            place[p] = fresh;
        }
        Compiled.canonical(place);
        int[] given = c.moving.given(parts, at.released);
        long[] released = at.released;
        if (given.length > 0) {
            released = released.clone();
            for (int j : given) {
                Bits.set(released, j);
            }
        }
        boolean aside = c.moving.laysAside(parts, released);
        Position next = new Position(released, place, clazz, task.met(at.met, clazz, parts));
        long ms = c.moving.ms(parts, given, aside) + c.moving.restoreMs(parts, given);
        return after(node, next, new Node.Step.Move(parts, given, aside), ms);
    }

    private Node after(Node node, Position next, Node.Step step, long costMs) {
        long paid =
                costMs
                        + c.moving.setupMs(
                                node.at.clazz, next.clazz, node.at.released, node.at.place);
        return new Node(next, node, step, node.cost + paid, Math.max(0, node.rest - paid));
    }
}
