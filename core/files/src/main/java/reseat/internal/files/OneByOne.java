package reseat.internal.files;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import reseat.model.Joint;
import reseat.model.Part;

/**
 * Takes a device apart part by part, each alone, whatever is free first. Where that works there is
 * a plan in which every joint is released and every part moved, so that {@link Reachability} has
 * nothing to find; where it does not, nothing is known yet. Most devices come apart like this, and
 * it is found out in a fraction of the time.
 *
 * <p>Time O(r · (j + p) · w) for p parts in w machine words, j joints and r rounds, each of which
 * does at least one act.
 */
final class OneByOne {

    private final Map<String, Integer> numbers = new HashMap<>();
    private final int base;
    private final List<Joint> joints;
    private final int[][] holds;
    private final BitRows hiders;
    private final BitRows covers;

    /** Parts that were not moved yet: they are where the base is. */
    private final BitRows there;

    /** For each part, how many joints keep it from being moved: not slack, not released yet. */
    private final int[] ties;

    private final boolean[] released;
    private final Set<String> cut = new HashSet<>();

    private OneByOne(Draft draft) {
        this.joints = List.copyOf(draft.joints.values());
        int n = draft.parts.size();
        int m = joints.size();
        this.there = new BitRows(1, n);
        for (String part : draft.parts.keySet()) {
            there.set(0, numbers.size());
            numbers.put(part, numbers.size());
        }
        this.base = number(draft.base);
        this.ties = new int[n];
        this.released = new boolean[m];
        this.holds = new int[m][];
        this.hiders = new BitRows(m, n);
        for (int j = 0; j < m; j++) {
            Joint joint = joints.get(j);
            holds[j] = new int[joint.holds().size()];
            for (int k = 0; k < holds[j].length; k++) {
                holds[j][k] = number(joint.holds().get(k));
            }
            tie(j, 1);
            setAll(hiders, j, joint.under());
        }
        this.covers = new BitRows(n, n);
        int p = 0;
        for (Part part : draft.parts.values()) {
            setAll(covers, p++, part.under());
        }
    }

    /** Tells whether a device whose references are sound comes apart like this. */
    static boolean works(Draft draft) {
        return new OneByOne(draft).run();
    }

    private int number(String part) {
        return Objects.requireNonNull(numbers.get(part), part);
    }

    private void setAll(BitRows rows, int row, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            rows.set(row, number(ids.get(i)));
        }
    }

    private void tie(int j, int more) {
        if (!joints.get(j).slack()) {
            for (int p : holds[j]) {
                ties[p] += more;
            }
        }
    }

    private boolean run() {
        int open = holds.length + ties.length - 1;
        int before = open + 1;
        while (open > 0 && open < before) {
            before = open;
            for (int j = 0; j < holds.length; j++) {
                if (!released[j] && free(j)) {
                    released[j] = true;
                    if (joints.get(j).isIsolator()) {
                        cut.addAll(joints.get(j).cuts());
                    }
                    tie(j, -1);
                    open--;
                }
            }
            // what is mounted last stands last in most files, and comes off first
            for (int p = ties.length - 1; p >= 0; p--) {
                if (ties[p] == 0 && p != base && there.get(0, p) && !covers.meets(p, there, 0)) {
                    there.clear(0, p);
                    open--;
                }
            }
        }
        return open == 0;
    }

    private boolean free(int j) {
        int site = holds[j][holds[j].length - 1];
        return (!there.get(0, site) || !hiders.meets(j, there, 0))
                && (joints.get(j).needs().isEmpty() || cut.containsAll(joints.get(j).needs()));
    }
}
