package reseat.internal.graph;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import reseat.model.Part;
import reseat.model.Power;
import reseat.model.SetupTable;
import reseat.model.Supply;

/**
 * What moves need and bring about besides new places: the supplies that must be cut before, the
 * nodes that let go, and whether parts lie aside on a tether.
 */
public final class Moving {

    private static final int[] NONE = {};

    private final Compiled c;
    private final long layAsideMs;
    private final long turnOpenMs;

    /** For each part, supplies that it states must be cut; none if it is silent. */
    private final long[] stated;

    private final boolean[] silent;

    /** For each part, supplies that come from it. */
    private final long[] from;

    /** For each part, supplies to whose isolators it is on the way. */
    private final long[] onTheWay;

    private final boolean[] outside;

    /** Supplies that are cut before anything inside, in this order. */
    private final long[] first;

    private final long ruled;
    private final boolean anyGives;

    /** Nodes whose parts may lie apart while they are unreleased, at the start at least. */
    private final int[] tethers;

    private final boolean[][] turns;

    Moving(Compiled c, Map<String, Integer> supplies) {
        this.c = c;
        SetupTable setup = c.device.setup();
        layAsideMs = setup.layAsideMs();
        turnOpenMs = setup.turnOpenMs();
        stated = new long[c.parts];
        silent = new boolean[c.parts];
        from = new long[c.parts];
        onTheWay = new long[c.parts];
        outside = new boolean[c.parts];
        Power power = c.device.power();
        for (int p = 0; p < c.parts; p++) {
            Part part = c.device.part(c.partIds[p]);
            silent[p] = part.needs().isEmpty();
            if (part.needs().isPresent()) {
                stated[p] = Compiled.mask(part.needs().get(), supplies);
            }
            outside[p] = power.outsideParts().contains(part.id());
        }
        long dropped = Compiled.mask(power.dropped().keySet(), supplies);
        for (Supply supply : c.device.supplies().values()) {
            long bit = Compiled.mask(List.of(supply.id()), supplies);
            supply.of().ifPresent(part -> from[c.part(part)] |= bit);
            for (String part : power.partsOnTheWay(supply.id())) {
                onTheWay[c.part(part)] |= bit;
            }
        }
        ruled = ~dropped;
        first =
                power.first().stream()
                        .mapToLong(id -> Compiled.mask(List.of(id), supplies))
                        .toArray();
        tethers =
                IntStream.range(0, c.nodes)
                        .filter(j -> c.device.joint(c.members[j][0]).slack())
                        .toArray();
        anyGives = IntStream.range(0, c.nodes).anyMatch(j -> c.gives[j]);
        turns = new boolean[c.classes][c.classes];
        for (int a = 0; a < c.classes; a++) {
            for (int b = 0; b < c.classes; b++) {
                turns[a][b] = !c.classPosture[a].equals(c.classPosture[b]);
            }
        }
    }

    /** Returns the supplies that must be cut before parts are moved together. */
    public long needs(int[] parts) {
        long needs = 0;
        long cells = 0;
        long exempt = 0;
        boolean anySilent = false;
        boolean inside = false;
        for (int p : parts) {
            needs |= stated[p];
            anySilent |= silent[p];
            cells |= from[p];
            exempt |= onTheWay[p];
            inside |= !outside[p];
        }
        return anySilent
                ? needs | (ruled & ((cells & ~exempt) | (inside ? firstUnless(exempt) : 0)))
                : needs;
    }

    /**
     * Returns the supplies that must be cut before a part is moved, whatever goes along.
     *
     * @param exempt the supplies to whose isolators a part is on the way that might go along
     */
    long needsWhateverGoesAlong(int part, long exempt) {
        return silent[part]
                ? ruled & ((from[part] & ~exempt) | (outside[part] ? 0 : firstUnless(exempt)))
                : stated[part];
    }

    /**
     * Returns the supplies that are cut first, up to one to whose isolators an act is on the way.
     */
    private long firstUnless(long onTheWay) {
        long needed = 0;
        for (long supply : first) {
            if ((supply & ruled & onTheWay) != 0) {
                return needed;
            }
            needed |= supply & ~onTheWay;
        }
        return needed;
    }

    /** Returns the supplies to whose isolators a part is on the way. */
    long onTheWay(int part) {
        return onTheWay[part];
    }

    /** Returns the unreleased nodes that a move of parts makes let go, rising. */
    public int[] given(int[] parts, long[] released) {
        if (!anyGives) {
            return NONE;
        }
        int[] given = NONE;
        for (int p : parts) {
            for (int j : c.nodesOf[p]) {
                if (c.gives[j]
                        && !Bits.get(released, j)
                        && leadsOut(j, parts)
                        && !Links.contains(given, j)) {
                    given = Arrays.copyOf(given, given.length + 1);
                    given[given.length - 1] = j;
                }
            }
        }
        Arrays.sort(given);
        return given;
    }

    /** Returns whether an unreleased node still leads from parts to others once they are moved. */
    public boolean laysAside(int[] parts, long[] released) {
        for (int p : parts) {
            for (int j : c.nodesOf[p]) {
                if (c.slack[j] && !Bits.get(released, j) && leadsOut(j, parts)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean leadsOut(int node, int[] parts) {
        for (int p : c.holds[node]) {
            if (!Links.contains(parts, p)) {
                return true;
            }
        }
        return false;
    }

    /** Returns whether laying aside costs anything, at once or when the posture changes. */
    public boolean asideCosts() {
        return layAsideMs > 0 || turnOpenMs > 0;
    }

    /** Returns the time of moving parts together, without the restore time, in milliseconds. */
    public long ms(int[] parts, int[] given, boolean aside) {
        long ms = 0;
        for (int p : parts) {
            ms = Math.max(ms, c.partMs[p]);
        }
        for (int j : given) {
            ms += c.giveMs[j];
        }
        return aside ? ms + layAsideMs : ms;
    }

    /** Returns the restore time of moving parts together, in milliseconds. */
    public long restoreMs(int[] parts, int[] given) {
        long ms = 0;
        for (int p : parts) {
            ms = Math.max(ms, c.partRestoreMs[p]);
        }
        for (int j : given) {
            ms += c.giveRestoreMs[j];
        }
        return ms;
    }

    /**
     * Returns the set-up between an act and the next.
     *
     * @param from class of the act
     * @param to class of the next
     * @param released the nodes released after the act
     * @param place place of every part after the act
     * @return milliseconds
     */
    public long setupMs(int from, int to, long[] released, char[] place) {
        long ms = c.setup[from][to];
        return turnOpenMs > 0 && turns[from][to] && isAside(released, place) ? ms + turnOpenMs : ms;
    }

    private boolean isAside(long[] released, char[] place) {
        for (int j : tethers) {
            if (!Bits.get(released, j)) {
                for (int p : c.holds[j]) {
                    if (place[p] != place[c.site[j]]) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
