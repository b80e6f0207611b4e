package reseat.oracle;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;
import reseat.model.State;
import reseat.model.Way;

/**
 * A device as bit masks, and the rules of the model over one number per state.
 *
 * <p>A state is a long: bits 0-23 released joints; from bit 24 three bits for the place of each
 * part, places numbered by first occurrence; from bit 48 three bits each for tool and posture; from
 * bit 54 what has been done that must be done; bit 62 whether something inside has been done.
 */
final class Masks {

    static final int MAX_JOINTS = 24;
    static final int MAX_PARTS = 8;
    private static final int PLACE = 24;
    private static final int TOOL = 48;
    private static final int POSTURE = 51;
    static final int DONE = 54;
    static final long WENT_INSIDE = 1L << 62;

    final Device device;
    final List<String> partIds;
    final List<String> jointIds;
    final List<String> supplyIds;
    final List<String> toolIds;
    final List<String> postureIds;
    final int parts;
    final int joints;
    final int base;
    final int[] holds;
    final int[] site;
    final int[] hiddenBy;
    final int[] blockedBy;
    final boolean[] slack;

    final boolean[] gives;

    /** Whether nothing but a move releases a joint. */
    final boolean[] clings;

    /** What has to be cut before what. */
    final PowerMasks power;

    /** For each joint, the supplies that it cuts. */
    private final int[] cuts;

    final List<List<WayFacts>> ways = new ArrayList<>();
    final int[] moveTool;
    final int[] movePosture;
    final long[] moveMs;
    final long[] moveRestoreMs;

    /** For each set of parts, the joints that lead out of it and neither have slack nor give. */
    private final int[] rigidOut;

    /** For each set of parts, the joints that lead out of it and give. */
    private final int[] givingOut;

    /** For each set of parts, the joints that lead out of it, have slack and do not give. */
    private final int[] slackOut;

    private final long layAsideMs;
    private final long turnOpenMs;

    /**
     * For each set of parts, whether one tool and posture do for all, and the base is not among
     * them.
     */
    private final boolean[] movable;

    private final long[][] toolChange;
    private final long[][] postureChange;

    /**
     * A way of a joint: tool, posture, time with restore time, and the joints that must be released
     * before.
     */
    record WayFacts(Way way, int tool, int posture, long ms, int strainedBy) {}

    Masks(Device device) {
        this(device, Set.of());
    }

    /** Reads a device as if some features did not exist. */
    Masks(Device device, Set<Feature> off) {
        this.device = device;
        partIds = List.copyOf(device.parts().keySet());
        jointIds = List.copyOf(device.joints().keySet());
        toolIds = device.setup().tools();
        postureIds = device.setup().postures();
        parts = partIds.size();
        joints = jointIds.size();
        if (parts > MAX_PARTS
                || joints > MAX_JOINTS
                || toolIds.size() > 8
                || postureIds.size() > 8) {
            throw new IllegalArgumentException("too large for the oracle");
        }
        base = partIds.indexOf(device.base());
        holds = new int[joints];
        site = new int[joints];
        hiddenBy = new int[joints];
        slack = new boolean[joints];
        gives = new boolean[joints];
        clings = new boolean[joints];
        cuts = new int[joints];
        supplyIds = List.copyOf(device.supplies().keySet());
        Strain strain = new Strain(device);
        for (int j = 0; j < joints; j++) {
            Joint joint = device.joint(jointIds.get(j));
            holds[j] = mask(joint.holds(), partIds);
            site[j] = partIds.indexOf(joint.holds().get(joint.holds().size() - 1));
            hiddenBy[j] = mask(joint.under(), partIds);
            slack[j] = joint.slack() && !off.contains(Feature.SLACK);
            gives[j] = joint.gives() && !off.contains(Feature.GIVING);
            Kind kind = device.kinds(Kind.Scope.JOINT).get(joint.kind());
            clings[j] =
                    gives[j]
                            && kind != null
                            && kind.role().stream().anyMatch(Kind.Role.CONNECTOR::equals);
            cuts[j] = mask(joint.cuts(), supplyIds);
            List<WayFacts> facts = new ArrayList<>();
            for (Way way : joint.ways().values()) {
                facts.add(
                        new WayFacts(
                                way,
                                toolIds.indexOf(way.tool()),
                                postureIds.indexOf(way.posture()),
                                way.ms() + way.restoreMs(),
                                off.contains(Feature.STRAIN)
                                        ? 0
                                        : mask(strain.of(joint, way), jointIds)));
            }
            ways.add(off.contains(Feature.WAYS) ? facts.subList(0, 1) : facts);
        }
        blockedBy = new int[parts];
        moveTool = new int[parts];
        movePosture = new int[parts];
        moveMs = new long[parts];
        moveRestoreMs = new long[parts];
        for (int p = 0; p < parts; p++) {
            Part part = device.part(partIds.get(p));
            blockedBy[p] = mask(part.under(), partIds);
            if (p != base) {
                Move move = part.move().orElseThrow();
                moveTool[p] = toolIds.indexOf(move.tool());
                movePosture[p] = postureIds.indexOf(move.posture());
                moveMs[p] = move.ms();
                moveRestoreMs[p] = move.restoreMs();
            }
        }
        rigidOut = new int[1 << parts];
        givingOut = new int[1 << parts];
        slackOut = new int[1 << parts];
        movable = new boolean[1 << parts];
        for (int set = 1; set < 1 << parts; set++) {
            movable[set] = (set >> base & 1) == 0 && agree(set);
            for (int j = 0; j < joints; j++) {
                if ((holds[j] & set) != 0 && (holds[j] & ~set) != 0) {
                    int[] out = gives[j] ? givingOut : slack[j] ? slackOut : rigidOut;
                    out[set] |= 1 << j;
                }
            }
        }
        power = new PowerMasks(this, cuts, off);
        layAsideMs = off.contains(Feature.LAY_ASIDE) ? 0 : device.setup().layAsideMs();
        turnOpenMs = off.contains(Feature.TURN_OPEN) ? 0 : device.setup().turnOpenMs();
        toolChange = table(toolIds, true);
        postureChange = table(postureIds, false);
    }

