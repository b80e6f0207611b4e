package reseat.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import reseat.model.Act;
import reseat.model.Prepare;

/** Finds the least cost of a case by Dijkstra's search over every state that can be reached. */
final class Oracle {

    private final Masks masks;
    private final Asked asked;
    private final boolean groups;
    private final Frontier frontier = new Frontier();
    private long insideMs;
    private boolean insidePermitted;

    /** What of a state is kept: whether something inside was done only if that costs something. */
    private long keep = ~Masks.WENT_INSIDE;

    private final boolean[] permittedSet;
    private final long[] setDone;

    /** What the search found. */
    record Optimum(long ms, List<Act> acts) {}

    private Oracle(Case of, Set<Feature> off) {
        this.groups = !off.contains(Feature.GROUPS);
        this.masks = new Masks(of.device(), off);
        this.asked = new Asked(masks, of, off);
        int sets = 1 << masks.parts;
        permittedSet = new boolean[sets];
        setDone = new long[sets];
        for (int set = 1; set < sets; set++) {
            if ((set >> masks.base & 1) == 0 && (groups || Integer.bitCount(set) == 1)) {
                int tool = masks.moveTool[Integer.numberOfTrailingZeros(set)];
                permittedSet[set] = asked.permits(set);
                setDone[set] = asked.fulfilled(masks.moveAct(set), masks.toolIds.get(tool));
            }
        }
    }

    /** Returns the best plan and its cost in milliseconds; empty if there is none. */
    static Optional<Optimum> solve(Case of) {
        return solve(of, Set.of());
    }

    /** The same as if some features did not exist. */
    static Optional<Optimum> solve(Case of, Set<Feature> off) {
        Oracle oracle = new Oracle(of, off);
        return oracle.search(oracle.masks.encode(of.start()));
    }

    /**
     * The same from the start of the case with something else in hand.
     *
     * @param inHand a tool of the device
     * @param posture a posture of the device
     */
    static Optional<Optimum> solve(Case of, String inHand, String posture) {
        Oracle oracle = new Oracle(of, Set.of());
        Masks masks = oracle.masks;
        long start = masks.encode(of.start());
        return oracle.search(
                Masks.inHand(
                        start, masks.toolIds.indexOf(inHand), masks.postureIds.indexOf(posture)));
    }

    private Optional<Optimum> search(long start) {
        if (asked.met(start) && asked.mustPrepare().isEmpty()) {
            return Optional.of(new Optimum(0, List.of()));
        }
        List<Prepare> always = asked.prepares(false);
        List<Prepare> inside = asked.prepares(true);
        boolean mustAreOpen =
                always.stream().map(Prepare::id).toList().containsAll(asked.mustPrepare());
        if (!mustAreOpen || !always.stream().allMatch(asked::permits)) {
            return Optional.empty();
        }
        long before = ms(always);
        insideMs = ms(inside) - before;
        insidePermitted = inside.stream().allMatch(asked::permits);
        keep = insideMs > 0 || inside.size() > always.size() ? ~0L : ~Masks.WENT_INSIDE;
        frontier.offer(start, 0, -1);
        while (frontier.pollNext()) {
            long state = frontier.state();
            if (asked.met(state)) {
                List<Act> acts = new ArrayList<>();
                boolean wentInside = (state & Masks.WENT_INSIDE) != 0;
                (wentInside ? inside : always)
                        .forEach(prepare -> acts.add(new Act.Prepared(prepare.id())));
                acts.addAll(way(frontier.slot()));
                return Optional.of(new Optimum(before + frontier.ms(), acts));
            }
            expand(state, frontier.ms(), frontier.slot());
        }
        return Optional.empty();
    }

    private static long ms(List<Prepare> prepares) {
        return prepares.stream().mapToLong(p -> p.ms() + p.restoreMs()).sum();
    }

    private void expand(long state, long ms, int slot) {
        each(
                state,
                (act, next, cost) -> {
                    frontier.offer(next, ms + cost, slot);
                    return false;
                });
    }

    /** Hears of an act that may be done; returns whether it has heard enough. */
    private interface Heard {
        boolean act(Supplier<Act> act, long next, long ms);
    }

    /** Tells of each act that may be done in a state, where it leads and what it costs. */
    private void each(long state, Heard heard) {
        for (int j = 0; j < masks.joints; j++) {
            for (Masks.WayFacts way : masks.ways.get(j)) {
                if (masks.mayRelease(state, j, way) && asked.permits(j, way)) {
                    int joint = j;
                    long setup = masks.setupMs(state, way.tool(), way.posture());
                    long duty = asked.fulfilled(masks.releaseAct(j, way), way.way().tool());
                    long next = masks.afterRelease(state, j, way) | duty;
                    if (tell(
                            heard,
                            () -> masks.releaseAct(joint, way),
                            state,
                            next,
                            setup + way.ms())) {
                        return;
                    }
                }
            }
        }
        for (int set = 1; set < permittedSet.length; set++) {
            if (permittedSet[set] && masks.mayMove(state, set) && asked.permits(state, set)) {
                int parts = set;
                int first = Integer.numberOfTrailingZeros(set);
                long setup = masks.setupMs(state, masks.moveTool[first], masks.movePosture[first]);
                long next = masks.afterMove(state, set) | setDone[set];
                if (tell(
                        heard,
                        () -> masks.moveAct(parts),
                        state,
                        next,
                        setup + masks.moveMs(state, set))) {
                    return;
                }
            }
        }
    }

    private boolean tell(Heard heard, Supplier<Act> act, long state, long next, long ms) {
        boolean goesInside = (next & ~state & Masks.WENT_INSIDE) != 0 && keep == ~0L;
        if (goesInside && !insidePermitted) {
            return false;
        }
        return heard.act(act, next & keep, ms + (goesInside ? insideMs : 0));
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
        List<Act> between = new ArrayList<>();
        each(
                from,
                (act, next, cost) -> {
                    if (next == to && cost == ms) {
                        between.add(act.get());
                    }
                    return !between.isEmpty();
                });
        if (!between.isEmpty()) {
            return between.get(0);
        }
        throw new AssertionError("no act leads there, groups " + groups);
    }
}
