package reseat.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
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
                if ((joints >> j & 1) != 0) {
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
            needs |= (set & wayParts[s]) == 0 && applies(s, onCell, inside) ? 1 << s : 0;
        }
        return needs;
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

    /** Returns the supplies that acts on the way cut, if parts are moved one at a time. */
    private int cutAlone() {
        int joints = IntStream.of(wayJoints).reduce(0, (a, b) -> a | b);
        int parts = IntStream.of(wayParts).reduce(0, (a, b) -> a | b);
        int released = 0;
        int moved = 0;
        int cut;
        int before;
        do {
            before = Integer.bitCount(released) + Integer.bitCount(moved);
            cut = 0;
            for (int j = 0; j < masks.joints; j++) {
                cut |= (released >> j & 1) != 0 ? cuts[j] : 0;
            }
            for (int j = 0; j < masks.joints; j++) {
                if ((joints >> j & 1) != 0 && canRelease(j, released, moved, cut)) {
                    released |= 1 << j;
                }
            }
            for (int p = 0; p < masks.parts; p++) {
                if ((parts >> p & 1) != 0 && canMove(p, released, moved, cut)) {
                    moved |= 1 << p;
                    released |= giving(p);
                }
            }
        } while (Integer.bitCount(released) + Integer.bitCount(moved) > before);
        return cut;
    }

    private int giving(int p) {
        int giving = 0;
        for (int j = 0; j < masks.joints; j++) {
            giving |= masks.gives[j] && (masks.holds[j] >> p & 1) != 0 ? 1 << j : 0;
        }
        return giving;
    }

    /** Returns those of some parts that still share the place of one, itself if among them. */
    private static int beside(int some, int one, int moved) {
        return (moved >> one & 1) != 0 ? some & 1 << one : some & ~moved;
    }

    private boolean canRelease(int j, int released, int moved, int cut) {
        boolean strained =
                masks.ways.get(j).stream().allMatch(way -> (way.strainedBy() & ~released) != 0);
        return beside(masks.hiddenBy[j], masks.site[j], moved) == 0
                && (needOfJoint(j) & ~cut) == 0
                && !strained;
    }

    private boolean canMove(int p, int released, int moved, int cut) {
        int needs = needOfSet(1 << p);
        for (int j = 0; j < masks.joints; j++) {
            if ((giving(p) & ~released & 1 << j) != 0) {
                needs |= needOfJoint(j);
            }
        }
        return beside(masks.blockedBy[p], p, moved) == 0
                && (rigid(p) & ~released) == 0
                && (needs & ~cut) == 0;
    }
}