    private long[][] table(List<String> ids, boolean tool) {
        long[][] ms = new long[ids.size()][ids.size()];
        for (int from = 0; from < ids.size(); from++) {
            for (int to = 0; to < ids.size(); to++) {
                ms[from][to] =
                        tool
                                ? device.setup().toolChangeMs(ids.get(from), ids.get(to))
                                : device.setup().postureChangeMs(ids.get(from), ids.get(to));
            }
        }
        return ms;
    }

    private boolean agree(int set) {
        int first = Integer.numberOfTrailingZeros(set);
        for (int p = 0; p < parts; p++) {
            if ((set >> p & 1) != 0
                    && (moveTool[p] != moveTool[first] || movePosture[p] != movePosture[first])) {
                return false;
            }
        }
        return true;
    }

    static int mask(Collection<String> ids, List<String> all) {
        int mask = 0;
        for (String id : ids) {
            mask |= 1 << all.indexOf(id);
        }
        return mask;
    }

    int partMask(Collection<String> ids) {
        return mask(ids, partIds);
    }

    // ---- states

    long encode(State state) {
        int[] place = new int[parts];
        int next = 1;
        for (var together : state.places()) {
            if (!together.contains(device.base())) {
                for (String part : together) {
                    place[partIds.indexOf(part)] = next;
                }
                next++;
            }
        }
        long encoded = mask(state.released(), jointIds) | packed(place);
        return inHand(
                encoded, toolIds.indexOf(device.hand()), postureIds.indexOf(device.usualPosture()));
    }

