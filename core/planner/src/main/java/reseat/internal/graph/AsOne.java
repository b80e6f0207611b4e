package reseat.internal.graph;

import java.util.Arrays;
import java.util.List;

/**
 * Moves of certain parts together that every plan still must make: until then the parts must hang
 * together, so the last joint that links them waits for the move.
 */
final class AsOne {

    private static final int[] NONE = {};

    private final Compiled c;
    private List<int[]> moves = List.of();
    private boolean broken;

    /** For each node that must wait, the parts that move before it. */
    private final int[][] movedBefore;

    /** For each part, the nodes that wait for its move. */
    private final int[][] waiting;

    AsOne(Compiled c) {
        this.c = c;
        movedBefore = new int[c.nodes][];
        waiting = new int[c.parts][];
        Arrays.fill(movedBefore, NONE);
        Arrays.fill(waiting, NONE);
    }

    /** Sets the state. */
    void stand(long[] released, List<int[]> still) {
        broken = false;
        if (still.isEmpty() && moves.isEmpty()) {
            return;
        }
        moves = still;
        Arrays.fill(movedBefore, NONE);
        Arrays.fill(waiting, NONE);
        for (int[] move : moves) {
            broken |= !hang(c, move, released, -1);
            for (int j = 0; j < c.nodes; j++) {
                if (breaks(c, move, released, j)) {
                    movedBefore[j] = plus(movedBefore[j], move);
                    for (int p : move) {
                        waiting[p] = plus(waiting[p], j);
                    }
                }
            }
        }
    }

    List<int[]> moves() {
        return moves;
    }

    /** Returns whether some of the moves can no longer be made. */
    boolean broken() {
        return broken;
    }

    int[] movedBefore(int node) {
        return movedBefore[node];
    }

    int[] waitingFor(int part) {
        return waiting[part];
    }

    private static int[] plus(int[] some, int... more) {
        int[] all = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, all, some.length, more.length);
        return all;
    }

    /** Returns whether the release of a node would part what hangs together. */
    static boolean breaks(Compiled c, int[] parts, long[] released, int node) {
        int held = 0;
        for (int p : c.holds[node]) {
            held += Links.contains(parts, p) ? 1 : 0;
        }
        return held > 1 && !Bits.get(released, node) && !hang(c, parts, released, node);
    }

    /** Returns whether parts hang together by unreleased joints, not counting one. */
    private static boolean hang(Compiled c, int[] parts, long[] released, int without) {
        boolean[] near = new boolean[c.parts];
        int[] queue = new int[parts.length];
        int end = 0;
        queue[end++] = parts[0];
        near[parts[0]] = true;
        for (int k = 0; k < end; k++) {
            for (int j : c.nodesOf[queue[k]]) {
                if (j == without || Bits.get(released, j)) {
                    continue;
                }
                for (int p : c.holds[j]) {
                    if (!near[p] && Links.contains(parts, p)) {
                        near[p] = true;
                        queue[end++] = p;
                    }
                }
            }
        }
        return end == parts.length;
    }
}
