package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;
import reseat.internal.graph.Need;

/**
 * What moves cost at least. Every needed move of a part is a debt: some move must take that part,
 * and where the part lies on another that it must leave, some move must take it and not the other.
 * Debts of which no two can be paid by one move each cost their own part.
 */
final class MoveBound {

    private static final int NONE = -1;

    /**
     * A part that has to leave another one beneath it.
     *
     * @param below the other part
     * @param node the node whose release needs it, or {@link #NONE} if the goal does
     */
    private record Leave(int below, int node) {}

    /**
     * A move that is still to be made.
     *
     * @param part a part that it takes
     * @param below a part that it must not take, or {@link #NONE}
     * @param company the parts that it takes at most
     * @param exactly whether it takes all of these
     * @param ms what it costs at least, in milliseconds
     */
    // an array: created here, passed on, never modified
    @SuppressWarnings("ArrayRecordComponent")
    record Debt(int part, int below, boolean[] company, boolean exactly, long ms) {}

    private final Compiled c;
    private final Landmarks landmarks;
    private List<int[]> asOne = List.of();
    private final List<List<Leave>> leaves = new ArrayList<>();

    MoveBound(Compiled c, Need need, Landmarks landmarks) {
        this.c = c;
        this.landmarks = landmarks;
        for (int p = 0; p < c.parts; p++) {
            leaves.add(new ArrayList<>());
        }
        for (int[] pair : need.apart()) {
            leave(pair[0], pair[1], NONE);
            leave(pair[1], pair[0], NONE);
        }
        for (int j = 0; j < c.nodes; j++) {
            // what gives may be released beneath its covers by a move
            for (int u : c.gives[j] ? new int[0] : c.under[j]) {
                leave(u, c.site[j], j);
            }
        }
    }

    private void leave(int part, int below, int node) {
        if (Arrays.stream(c.partUnder[below]).anyMatch(u -> u == part)) {
            leaves.get(part).add(new Leave(below, node));
        }
    }

    /** Sets which moves of parts together are still to be made. */
    void owe(List<int[]> moves) {
        asOne = moves;
    }

    /**
     * Finds debts among some needs that no move pays two of, the most expensive first.
     *
     * @param needs the needs, as the landmarks computed them last
     * @param place place of every part
     */
    List<Debt> debts(long[] needs, char[] place) {
        List<Integer> parts = new ArrayList<>();
        for (int p = 0; p < c.parts; p++) {
            if (Bits.get(needs, landmarks.moveBit(p))) {
                parts.add(p);
            }
        }
        parts.sort((a, b) -> Long.compare(c.moveCost(b), c.moveCost(a)));
        List<Debt> apart = new ArrayList<>();
        asOne.forEach(move -> apart.add(exactly(move)));
        for (int p : parts) {
            int below = below(p, needs, place);
            Debt debt = new Debt(p, below, landmarks.company(p, below), false, c.moveCost(p));
            if (paidApart(debt, apart)) {
                apart.add(debt);
            }
        }
        return apart;
    }

    /** Returns what debts cost of which no move pays two, in milliseconds. */
    long sum(List<Debt> debts) {
        long sum = 0;
        for (Debt debt : debts) {
            sum += debt.ms;
        }
        return sum;
    }

    /** Returns the debt of a part that a plan moves for whatever reason. */
    Debt debt(int part) {
        return new Debt(part, NONE, landmarks.company(part), false, c.moveCost(part));
    }

    private Debt exactly(int[] move) {
        boolean[] company = new boolean[c.parts];
        for (int p : move) {
            company[p] = true;
        }
        return new Debt(move[0], NONE, company, true, c.moveCost(move));
    }

    /**
     * Returns whether no move pays a debt and one of some others.
     *
     * @param debt a debt that may be paid by any move, not by an exact one alone
     */
    boolean paidApart(Debt debt, List<Debt> others) {
        for (Debt other : others) {
            if (!conflict(debt, other)) {
                return false;
            }
        }
        return true;
    }

    /**
     * A cover can only leave what it lies on by a move of its own: what lies beneath takes its
     * covers along.
     */
    private int below(int part, long[] needs, char[] place) {
        for (Leave leave : leaves.get(part)) {
            if (place[part] == place[leave.below]
                    && (leave.node == NONE || Bits.get(needs, leave.node))) {
                return leave.below;
            }
        }
        return NONE;
    }

    private boolean conflict(Debt p, Debt q) {
        if (q.exactly) {
            return !pays(q, p);
        }
        return !p.company[q.part]
                || !q.company[p.part]
                || (p.below == NONE && q.below == NONE && inOrder(p.part, q.part));
    }

    private static boolean pays(Debt move, Debt other) {
        return move.company[other.part] && (other.below == NONE || !move.company[other.below]);
    }

    /** Where one must have moved before the other can, their first moves differ. */
    private boolean inOrder(int p, int q) {
        return Bits.get(landmarks.needsOfMove(p), landmarks.moveBit(q))
                || Bits.get(landmarks.needsOfMove(q), landmarks.moveBit(p));
    }
}
