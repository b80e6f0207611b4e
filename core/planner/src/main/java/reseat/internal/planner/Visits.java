package reseat.internal.planner;

import java.util.ArrayList;
import java.util.List;
import reseat.internal.graph.Compiled;

/**
 * The least that changes of tool and changes of posture cost when given tools and postures must
 * still be visited. Both tables are metric, so the cheapest walk over a set of tools is its
 * cheapest path: found for all sets by dynamic programming (Held and Karp 1962) where there are
 * few, and bounded by the cheapest change into each where there are many.
 */
final class Visits {

    private static final int MOST_EXACT = 12;

    private final Axis tools;
    private final Axis postures;
    private final long[][] toolChanges;
    private final long[][] postureChanges;
    final int[] toolOf;
    final int[] postureOf;

    Visits(Compiled c) {
        List<String> toolIds = new ArrayList<>();
        List<String> postureIds = new ArrayList<>();
        toolOf = new int[c.classes];
        postureOf = new int[c.classes];
        for (int k = 0; k < c.classes; k++) {
            toolOf[k] = number(toolIds, c.classTool[k]);
            postureOf[k] = number(postureIds, c.classPosture[k]);
        }
        toolChanges = table(toolIds, c.device.setup()::toolChangeMs);
        postureChanges = table(postureIds, c.device.setup()::postureChangeMs);
        tools = new Axis(toolChanges);
        postures = new Axis(postureChanges);
    }

    /** Creates the changes of one table, where each place is a class. */
    Visits(long[][] changes) {
        int m = changes.length;
        toolOf = new int[m];
        postureOf = new int[m];
        for (int k = 0; k < m; k++) {
            toolOf[k] = k;
        }
        toolChanges = changes;
        postureChanges = new long[1][1];
        tools = new Axis(toolChanges);
        postures = new Axis(postureChanges);
    }

    /** Returns the changes of tool alone, where each tool is a class. */
    Visits toolsAlone() {
        return new Visits(toolChanges);
    }

    /** Returns the changes of posture alone, where each posture is a class. */
    Visits posturesAlone() {
        return new Visits(postureChanges);
    }

    long[][] toolChanges() {
        return toolChanges;
    }

    long[][] postureChanges() {
        return postureChanges;
    }

    /**
     * Returns a lower bound on the changes of tool that visit all tools of a mask, in milliseconds.
     */
    long tools(int from, long mask) {
        return tools.bound(from, mask);
    }

    /** Returns the same for postures. */
    long postures(int from, long mask) {
        return postures.bound(from, mask);
    }

    private interface Change {
        long ms(String from, String to);
    }

    private static int number(List<String> ids, String id) {
        int at = ids.indexOf(id);
        if (at < 0) {
            ids.add(id);
            at = ids.size() - 1;
        }
        // beyond a word no bound is kept: a mask bit that does not exist is never used
        return at;
    }

    private static long[][] table(List<String> ids, Change change) {
        long[][] table = new long[ids.size()][ids.size()];
        for (int a = 0; a < ids.size(); a++) {
            for (int b = 0; b < ids.size(); b++) {
                table[a][b] = change.ms(ids.get(a), ids.get(b));
            }
        }
        return table;
    }

    /** One of the two tables. */
    private static final class Axis {
        private final int n;
        private final long[] into;
        private final long[] path;

        Axis(long[][] change) {
            n = change.length;
            into = new long[n];
            for (int b = 0; b < n; b++) {
                long least = Long.MAX_VALUE;
                for (int a = 0; a < n; a++) {
                    if (a != b) {
                        least = Math.min(least, change[a][b]);
                    }
                }
                into[b] = n == 1 ? 0 : least;
            }
            path = n <= MOST_EXACT ? paths(change) : new long[0];
        }

        private long[] paths(long[][] change) {
            long[] best = new long[n * (1 << n)];
            for (int set = 1; set < 1 << n; set++) {
                for (int at = 0; at < n; at++) {
                    long least = Long.MAX_VALUE / 4;
                    for (int rest = set; rest != 0; rest &= rest - 1) {
                        int next = Integer.numberOfTrailingZeros(rest);
                        least =
                                Math.min(
                                        least,
                                        change[at][next]
                                                + best[(next << n) | (set & ~(1 << next))]);
                    }
                    best[(at << n) | set] = least;
                }
            }
            return best;
        }

        long bound(int at, long mask) {
            if (path.length > 0) {
                return path[(at << n) | (int) mask];
            }
            long sum = 0;
            for (long rest = mask; rest != 0; rest &= rest - 1) {
                int next = Long.numberOfTrailingZeros(rest);
                if (next != at) {
                    sum += into[next];
                }
            }
            return sum;
        }
    }
}
