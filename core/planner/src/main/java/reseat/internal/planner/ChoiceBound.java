package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import reseat.internal.graph.Bits;
import reseat.internal.graph.Compiled;
import reseat.internal.graph.Landmarks;

/**
 * What works cost at least that not every plan needs: of each choice that the needs leave open one
 * side is done, so choices cost the cheaper side each, where no release is counted for two of them
 * and no move can pay for two. The most expensive choices come first.
 */
final class ChoiceBound {

    private final Compiled c;
    private final Landmarks landmarks;
    private final MoveBound moves;

    // an array: created here, passed on, never modified
    @SuppressWarnings("ArrayRecordComponent")
    private record Priced(long[][] choice, long ms) {}

    ChoiceBound(Compiled c, Landmarks landmarks, MoveBound moves) {
        this.c = c;
        this.landmarks = landmarks;
        this.moves = moves;
    }

    /**
     * Bounds the works besides some needs.
     *
     * @param needs the needs, as the landmarks computed them last
     * @param debts the moves counted for them
     * @return milliseconds
     */
    long of(long[] needs, List<MoveBound.Debt> debts) {
        List<Priced> choices = new ArrayList<>();
        for (long[][] choice : landmarks.choices(needs)) {
            long ms = Math.min(roughly(choice[0]), roughly(choice[1]));
            if (ms > 0) {
                choices.add(new Priced(choice, ms));
            }
        }
        choices.sort(Comparator.comparingLong(priced -> -priced.ms));
        long[] counted = needs.clone();
        List<MoveBound.Debt> owed = new ArrayList<>(debts);
        long sum = 0;
        for (Priced priced : choices) {
            List<MoveBound.Debt> one = owed(priced.choice[0], counted, owed);
            long first = releases(priced.choice[0], counted) + moves.sum(one);
            if (first == 0) {
                continue;
            }
            List<MoveBound.Debt> other = owed(priced.choice[1], counted, owed);
            long second = releases(priced.choice[1], counted) + moves.sum(other);
            if (second > 0) {
                sum += Math.min(first, second);
                Bits.addAll(counted, priced.choice[0]);
                Bits.addAll(counted, priced.choice[1]);
                owed.addAll(one);
                owed.addAll(other);
            }
        }
        return sum;
    }

    private long roughly(long[] works) {
        long sum = 0;
        for (int work = Bits.next(works, 0); work >= 0; work = Bits.next(works, work + 1)) {
            sum += work < c.nodes ? c.minCost[work] : c.moveCost(work - c.nodes);
        }
        return sum;
    }

    private long releases(long[] works, long[] counted) {
        long sum = 0;
        for (int j = Bits.next(works, 0); j >= 0 && j < c.nodes; j = Bits.next(works, j + 1)) {
            if (!Bits.get(counted, j)) {
                sum += c.minCost[j];
            }
        }
        return sum;
    }

    private List<MoveBound.Debt> owed(long[] works, long[] counted, List<MoveBound.Debt> already) {
        List<MoveBound.Debt> owed = new ArrayList<>();
        for (int work = Bits.next(works, c.nodes); work >= 0; work = Bits.next(works, work + 1)) {
            if (!Bits.get(counted, work)) {
                MoveBound.Debt debt = moves.debt(work - c.nodes);
                if (moves.paidApart(debt, already) && moves.paidApart(debt, owed)) {
                    owed.add(debt);
                }
            }
        }
        return owed;
    }
}
