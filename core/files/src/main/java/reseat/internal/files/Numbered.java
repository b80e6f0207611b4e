package reseat.internal.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.model.Joint;
import reseat.model.Part;

/**
 * The parts and joints of a device whose references are valid, numbered in the order of the file,
 * and their covers as bit rows. Callers must not modify it, unless it is their own copy.
 */
final class Numbered {

    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, Integer> jointNumbers = new HashMap<>();

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

    /** For each part, the tool and the posture with which it leaves, in words; "" for the base. */
    final List<String> manners;

    /** Joints that count as holding nothing; see {@link #copy}. */
    final boolean[] loose;

    Numbered(String base, Collection<Part> parts, Collection<Joint> joints) {
        this.parts = List.copyOf(parts);
        this.joints = List.copyOf(joints);
        int n = this.parts.size();
        int m = this.joints.size();
        for (Part part : this.parts) {
            numbers.put(part.id(), numbers.size());
        }
        this.base = of(base);
        this.holds = new int[m][];
        this.hiders = new BitRows(m, n);
        for (int j = 0; j < m; j++) {
            Joint joint = this.joints.get(j);
            jointNumbers.put(joint.id(), j);
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
        this.needs = new ArrayList<>(this.joints.stream().map(Joint::needs).toList());
        this.manners = new ArrayList<>();
        for (Part part : this.parts) {
            manners.add(
                    part.move()
                            .map(move -> "by " + move.tool() + " in " + move.posture())
                            .orElse(""));
        }
        this.loose = new boolean[m];
    }

    private Numbered(Numbered all) {
        this.numbers.putAll(all.numbers);
        this.jointNumbers.putAll(all.jointNumbers);
        this.parts = all.parts;
        this.joints = all.joints;
        this.base = all.base;
        this.holds = all.holds;
        this.hiders = all.hiders.copy();
        this.covers = all.covers.copy();
        this.needs = new ArrayList<>(all.needs);
        this.manners = new ArrayList<>(all.manners);
        this.loose = all.loose.clone();
    }

    /** Returns a copy in which a caller may leave out facts, to see what would then be possible. */
    Numbered copy() {
        return new Numbered(this);
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
