package reseat.internal.files;

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
 * must not modify it.
 */
final class Numbered {

    private final Device device;
    private final Map<String, Integer> numbers = new HashMap<>();

    final List<Part> parts;
    final List<Joint> joints;
    final int base;

    /** For each joint, the parts that it holds; the last is its site. */
    final int[][] holds;

    /** For each joint, the parts that hide it. */
    final BitRows hiders;

    /** For each part, the parts in the way of moving it. */
    final BitRows covers;

    /** For each joint, the supplies that must be cut before it is released. */
    final List<List<String>> needs;

    /** For each joint that some joint strains, what strains each of its ways; else empty. */
    final List<List<int[]>> strains;

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
        for (int j = 0; j < m; j++) {
            Joint joint = this.joints.get(j);
            holds[j] = new int[joint.holds().size()];
            for (int k = 0; k < holds[j].length; k++) {
                holds[j][k] = of(joint.holds().get(k));
            }
            setAll(hiders, j, joint.under());
        }
        this.covers = new BitRows(n, n);
        for (int p = 0; p < n; p++) {
            setAll(covers, p, this.parts.get(p).under());
        }
        this.needs = joints.stream().map(device.power()::needs).toList();
        Map<String, Integer> jointNumbers = new HashMap<>();
        joints.forEach(joint -> jointNumbers.put(joint.id(), jointNumbers.size()));
        this.strains = joints.stream().map(joint -> strains(joint, jointNumbers)).toList();
    }

    private List<int[]> strains(Joint joint, Map<String, Integer> jointNumbers) {
        List<int[]> byWay =
                joint.ways().values().stream()
                        .map(way -> device.strainedBy(joint, way))
                        .map(ids -> ids.stream().mapToInt(jointNumbers::get).toArray())
                        .toList();
        boolean some = byWay.stream().allMatch(way -> way.length > 0);
        return some ? byWay : List.of();
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

    /**
     * Returns the supplies that a part states must be cut before any move of it. What the rules
     * demand of a move depends on all of its parts, but never makes one impossible: whatever is cut
     * first can be cut first, or the rules do not apply to it.
     */
    List<String> needsAlways(int part) {
        return parts.get(part).needs().orElse(List.of());
    }

    /** Returns the number of a part. */
    int of(String part) {
        return Objects.requireNonNull(numbers.get(part), part);
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
