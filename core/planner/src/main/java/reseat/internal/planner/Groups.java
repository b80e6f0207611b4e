package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;

/**
 * The moves that a position allows, power apart. Parts held rigidly together form bodies; a move
 * takes bodies that slack joints or joints which give link, agree on tool and posture, and bring
 * along every cover that lies on them. Found by listing connected sets of bodies, smallest index
 * first, each once.
 */
final class Groups {

    /** The most moves listed at a position; a search that meets more cannot claim a proof. */
    private static final int MOST = 512;

    /** The most sets of bodies examined for one position, for the same reason. */
    private static final int MOST_SETS = 20_000;

    private final Compiled c;
    private final boolean[] pinned;
    private final boolean[] closed;
    private boolean cutShort;

    private int[] body = new int[0];
    private int[] bodies = new int[0];
    private int count;
    private int sets;
    private boolean idle;
    private long[][] linked = new long[0][];
    private long[][] along = new long[0][];

    /**
     * Makes a list for a device.
     *
     * @param pinned the parts that never move
     * @param closed the nodes that are never released
     */
    Groups(Compiled c, boolean[] pinned, boolean[] closed) {
        this.c = c;
        this.pinned = pinned;
        this.closed = closed;
    }

    /** Returns whether the parts of a node can only move together while it is unreleased. */
    private boolean isRigid(int j) {
        return !c.slack[j] && (!c.gives[j] || closed[j]);
    }

    /** Returns whether any position so far allowed more moves than were listed. */
    boolean cutShort() {
        return cutShort;
    }

    /**
     * Lists the moves that are allowed.
     *
     * @param at the position
     * @param idle whether to list also moves that change nothing, as a requirement may demand one
     * @return the parts of each move, rising
     */
    List<int[]> moves(Position at, boolean idle) {
        findBodies(at);
        link(at.released);
        dropBlocked(at);
        List<int[]> moves = new ArrayList<>();
        sets = 0;
        this.idle = idle;
        for (int first = 0; first < count; first++) {
            if (along[first].length > 0) {
                long[] set = new long[Bits.words(count)];
                Bits.set(set, first);
                long[] barred = new long[Bits.words(count)];
                for (int k = 0; k < first; k++) {
                    Bits.set(barred, k);
                }
                grow(set, barred, at, moves);
            }
        }
        return moves;
    }

    private void findBodies(Position at) {
        int[] root = new int[c.parts];
        for (int p = 0; p < c.parts; p++) {
            root[p] = p;
        }
        for (int j = 0; j < c.nodes; j++) {
            if (isRigid(j) && !Bits.get(at.released, j)) {
                int first = root(root, c.holds[j][0]);
                for (int p : c.holds[j]) {
                    int other = root(root, p);
                    root[Math.max(first, other)] = Math.min(first, other);
                    first = Math.min(first, other);
                }
            }
        }
        boolean[] held = new boolean[c.parts];
        for (int p = 0; p < c.parts; p++) {
            int r = root(root, p);
            root[p] = r;
            if (pinned[p] || c.partClass[p] != c.partClass[r]) {
                held[r] = true;
            }
        }
        body = new int[c.parts];
        bodies = new int[c.parts];
        count = 0;
        for (int p = 0; p < c.parts; p++) {
            if (held[root[p]]) {
                body[p] = -1;
            } else if (root[p] == p) {
                bodies[count] = p;
                body[p] = count++;
            } else {
                body[p] = body[root[p]];
            }
        }
    }

    private static int root(int[] root, int part) {
        int p = part;
        while (root[p] != p) {
            p = root[p];
        }
        return p;
    }

    private void link(long[] released) {
        linked = new long[count][Bits.words(count)];
        for (int j = 0; j < c.nodes; j++) {
            if (isRigid(j) || Bits.get(released, j)) {
                continue;
            }
            for (int p : c.holds[j]) {
                for (int q : c.holds[j]) {
                    if (body[p] >= 0
                            && body[q] >= 0
                            && body[p] != body[q]
                            && c.partClass[p] == c.partClass[q]) {
                        Bits.set(linked[body[p]], body[q]);
                    }
                }
            }
        }
    }

    /** Finds for each body the bodies that must come along, and drops those whose covers cannot. */
    private void dropBlocked(Position at) {
        along = new long[count][];
        for (int b = 0; b < count; b++) {
            along[b] = new long[Bits.words(count)];
        }
        for (int p = 0; p < c.parts; p++) {
            int b = body[p];
            if (b < 0) {
                continue;
            }
            for (int u : c.partUnder[p]) {
                if (at.place[u] != at.place[p] || body[u] == b || along[b].length == 0) {
                    continue;
                }
                if (body[u] < 0 || c.partClass[u] != c.partClass[p]) {
                    along[b] = new long[0];
                } else {
                    Bits.set(along[b], body[u]);
                }
            }
        }
    }

    private void grow(long[] set, long[] barred, Position at, List<int[]> moves) {
        if (moves.size() >= MOST || ++sets > MOST_SETS) {
            cutShort = true;
            return;
        }
        emit(set, at, moves);
        long[] nowBarred = barred.clone();
        for (int next = frontier(set, nowBarred, 0);
                next >= 0;
                next = frontier(set, nowBarred, next + 1)) {
            long[] larger = set.clone();
            Bits.set(larger, next);
            grow(larger, nowBarred, at, moves);
            Bits.set(nowBarred, next);
        }
    }

    private int frontier(long[] set, long[] barred, int from) {
        for (int b = from; b < count; b++) {
            if (Bits.get(set, b) || Bits.get(barred, b) || along[b].length == 0) {
                continue;
            }
            for (int w = 0; w < set.length; w++) {
                if ((linked[b][w] & set[w]) != 0) {
                    return b;
                }
            }
        }
        return -1;
    }

    private void emit(long[] set, Position at, List<int[]> moves) {
        for (int b = Bits.next(set, 0); b >= 0; b = Bits.next(set, b + 1)) {
            if (!Bits.subset(along[b], set)) {
                return;
            }
        }
        int[] parts = new int[c.parts];
        int n = 0;
        for (int p = 0; p < c.parts; p++) {
            if (body[p] >= 0 && Bits.get(set, body[p])) {
                parts[n++] = p;
            }
        }
        int[] move = Arrays.copyOf(parts, n);
        if (idle || changes(move, at)) {
            moves.add(move);
        }
    }

    /** A move of all that shares a place changes nothing, unless a joint lets go. */
    private boolean changes(int[] move, Position at) {
        if (c.moving.given(move, at.released).length > 0) {
            return true;
        }
        char place = at.place[move[0]];
        for (int p : move) {
            if (at.place[p] != place) {
                return true;
            }
        }
        int mates = 0;
        for (char other : at.place) {
            mates += other == place ? 1 : 0;
        }
        return mates != move.length;
    }
}
