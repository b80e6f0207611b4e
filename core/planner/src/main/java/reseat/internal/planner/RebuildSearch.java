package reseat.internal.planner;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.SetupTable;

/**
 * Looks for the order of a rebuild with the least set-ups over the sets of items that are done,
 * which decide what may be done next and whether a part hangs by something while the device is
 * turned. What costs no set-up and closes no way is done at once. Exact; the ordering solver knows
 * no turning open, but proves more where there are many items.
 */
public final class RebuildSearch {

    private final RebuildItems items;
    private final SetupTable table;
    private final Hangs hangs;
    private final List<Hanging> hangings;
    private final List<BitSet> before = new ArrayList<>();
    private final List<Rule> choices = new ArrayList<>();
    private final List<Stance> stances = new ArrayList<>();
    private final int[] stanceOf;
    private final Stance start;

    /** What is in hand and how the device lies. */
    private record Stance(String tool, String posture) {}

    /**
     * What came out.
     *
     * @param order the items in order; empty if none was found
     * @param setupMs its set-ups, in milliseconds
     * @param boundMs no order has less
     * @param stopped whether it was stopped before it knew whether there is an order
     */
    public record Outcome(List<Integer> order, long setupMs, long boundMs, boolean stopped) {
        public Outcome {
            order = List.copyOf(order);
        }
    }

    /** What is done, how the device lies, and how that came. */
    private record Node(
            BitSet done,
            int stance,
            long cost,
            long least,
            int number,
            List<Integer> step,
            @Nullable Node from) {}

    private record Key(BitSet done, int stance) {}

    /**
     * Prepares a search.
     *
     * @param wanted what has to be kept besides the rules
     * @param posture how the device lies at first; the hand is bare
     */
    public RebuildSearch(
            RebuildItems items, List<Rule> wanted, ActOrderRules rules, String posture) {
        this.items = items;
        this.table = items.device().setup();
        this.hangs = new Hangs(items);
        this.hangings = rules.hangings();
        this.start = new Stance(items.device().hand(), posture);
        this.stanceOf = new int[items.size()];
        stances.add(start);
        for (int at = 0; at < items.size(); at++) {
            before.add(new BitSet());
            stanceOf[at] = items.get(at).tool().isPresent() ? stance(items.get(at)) : -1;
        }
        List<Rule> all = new ArrayList<>(rules.rules());
        all.addAll(wanted);
        for (Rule rule : all) {
            if (rule.oneOf().size() > 1) {
                choices.add(rule);
            } else {
                before.get(rule.oneOf().get(0).later()).set(rule.oneOf().get(0).earlier());
            }
        }
    }

    private int stance(Undoing item) {
        Stance stance = new Stance(item.tool().orElseThrow(), item.posture().orElseThrow());
        if (!stances.contains(stance)) {
            stances.add(stance);
        }
        return stances.indexOf(stance);
    }

    /** Searches until so many nodes have been expanded. */
    public Outcome find(long expansions) {
        PriorityQueue<Node> open =
                new PriorityQueue<>(
                        Comparator.comparingLong(Node::least)
                                .thenComparing(node -> -node.done.cardinality())
                                .thenComparing(Node::number));
        Map<Key, Long> best = new HashMap<>();
        int number = 0;
        open.add(closed(new BitSet(), 0, 0, number++, null));
        long expanded = 0;
        while (!open.isEmpty()) {
            Node node = open.remove();
            if (node.done.cardinality() == items.size()) {
                return new Outcome(order(node), node.cost, node.cost, false);
            }
            if (best.getOrDefault(new Key(node.done, node.stance), Long.MAX_VALUE) < node.cost) {
                continue;
            }
            if (expanded++ >= expansions) {
                return new Outcome(List.of(), Long.MAX_VALUE, node.least, true);
            }
            boolean aside = hangs.at(node.done);
            for (int item : next(node)) {
                long cost = node.cost + setup(node.stance, stanceOf[item], aside);
                BitSet done = (BitSet) node.done.clone();
                done.set(item);
                Node child = closed(done, stanceOf[item], cost, number++, node, item);
                if (best.merge(new Key(child.done, child.stance), cost, Math::min) == cost) {
                    open.add(child);
                }
            }
        }
        return new Outcome(List.of(), Long.MAX_VALUE, 0, false);
    }

