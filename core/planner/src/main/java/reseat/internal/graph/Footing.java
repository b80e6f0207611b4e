package reseat.internal.graph;

import java.util.Arrays;
import java.util.List;

/**
 * A state and its assumptions: released nodes, places, cut supplies, works never done, and which
 * parts one move could ever take together.
 */
final class Footing {

    private final Compiled c;

    /** Nodes assumed never to be released, parts assumed never to be moved. */
    final boolean[] closedNode;

    final boolean[] pinned;

    /** Whether one move could take all parts that a node holds. */
    final boolean[] together;

    final int[] component;

    /** For each part, the supplies that must be cut before it is moved in whatever company. */
    final long[] moveNeeds;

    /** The moves of parts together that are still to be made. */
    final AsOne asOne;

    long[] released = new long[0];
    char[] place = new char[0];
    long cut;

    Footing(Compiled c, int reach) {
        this.c = c;
        closedNode = new boolean[c.nodes];
        for (int j = 0; j < c.nodes; j++) {
            closedNode[j] = (c.options[j].length == 0 && !c.gives[j]) || j == reach;
        }
        pinned = c.stuck.clone();
        together = new boolean[c.nodes];
        component = new int[c.parts];
        moveNeeds = new long[c.parts];
        asOne = new AsOne(c);
    }

    void stand(long[] releasedNodes, char[] placeOf, List<int[]> moves) {
        released = releasedNodes;
        place = placeOf;
        cut = c.cut(releasedNodes);
        asOne.stand(releasedNodes, moves);
        components();
        moveNeeds();
        for (int j = 0; j < c.nodes; j++) {
            together[j] = !isReleased(j) && allTogether(c.holds[j]);
        }
    }

    boolean isReleased(int node) {
        return Bits.get(released, node);
    }

    boolean samePlace(int p, int q) {
        return place[p] == place[q];
    }

    /** Parts of one move agree on tool and posture and hang together. */
    boolean mayGoTogether(int p, int x) {
        return !pinned[x] && component[x] == component[p];
    }

    private boolean allTogether(int[] parts) {
        for (int x : parts) {
            if (pinned[x] || component[x] != component[parts[0]]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Parts that a move could ever take together: linked by unreleased joints over parts of one
     * tool and posture.
     */
    private void components() {
        for (int p = 0; p < c.parts; p++) {
            component[p] = p;
        }
        for (int j = 0; j < c.nodes; j++) {
            if (!isReleased(j)) {
                int[] holds = c.holds[j];
                for (int a = 0; a < holds.length; a++) {
                    for (int b = 0; b < a; b++) {
                        link(holds[a], holds[b]);
                    }
                }
            }
        }
        for (int p = 0; p < c.parts; p++) {
            component[p] = root(p);
        }
    }

    private void moveNeeds() {
        long[] exempt = new long[c.parts];
        for (int p = 0; p < c.parts; p++) {
            exempt[component[p]] |= c.moving.onTheWay(p);
        }
        for (int p = 0; p < c.parts; p++) {
            moveNeeds[p] = c.moving.needsWhateverGoesAlong(p, exempt[component[p]]);
        }
    }

    private void link(int p, int q) {
        if (!pinned[p] && !pinned[q] && c.partClass[p] == c.partClass[q]) {
            int a = root(p);
            int b = root(q);
            component[Math.max(a, b)] = Math.min(a, b);
        }
    }

    private int root(int part) {
        int p = part;
        while (component[p] != p) {
            p = component[p];
        }
        return p;
    }

    static void fill(long[] set, long[] all, boolean withAll) {
        if (withAll) {
            System.arraycopy(all, 0, set, 0, all.length);
        } else {
            Arrays.fill(set, 0);
        }
    }
}
