package reseat.internal.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;

/**
 * Lays beds as late as they may come without more set-ups: adhesive, grease and paste are fouled,
 * wiped off or dry out while they lie open (common practice, no source).
 */
public final class LateBeds {

    private final RebuildItems items;
    private final List<Rule> wanted;
    private final Hangs hangs;
    private final String posture;

    /**
     * Prepares the laying.
     *
     * @param wanted what the orders keep besides being a valid teardown backwards
     * @param posture how the device lies at first; the hand is bare
     */
    public LateBeds(RebuildItems items, List<Rule> wanted, String posture) {
        this.items = items;
        this.wanted = List.copyOf(wanted);
        this.hangs = new Hangs(items);
        this.posture = posture;
    }

    /** Returns the order with each bed, the last one first, at its latest place of equal cost. */
    public List<Integer> of(List<Integer> order) {
        List<Integer> best = new ArrayList<>(order);
        long cost = setupMs(best);
        for (int k = order.size() - 1; k >= 0; k--) {
            int bed = order.get(k);
            if (items.get(bed).kind().isUndoing()) {
                continue;
            }
            List<Rule> own = wanted.stream().filter(rule -> isAbout(rule, bed)).toList();
            List<Integer> tried = best;
            int from = best.indexOf(bed);
            for (int to = from + 1; to < order.size(); to++) {
                List<Integer> moved = new ArrayList<>(best);
                moved.remove(from);
                moved.add(to, bed);
                if (own.stream().allMatch(rule -> isKept(rule, moved)) && setupMs(moved) <= cost) {
                    tried = moved;
                }
            }
            best = tried;
        }
        return best;
    }

    /**
     * Returns the order with each bed that breaks what is wanted of it at the cheapest place where
     * it does not, the latest of them, if there is one. No other item moves.
     */
    public List<Integer> mended(List<Integer> order) {
        List<Integer> best = new ArrayList<>(order);
        for (int bed : order) {
            List<Rule> own = wanted.stream().filter(rule -> isAbout(rule, bed)).toList();
            List<Integer> now = best;
            if (items.get(bed).kind().isUndoing()
                    || own.stream().allMatch(rule -> isKept(rule, now))) {
                continue;
            }
            long least = Long.MAX_VALUE;
            for (int to = 0; to < order.size(); to++) {
                List<Integer> moved = new ArrayList<>(now);
                moved.remove((Integer) bed);
                moved.add(to, bed);
                if (own.stream().allMatch(rule -> isKept(rule, moved)) && setupMs(moved) <= least) {
                    least = setupMs(moved);
                    best = moved;
                }
            }
        }
        return best;
    }

    private static boolean isAbout(Rule rule, int item) {
        return rule.oneOf().stream().anyMatch(p -> p.earlier() == item || p.later() == item);
    }

    private static boolean isKept(Rule rule, List<Integer> order) {
        return rule.oneOf().stream().anyMatch(pair -> isKept(pair, order));
    }

    private static boolean isKept(Pair pair, List<Integer> order) {
        return order.indexOf(pair.earlier()) < order.indexOf(pair.later());
    }

    private long setupMs(List<Integer> order) {
        String tool = items.device().hand();
        String lies = posture;
        BitSet done = new BitSet();
        long sum = 0;
        for (int at : order) {
            String nextTool = items.get(at).tool().orElse(tool);
            String next = items.get(at).posture().orElse(lies);
            boolean aside = !next.equals(lies) && hangs.at(done);
            sum += items.device().setup().setupMs(tool, lies, nextTool, next, aside);
            tool = nextTool;
            lies = next;
            done.set(at);
        }
        return sum;
    }
}