    /** Returns the places other than that of the base, as masks of parts. */
    List<Integer> placesAside(long state) {
        List<Integer> found = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            int place = placeMask(state, p);
            if (Integer.numberOfTrailingZeros(place) == p && (place >> base & 1) == 0) {
                found.add(place);
            }
        }
        return found;
    }

    /** Returns a state as the model writes it, without what is in hand. */
    State decode(long state) {
        Set<String> released = new LinkedHashSet<>();
        for (int j = 0; j < joints; j++) {
            if ((released(state) >> j & 1) != 0) {
                released.add(jointIds.get(j));
            }
        }
        List<Set<String>> places = new ArrayList<>();
        for (int place : placesAside(state)) {
            places.add(new LinkedHashSet<>(((Act.MoveParts) moveAct(place)).parts()));
        }
        return new State(released, places);
    }

    /** Returns whether a part lies aside: an unreleased joint holds parts in different places. */
    boolean laidAside(long state) {
        for (int j = 0; j < joints; j++) {
            if ((released(state) >> j & 1) == 0
                    && (holds[j] & ~placeMask(state, site[j])) != 0) {
                return true;
            }
        }
        return false;
    }

    private int cut(int released) {
        int cut = 0;
        for (int j = 0; j < joints; j++) {
            cut |= (released >> j & 1) != 0 ? cuts[j] : 0;
        }
        return cut;
    }

    static int released(long state) {
        return (int) (state & 0xFFFFFF);
    }

    static int tool(long state) {
        return (int) (state >> TOOL & 7);
    }

    static int posture(long state) {
        return (int) (state >> POSTURE & 7);
    }

    static int done(long state) {
        return (int) (state >>> DONE & 0xFF);
    }

    static long inHand(long state, int tool, int posture) {
        return state & ~(63L << TOOL) | (long) tool << TOOL | (long) posture << POSTURE;
    }

    private static int placeOf(long state, int part) {
        return (int) (state >> PLACE + 3 * part & 7);
    }

    int placeMask(long state, int part) {
        int place = placeOf(state, part);
        int mask = 0;
        for (int p = 0; p < parts; p++) {
            if (placeOf(state, p) == place) {
                mask |= 1 << p;
            }
        }
        return mask;
    }

    private long packed(int[] place) {
        int[] number = new int[MAX_PARTS + 2];
        int next = 0;
        long packed = 0;
        for (int p = 0; p < parts; p++) {
            if (number[place[p]] == 0) {
                number[place[p]] = ++next;
            }
            packed |= (long) (number[place[p]] - 1) << PLACE + 3 * p;
        }
        return packed;
    }

    // ---- acts

    boolean mayRelease(long state, int joint, WayFacts way) {
        int released = released(state);
        return (released >> joint & 1) == 0
                && !clings[joint]
                && (hiddenBy[joint] & placeMask(state, site[joint])) == 0
                && (power.ofJoint[joint] & ~cut(released)) == 0
                && (way.strainedBy & ~released) == 0;
    }

    /**
     * Returns the states after each act that may be done, releases in the first way that may be
     * taken.
     *
     * @param movable hears of each set of parts that may move
     */
    List<Long> next(long state, IntConsumer movable) {
        List<Long> next = new ArrayList<>();
        for (int j = 0; j < joints; j++) {
            for (WayFacts way : ways.get(j)) {
                if (mayRelease(state, j, way)) {
                    next.add(afterRelease(state, j, way));
                    break;
                }
            }
        }
        for (int set = 1; set < 1 << parts; set++) {
            if (mayMove(state, set)) {
                next.add(afterMove(state, set));
                movable.accept(set);
            }
        }
        return next;
    }

    boolean mayMove(long state, int set) {
        if (set == 0 || !movable[set] || (rigidOut[set] & ~released(state)) != 0) {
            return false;
        }
        for (int p = 0; p < parts; p++) {
            if ((set >> p & 1) != 0
                    && (blockedBy[p] & ~set) != 0
                    && (blockedBy[p] & ~set & placeMask(state, p)) != 0) {
                return false;
            }
        }
        return hangsTogether(released(state), set) && isCut(state, set);
    }

    /** Tells whether what a set of parts needs is cut, and what the joints need that then give. */
    private boolean isCut(long state, int set) {
        int needs = power.ofSet[set];
        for (int j = 0; j < joints; j++) {
            if ((letGo(state, set) >> j & 1) != 0) {
                needs |= power.ofJoint[j];
            }
        }
        return (needs & ~cut(released(state))) == 0;
    }

    private boolean hangsTogether(int released, int set) {
        int reached = set & -set;
        int before;
        do {
            before = reached;
            for (int j = 0; j < joints; j++) {
                if ((released >> j & 1) == 0 && (holds[j] & reached) != 0) {
                    reached |= holds[j] & set;
                }
            }
        } while (reached != before);
        return reached == set;
    }

    long afterRelease(long state, int joint, WayFacts way) {
        long inside = (power.outsideJoints >> joint & 1) != 0 ? 0 : WENT_INSIDE;
        return inHand(state | 1L << joint | inside, way.tool, way.posture);
    }

    long afterMove(long state, int set) {
        int[] place = new int[parts];
        for (int p = 0; p < parts; p++) {
            place[p] = (set >> p & 1) != 0 ? MAX_PARTS + 1 : placeOf(state, p);
        }
        int first = Integer.numberOfTrailingZeros(set);
        long inside = (set & ~power.outsideParts) == 0 ? 0 : WENT_INSIDE;
        long keep = state & ~(0xFFFFFFL << PLACE) | givingOut[set] | inside;
        return inHand(keep | packed(place), moveTool[first], movePosture[first]);
    }

    long setupMs(long from, int tool, int posture) {
        boolean turned = turnOpenMs > 0 && posture(from) != posture && laidAside(from);
        return toolChange[tool(from)][tool]
                + postureChange[posture(from)][posture]
                + (turned ? turnOpenMs : 0);
    }

    /** Returns the joints that let go when a set of parts is moved. */
    int letGo(long state, int set) {
        return givingOut[set] & ~released(state);
    }

    /** Returns what a move of a set of parts costs, its set-up apart. */
    long moveMs(long state, int set) {
        long ms = (slackOut[set] & ~released(state)) != 0 ? layAsideMs : 0;
        for (int j = 0; j < joints; j++) {
            if ((letGo(state, set) >> j & 1) != 0) {
                ms += ways.get(j).get(0).ms;
            }
        }
        return ms + moveMs(set);
    }

    /** Returns the greatest time and restore time of a set of parts. */
    private long moveMs(int set) {
        long ms = 0;
        long restore = 0;
        for (int p = 0; p < parts; p++) {
            if ((set >> p & 1) != 0) {
                ms = Math.max(ms, moveMs[p]);
                restore = Math.max(restore, moveRestoreMs[p]);
            }
        }
        return ms + restore;
    }

    Act moveAct(int set) {
        List<String> ids = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            if ((set >> p & 1) != 0) {
                ids.add(partIds.get(p));
            }
        }
        return new Act.MoveParts(ids);
    }

    Act releaseAct(int joint, WayFacts way) {
        return new Act.Release(jointIds.get(joint), way.way.id());
    }
}
