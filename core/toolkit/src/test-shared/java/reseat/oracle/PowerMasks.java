package reseat.oracle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Move;
import reseat.model.Part;

/**
 * What has to be cut before what, computed once more from the facts: sets of parts, of joints and
 * of supplies are bit masks.
 */
final class PowerMasks {

    private static final Set<Kind.Role> INNER =
            Set.of(Kind.Role.BOARD, Kind.Role.CELL, Kind.Role.DISPLAY, Kind.Role.CABLE);

    private final Masks masks;
    private final Device device;
    private final int[] cuts;
    private final int supplies;
    private final boolean powerFirst;

    /** For each supply, the part that it comes from as a mask; 0 if none. */
    private final int[] source;

    /** For each supply, the joints that cut it. */
    private final int[] isolators;

    int outsideParts;
    int outsideJoints;

    /** For each supply, the parts on the way to it. */
    final int[] wayParts;

    /** For each supply, the joints on the way to it. */
    final int[] wayJoints;

    /** Supplies that are cut before anything inside. */
    int first;

    /** Supplies to which no rule applies. */
    int dropped;

    /** For each joint, the supplies that it needs. */
    final int[] ofJoint;

    /** For each set of parts, the supplies that its move needs. */
    final int[] ofSet;

    PowerMasks(Masks masks, int[] cuts, Set<Feature> off) {
        this.masks = masks;
        this.device = masks.device;
        this.cuts = cuts;
        this.powerFirst = !off.contains(Feature.POWER_FIRST);
        supplies = masks.supplyIds.size();
        source = new int[supplies];
        isolators = new int[supplies];
        wayParts = new int[supplies];
        wayJoints = new int[supplies];
        for (int s = 0; s < supplies; s++) {
            source[s] =
                    device.supplies().get(masks.supplyIds.get(s)).of().stream()
                            .mapToInt(part -> masks.partMask(List.of(part)))
                            .sum();
            for (int j = 0; j < masks.joints; j++) {
                isolators[s] |= (cuts[j] >> s & 1) << j;
            }
        }
        outside();
        for (int s = 0; s < supplies; s++) {
            way(s);
        }
        first = first();
        ofJoint = new int[masks.joints];
        ofSet = new int[1 << masks.parts];
        drop();
        if (!off.contains(Feature.SUPPLIES)) {
            needs();
        }
    }

    // ---- outside

    private void outside() {
        int opening = opening();
        int before;
        do {
            before = Integer.bitCount(outsideParts) + Integer.bitCount(outsideJoints);
            for (int j = 0; j < masks.joints; j++) {
                if ((masks.hiddenBy[j] & ~outsideParts) == 0) {
                    outsideJoints |= 1 << j;
                }
            }
            for (int p = 0; p < masks.parts; p++) {
                boolean closed = p != masks.base && (opening >> p & 1) == 0;
                if (closed
                        && (masks.blockedBy[p] & ~outsideParts) == 0
                        && (rigid(p) & ~outsideJoints) == 0) {
                    outsideParts |= 1 << p;
                }
            }
        } while (Integer.bitCount(outsideParts) + Integer.bitCount(outsideJoints) > before);
    }

    /** Returns the parts that cover a plug, or a part that belongs inside. */
    private int opening() {
        int opening = 0;
        for (int j = 0; j < masks.joints; j++) {
            Kind kind = device.kinds(Kind.Scope.JOINT).get(joint(j).kind());
            if (kind != null && kind.role().equals(Optional.of(Kind.Role.CONNECTOR))) {
                opening |= masks.hiddenBy[j];
            }
        }
        for (int p = 0; p < masks.parts; p++) {
            Kind kind = device.kinds(Kind.Scope.PART).get(part(p).kind());
            if (kind != null && kind.role().isPresent() && INNER.contains(kind.role().get())) {
                opening |= masks.blockedBy[p];
            }
        }
        return opening;
    }

    private Joint joint(int j) {
        return device.joint(masks.jointIds.get(j));
    }

    private Part part(int p) {
        return device.part(masks.partIds.get(p));
    }

    /** Returns the joints of a part that have to be released before it is moved. */
    private int rigid(int p) {
        int rigid = 0;
        for (int j = 0; j < masks.joints; j++) {
            if ((masks.holds[j] >> p & 1) != 0 && !masks.slack[j] && !masks.gives[j]) {
                rigid |= 1 << j;
            }
        }
        return rigid;
    }