    private long setup(int from, int to, boolean aside) {
        Stance one = stances.get(from);
        Stance other = stances.get(to);
        return table.setupMs(one.tool, one.posture, other.tool, other.posture, aside);
    }

    /** Does at once what costs nothing and closes no way. */
    private Node closed(
            BitSet done, int stance, long cost, int number, @Nullable Node from, int... first) {
        List<Integer> step = new ArrayList<>();
        for (int item : first) {
            step.add(item);
        }
        boolean more = true;
        while (more) {
            more = false;
            for (int item = done.nextClearBit(0); item < items.size(); ) {
                boolean free = stanceOf[item] < 0 || stanceOf[item] == stance;
                if (free && mayCome(item, done) && closesNoWay(item, done)) {
                    done.set(item);
                    step.add(item);
                    more = true;
                }
                item = done.nextClearBit(item + 1);
            }
        }
        return new Node(done, stance, cost, cost + least(done, stance), number, step, from);
    }

    /** One item for each set-up after which nothing is lost, and every other that may come. */
    private List<Integer> next(Node node) {
        List<Integer> next = new ArrayList<>();
        Set<Integer> seen = new LinkedHashSet<>();
        for (int item = node.done.nextClearBit(0);
                item < items.size();
                item = node.done.nextClearBit(item + 1)) {
            if (mayCome(item, node.done)) {
                boolean harmless = stanceOf[item] >= 0 && closesNoWay(item, node.done);
                if (!harmless || seen.add(stanceOf[item])) {
                    next.add(item);
                }
            }
        }
        return next;
    }

    private boolean mayCome(int item, BitSet done) {
        BitSet needed = before.get(item);
        for (int at = needed.nextSetBit(0); at >= 0; at = needed.nextSetBit(at + 1)) {
            if (!done.get(at)) {
                return false;
            }
        }
        for (Rule rule : choices) {
            boolean open = false;
            for (Pair pair : rule.oneOf()) {
                open |= isOpen(pair, item, done);
            }
            if (!open) {
                return false;
            }
        }
        return hangings.stream().allMatch(each -> each.move() != item || each.hangs(done::get));
    }

    /** Whether a pair may still hold, or does, when an item comes next. */
    private static boolean isOpen(Pair pair, int item, BitSet done) {
        boolean laterDone = pair.later() == item || done.get(pair.later());
        return done.get(pair.earlier()) || !laterDone;
    }

    private boolean closesNoWay(int item, BitSet done) {
        for (Rule rule : choices) {
            boolean kept = false;
            boolean closes = false;
            for (Pair pair : rule.oneOf()) {
                boolean earlierDone = done.get(pair.earlier());
                kept |= earlierDone && !done.get(pair.later());
                closes |= !earlierDone && pair.later() == item;
            }
            if (closes && !kept) {
                return false;
            }
        }
        return !hangs.begins(item, done);
    }

    /** Each tool and posture that is still needed has to be changed to at least once. */
    private long least(BitSet done, int stance) {
        Set<String> tools = new LinkedHashSet<>();
        Set<String> postures = new LinkedHashSet<>();
        for (int item = done.nextClearBit(0);
                item < items.size();
                item = done.nextClearBit(item + 1)) {
            if (stanceOf[item] >= 0) {
                tools.add(stances.get(stanceOf[item]).tool);
                postures.add(stances.get(stanceOf[item]).posture);
            }
        }
        String tool = stances.get(stance).tool;
        String posture = stances.get(stance).posture;
        long least = 0;
        for (String to : tools) {
            least += to.equals(tool) ? 0 : cheapest(tools, tool, to, table::toolChangeMs);
        }
        for (String to : postures) {
            least +=
                    to.equals(posture)
                            ? 0
                            : cheapest(postures, posture, to, table::postureChangeMs);
        }
        return least;
    }

    private interface Change {
        long ms(String from, String to);
    }

    private static long cheapest(Set<String> others, String here, String to, Change change) {
        long least = change.ms(here, to);
        for (String from : others) {
            if (!from.equals(to)) {
                least = Math.min(least, change.ms(from, to));
            }
        }
        return least;
    }

    private static List<Integer> order(Node last) {
        List<List<Integer>> steps = new ArrayList<>();
        for (Optional<Node> node = Optional.of(last);
                node.isPresent();
                node = Optional.ofNullable(node.get().from)) {
            steps.add(node.get().step);
        }
        Collections.reverse(steps);
        return steps.stream().flatMap(List::stream).toList();
    }
}
