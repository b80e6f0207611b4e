package reseat.internal.files;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Takes a device apart greedily, one part at a time. If that works there is a plan in which every
 * joint is released and every part moved, so that {@link Reachability} has nothing to find; if not,
 * nothing is known yet. Most devices come apart like this, and it takes a fraction of the time.
 *
 * <p>Time O(r · (j + p) · w) for p parts in w machine words, j joints and r rounds, each of which
 * does at least one act.
 */
final class OneByOne {

    private final Numbered all;

    /** Parts that were not moved yet: they are where the base is. */
    private final BitRows there;

    /** For each part, how many joints keep it from being moved: not slack, not loose yet. */
    private final int[] ties;

    private final boolean[] released;

    /** Joints that no longer keep their parts together. */
    private final boolean[] loose;

    private final Set<String> cut = new HashSet<>();

    private OneByOne(Numbered all) {
        this.all = all;
        int n = all.parts.size();
        int m = all.joints.size();
        this.there = new BitRows(1, n);
        this.ties = new int[n];
        this.released = new boolean[m];
        this.loose = new boolean[m];
        for (int p = 0; p < n; p++) {
            there.set(0, p);
        }
        for (int j = 0; j < m; j++) {
            tie(j, 1);
        }
    }

    /** Returns whether a device comes apart like this. */
    static boolean works(Numbered all) {
        return new OneByOne(all).run();
    }

    private void tie(int j, int more) {
        if (!all.joints.get(j).slack()) {
            for (int p : all.holds[j]) {
                ties[p] += more;
            }
        }
    }

    private boolean run() {
        int open = released.length + ties.length - 1;
        int before = open + 1;
        while (open > 0 && open < before) {
            before = open;
            for (int j = 0; j < released.length; j++) {
                if (!released[j] && (free(j) || gaveWay(j))) {
                    released[j] = true;
                    if (all.joints.get(j).isIsolator()) {
                        cut.addAll(all.joints.get(j).cuts());
                    }
                    open--;
                }
                if (!loose[j] && (released[j] || gives(j))) {
                    loose[j] = true;
                    tie(j, -1);
                }
            }
            // parts mounted last are usually listed last, and come off first
            for (int p = ties.length - 1; p >= 0; p--) {
                if (ties[p] == 0
                        && p != all.base
                        && there.get(0, p)
                        && cut.containsAll(all.needsAlone(p))
                        && !all.covers.meets(p, there, 0)) {
                    there.clear(0, p);
                    open--;
                }
            }
        }
        return open == 0;
    }

    private boolean free(int j) {
        return !all.onlyLetsGo[j]
                && (!there.get(0, all.site(j)) || !all.hiders.meets(j, there, 0))
                && cut.containsAll(all.needs.get(j))
                && all.relaxed(j, released);
    }

    private boolean gives(int j) {
        return all.joints.get(j).gives() && cut.containsAll(all.needs.get(j));
    }

    /** Whether a joint that gives was released by a move of one of its parts. */
    private boolean gaveWay(int j) {
        return gives(j) && IntStream.of(all.holds[j]).anyMatch(p -> !there.get(0, p));
    }
}