    // ---- on the way

    private void way(int s) {
        wayJoints[s] = isolators[s];
        int parts;
        int joints;
        do {
            parts = wayParts[s];
            joints = wayJoints[s];
            for (int j = 0; j < masks.joints; j++) {
                if ((joints >> j & 1) != 0 && masks.clings[j]) {
                    int others = masks.holds[j] & ~(1 << masks.site[j] | 1 << masks.base);
                    wayParts[s] |= others == 0 ? 1 << masks.site[j] : others;
                } else if ((joints >> j & 1) != 0) {
                    boolean beneath = (masks.hiddenBy[j] >> masks.base & 1) != 0;
                    wayParts[s] |= beneath ? 1 << masks.site[j] : masks.hiddenBy[j];
                    for (Masks.WayFacts way : masks.ways.get(j)) {
                        wayJoints[s] |= way.strainedBy();
                    }
                }
            }
            wayParts[s] &= ~(1 << masks.base);
            for (int p = 0; p < masks.parts; p++) {
                if ((parts >> p & 1) != 0) {
                    wayParts[s] |= masks.blockedBy[p];
                    wayJoints[s] |= rigid(p);
                }
            }
            wayParts[s] &= ~(1 << masks.base);
        } while (parts != wayParts[s] || joints != wayJoints[s]);
    }

    private int first() {
        List<Integer> some = new ArrayList<>();
        int marked = 0;
        for (int s = 0; s < supplies; s++) {
            if (isolators[s] != 0) {
                some.add(s);
                marked |= device.supplies().get(masks.supplyIds.get(s)).first() ? 1 << s : 0;
            }
        }
        if (marked != 0 || some.isEmpty()) {
            return marked;
        }
        some.sort(
                Comparator.<Integer>comparingInt(
                                s -> Integer.bitCount(wayParts[s]) + Integer.bitCount(wayJoints[s]))
                        .thenComparing(s -> masks.supplyIds.get(s)));
        return 1 << some.get(0);
    }

    // ---- needs

    private void needs() {
        for (int j = 0; j < masks.joints; j++) {
            ofJoint[j] = needOfJoint(j);
        }
        for (int set = 1; set < 1 << masks.parts; set++) {
            ofSet[set] = needOfSet(set);
        }
    }

    private int needOfJoint(int j) {
        if (joint(j).needs().isPresent()) {
            return Masks.mask(joint(j).needs().get(), masks.supplyIds);
        }
        int needs = 0;
        for (int s = 0; s < supplies; s++) {
            boolean exempt = (wayJoints[s] >> j & 1) != 0 || (isolators[s] >> j & 1) != 0;
            boolean onCell = (masks.holds[j] & source[s]) != 0;
            boolean inside = (outsideJoints >> j & 1) == 0;
            for (int t = 0; t < s; t++) {
                inside &= (cutEarlier(s) >> t & 1) == 0 || (wayJoints[t] >> j & 1) == 0;
            }
            needs |= !exempt && applies(s, onCell, inside) ? 1 << s : 0;
        }
        return needs;
    }

    private int needOfSet(int set) {
        int needs = 0;
        boolean allState = true;
        for (int p = 0; p < masks.parts; p++) {
            if ((set >> p & 1) != 0) {
                needs |= Masks.mask(part(p).needs().orElse(List.of()), masks.supplyIds);
                allState &= part(p).needs().isPresent();
            }
        }
        for (int s = 0; s < supplies && !allState; s++) {
            boolean onCell = (set & source[s]) != 0;
            boolean inside = (set & ~outsideParts) != 0;
            for (int t = 0; t < s; t++) {
                inside &= (cutEarlier(s) >> t & 1) == 0 || (set & wayParts[t]) == 0;
            }
            needs |= (set & wayParts[s]) == 0 && applies(s, onCell, inside) ? 1 << s : 0;
        }
        return needs;
    }

    /** Returns the supplies that are cut before one of those that come first. */
    private int cutEarlier(int s) {
        return first & ~dropped & ((1 << s) - 1);
    }

    private boolean applies(int s, boolean onCell, boolean inside) {
        boolean comesFirst = powerFirst && (first >> s & 1) != 0;
        return (dropped >> s & 1) == 0 && (onCell || (inside && comesFirst));
    }

