package reseat.internal.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;

/**
 * The parts and joints of a device, numbered in the order of the file, their covers as bit rows,
 * and what must be cut and released before them, computed where the file does not state it. Callers
 * must not modify it, unless it is their own copy.
 */
final class Numbered {

    private final Device device;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, Integer> jointNumbers = new HashMap<>();

    final List<Part> parts;
    final List<Joint> joints;
    final int base;

    /** For each joint, the parts it holds, the site last. */
    final int[][] holds;

    /** For each joint, the parts that hide it. */
    final BitRows hiders;

    /** For each part, the parts that it is under. */
    final BitRows covers;

    /** For each joint, whether nothing but a move that takes its parts apart releases it. */
    final boolean[] onlyLetsGo;

    /** For each joint, the supplies that must be cut before it is released. */
    final List<List<String>> needs;

    /**
     * For each part, the supplies that it states must be cut before any move of it. What the rules
     * demand of a move depends on all of its parts, but never makes one impossible: whatever is cut
     * first can be cut first, or the rules do not apply to it.
     */
    final List<List<String>> partNeeds;

    /** For each joint that some joint strains, what strains each of its ways; else empty. */
    final List<List<int[]>> strains;

    /** For each part, the tool and the posture with which it leaves, in words; "" for the base. */
    final List<String> manners;

    /** Joints that count as holding nothing; see {@link #copy}. */
    final boolean[] loose;

    Numbered(Device device) {
        this.device = device;
        this.parts = List.copyOf(device.parts().values());
        this.joints = List.copyOf(device.joints().values());
        int n = this.parts.size();
        int m = this.joints.size();
        for (Part part : this.parts) {
            numbers.put(part.id(), numbers.size());
        }
        this.base = of(device.base());
        this.holds = new int[m][];
        this.hiders = new BitRows(m, n);
        this.onlyLetsGo = new boolean[m];
        for (int j = 0; j < m; j++) {
            Joint joint = this.joints.get(j);
            jointNumbers.put(joint.id(), j);
            holds[j] = new int[joint.holds().size()];
            for (int k = 0; k < holds[j].length; k++) {
                holds[j][k] = of(joint.holds().get(k));
            }
            setAll(hiders, j, joint.under());
            onlyLetsGo[j] = device.onlyLetsGo(joint);
        }
        this.covers = new BitRows(n, n);
        this.partNeeds = new ArrayList<>();
        this.manners = new ArrayList<>();
        for (int p = 0; p < n; p++) {
            Part part = this.parts.get(p);
            setAll(covers, p, part.under());
            partNeeds.add(part.needs().orElse(List.of()));
            manners.add(
                    part.move()
                            .map(move -> "by " + move.tool() + " in " + move.posture())
                            .orElse(""));
        }
        this.needs = new ArrayList<>(joints.stream().map(device.power()::needs).toList());
        this.strains = new ArrayList<>(joints.stream().map(this::strainsOf).toList());
        this.loose = new boolean[m];
    }

    private Numbered(Numbered all) {
        this.device = all.device;
        this.numbers.putAll(all.numbers);
        this.jointNumbers.putAll(all.jointNumbers);
        this.parts = all.parts;
        this.joints = all.joints;
        this.base = all.base;
        this.holds = all.holds;
        this.hiders = all.hiders.copy();
        this.onlyLetsGo = all.onlyLetsGo.clone();
        this.covers = all.covers.copy();
        this.needs = new ArrayList<>(all.needs);
        this.partNeeds = new ArrayList<>(all.partNeeds);
        this.strains = new ArrayList<>(all.strains);
        this.manners = new ArrayList<>(all.manners);
        this.loose = all.loose.clone();
    }

    /** Returns a copy in which a caller may leave out facts, to see what would then be possible. */
    Numbered copy() {
        return new Numbered(this);
    }

    private List<int[]> strainsOf(Joint joint) {
        List<int[]> byWay =
                joint.ways().values().stream()
                        .map(way -> device.strainedBy(joint, way))
                        .map(ids -> ids.stream().mapToInt(this::ofJoint).toArray())
                        .toList();
        boolean all = byWay.stream().allMatch(way -> way.length > 0);
        return all ? byWay : List.of();
    }

    /** Returns whether some way of a joint is strained by none that is not released. */
    boolean relaxed(int joint, boolean[] released) {
        List<int[]> byWay = strains.get(joint);
        return byWay.isEmpty()
                || byWay.stream()
                        .anyMatch(way -> IntStream.of(way).allMatch(other -> released[other]));
    }

    /** Returns the supplies that must be cut before a part is moved alone. */
    List<String> needsAlone(int part) {
        return device.power().needs(List.of(parts.get(part).id()));
    }

    /** Returns the part that is moved to have a joint let go that only lets go. */
    Part movedToLetGo(int joint) {
        return parts.get(of(device.movedToLetGo(joints.get(joint)).get(0)));
    }

    /** Returns the number of a part. */
    int of(String part) {
        return Objects.requireNonNull(numbers.get(part), part);
    }

    /** Returns the number of a joint. */
    int ofJoint(String joint) {
        return Objects.requireNonNull(jointNumbers.get(joint), joint);
    }

    /** Returns the part in whose place a joint is. */
    int site(int joint) {
        return holds[joint][holds[joint].length - 1];
    }

    private void setAll(BitRows rows, int row, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            rows.set(row, of(ids.get(i)));
        }
    }
}
