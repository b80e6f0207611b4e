package reseat.internal.files;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.model.Joint;
import reseat.model.Part;

/**
 * The parts and joints of a device whose references are valid, numbered in the order of the file,
 * and their covers as bit rows. Callers must not modify it.
 */
final class Numbered {

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
