package reseat.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.Prepare;

/** Finds the least cost of a case by Dijkstra's search over every state that can be reached. */
final class Oracle {

    private final Masks masks;
    private final Asked asked;
    private final Case of;
    private final boolean groups;
    private final Frontier frontier = new Frontier();
    private final long[] moveMs;
    private final boolean[] permittedSet;
    private final long[] setDone;

    /** What the search found. */
    record Optimum(long ms, List<Act> acts) {}

    private Oracle(Case of, boolean groups) {
        this.of = of;
        this.groups = groups;
        this.masks = new Masks(of.device());
        this.asked = new Asked(masks, of);
        int sets = 1 << masks.parts;
        moveMs = new long[sets];
        permittedSet = new boolean[sets];
        setDone = new long[sets];
        for (int set = 1; set < sets; set++) {
            if ((set >> masks.base & 1) == 0 && (groups || Integer.bitCount(set) == 1)) {
                int tool = masks.moveTool[Integer.numberOfTrailingZeros(set)];
                moveMs[set] = masks.moveCost(set);
                permittedSet[set] = asked.permits(set);
                setDone[set] = asked.fulfilled(masks.moveAct(set), masks.toolIds.get(tool));
            }
        }
    }

    /** Returns the best plan and its cost in milliseconds; empty if there is none. */
    static Optional<Optimum> solve(Case of) {
        return new Oracle(of, true).search(new Masks(of.device()).encode(of.start()));
    }

    /**
     * The same from the start of the case with something else in hand.
     *
     * @param inHand a tool of the device
     * @param posture a posture of the device
     */
    static Optional<Optimum> solve(Case of, String inHand, String posture) {
        Oracle oracle = new Oracle(of, true);
        Masks masks = oracle.masks;
        long start = masks.encode(of.start());
        return oracle.search(
                Masks.inHand(
                        start, masks.toolIds.indexOf(inHand), masks.postureIds.indexOf(posture)));
    }

    /** The same with moves of single parts alone. */
    static Optional<Optimum> solveWithoutGroups(Case of) {
        return new Oracle(of, false).search(new Masks(of.device()).encode(of.start()));
    }

    private Optional<Optimum> search(long start) {
        if (asked.met(start) && !asked.needsPrepare()) {
            return Optional.of(new Optimum(0, List.of()));
        }
        if (asked.forbidsPrepare()) {
            return Optional.empty();
        }
        long before = 0;
        List<Act> acts = new ArrayList<>();
        for (Prepare prepare : of.device().prepares().values()) {
            before += prepare.ms() + prepare.restoreMs();
            acts.add(new Act.Prepared(prepare.id()));
        }
        frontier.offer(start, 0, -1);
        while (frontier.pollNext()) {
            long state = frontier.state();
            if (asked.met(state)) {
                acts.addAll(way(frontier.slot()));
                return Optional.of(new Optimum(before + frontier.ms(), acts));
            }
            expand(state, frontier.ms(), frontier.slot());
        }
        return Optional.empty();
    }

    private void expand(long state, long ms, int slot) {
        for (int j = 0; j < masks.joints; j++) {
            if (masks.mayRelease(state, j)) {
                for (Masks.WayFacts way : masks.ways.get(j)) {
                    if (asked.permits(j, way)) {
                        long setup = masks.setupMs(state, way.tool(), way.posture());
                        long duty = asked.fulfilled(masks.releaseAct(j, way), way.way().tool());
                        frontier.offer(
                                masks.afterRelease(state, j, way) | duty,
                                ms + setup + way.ms(),
                                slot);
                    }
                }
            }
        }
        for (int set = 1; set < permittedSet.length; set++) {
            if (permittedSet[set] && masks.mayMove(state, set)) {
                int first = Integer.numberOfTrailingZeros(set);
                long setup = masks.setupMs(state, masks.moveTool[first], masks.movePosture[first]);
                frontier.offer(
                        masks.afterMove(state, set) | setDone[set], ms + setup + moveMs[set], slot);
            }
        }
    }

    /** Finds the acts between the states on the way to a slot by trying them all again. */
    private List<Act> way(int slot) {
        List<Act> acts = new ArrayList<>();
        for (int at = slot; frontier.parent(at) >= 0; at = frontier.parent(at)) {
            int parent = frontier.parent(at);
            acts.add(
                    actBetween(
                            frontier.stateAt(parent),
                            frontier.stateAt(at),
                            frontier.msAt(at) - frontier.msAt(parent)));
        }
        Collections.reverse(acts);
        return acts;
    }

    private Act actBetween(long from, long to, long ms) {
        for (int j = 0; j < masks.joints; j++) {
            for (Masks.WayFacts way : masks.ways.get(j)) {
                Act act = masks.releaseAct(j, way);
                if (masks.mayRelease(from, j)
                        && asked.permits(j, way)
                        && (masks.afterRelease(from, j, way)
                                        | asked.fulfilled(act, way.way().tool()))
                                == to
                        && masks.setupMs(from, way.tool(), way.posture()) + way.ms() == ms) {
                    return act;
                }
            }
        }
        for (int set = 1; set < permittedSet.length; set++) {
            if (permittedSet[set]
                    && masks.mayMove(from, set)
                    && (masks.afterMove(from, set) | setDone[set]) == to
                    && masks.setupMs(from, Masks.tool(to), Masks.posture(to)) + moveMs[set] == ms) {
                return masks.moveAct(set);
            }
        }
        throw new AssertionError("no act leads there, groups " + groups);
    }
}