    // ---- dropped

    /**
     * Drops the rules for supplies that nobody could cut if there were no rules; then, as long as
     * the rules keep some from being cut, for the last of those.
     */
    private void drop() {
        int all = (1 << supplies) - 1;
        dropped = all;
        dropped = all & ~cutAlone();
        for (int rest = all & ~cutAlone() & ~dropped;
                rest != 0;
                rest = all & ~cutAlone() & ~dropped) {
            dropped |= Integer.highestOneBit(rest);
        }
    }

    /**
     * Returns the supplies that acts on the way cut, if what hangs rigidly together moves as one
     * and everything that can move does so before the next joints are released.
     */
    private int cutAlone() {
        int joints = IntStream.of(wayJoints).reduce(0, (a, b) -> a | b);
        int parts = IntStream.of(wayParts).reduce(0, (a, b) -> a | b);
        int[] mates = new int[masks.parts]; // who shares the place of a part
        Arrays.fill(mates, (1 << masks.parts) - 1);
        int released = 0;
        boolean again = true;
        while (again) {
            again = false;
            for (int p = 0; p < masks.parts; p++) {
                int group = (parts >> p & 1) != 0 ? lump(p, released) : 0;
                if (group != 0 && canMove(group, released, mates)) {
                    for (int q = 0; q < masks.parts; q++) {
                        mates[q] = (group >> q & 1) != 0 ? group : mates[q] & ~group;
                    }
                    released |= givingOut(group, released);
                    again = true;
                }
            }
            for (int j = 0; !again && j < masks.joints; j++) {
                if ((joints & ~released & 1 << j) != 0 && canRelease(j, released, mates)) {
                    released |= 1 << j;
                    again = true;
                }
            }
        }
        return cutBy(released);
    }

    private int cutBy(int released) {
        int cut = 0;
        for (int j = 0; j < masks.joints; j++) {
            cut |= (released >> j & 1) != 0 ? cuts[j] : 0;
        }
        return cut;
    }

    /** Returns the parts that rigid joints hold to one. */
    private int lump(int p, int released) {
        int lump = 1 << p;
        int before;
        do {
            before = lump;
            for (int j = 0; j < masks.joints; j++) {
                boolean rigid = (released >> j & 1) == 0 && (rigidAll() >> j & 1) != 0;
                lump |= rigid && (masks.holds[j] & lump) != 0 ? masks.holds[j] : 0;
            }
        } while (lump != before);
        return lump;
    }

    private int rigidAll() {
        int rigid = 0;
        for (int p = 0; p < masks.parts; p++) {
            rigid |= rigid(p);
        }
        return rigid;
    }

    private int givingOut(int group, int released) {
        int giving = 0;
        for (int j = 0; j < masks.joints; j++) {
            boolean out = (masks.holds[j] & group) != 0 && (masks.holds[j] & ~group) != 0;
            giving |= masks.gives[j] && out ? 1 << j : 0;
        }
        return giving & ~released;
    }

    private boolean canRelease(int j, int released, int[] mates) {
        boolean strained =
                masks.ways.get(j).stream().allMatch(way -> (way.strainedBy() & ~released) != 0);
        return !masks.clings[j]
                && (masks.hiddenBy[j] & mates[masks.site[j]]) == 0
                && (needOfJoint(j) & ~cutBy(released)) == 0
                && !strained;
    }

    private boolean canMove(int group, int released, int[] mates) {
        if ((group >> masks.base & 1) != 0 || mates[Integer.numberOfTrailingZeros(group)] == group) {
            return false;
        }
        int needs = needOfSet(group);
        int covers = 0;
        List<Object> how = new ArrayList<>();
        for (int p = 0; p < masks.parts; p++) {
            if ((group >> p & 1) != 0) {
                covers |= masks.blockedBy[p] & mates[p];
                Move move = device.move(part(p).id());
                how.add(List.of(move.tool(), move.posture()));
            }
        }
        for (int j = 0; j < masks.joints; j++) {
            needs |= (givingOut(group, released) >> j & 1) != 0 ? needOfJoint(j) : 0;
        }
        return (covers & ~group) == 0
                && how.stream().distinct().count() == 1
                && (needs & ~cutBy(released)) == 0;
    }
}
