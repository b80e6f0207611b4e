package reseat.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import reseat.plan.Plan.Ended;

/**
 * Puts items in order under rules, some of which leave a choice.
 *
 * <p>A branch and bound over the choices. In each node the pairs decided so far make a sequential
 * ordering problem, which bounds all orders of the node. If its order breaks no rule, it is the
 * best of the node; else the node is split along one broken rule: one part for each of its pairs,
 * in which that pair holds and those before it do not. Rules that are too many to be listed are
 * asked for when an order breaks them. Exact at exponential cost; deterministic under a limit on
 * expansions.
 */
public final class RuledOrder {

    /**
     * What came out.
     *
     * @param order the items in order; empty if none was found
     * @param cost what the order costs
     * @param lowerBound no order that keeps the rules costs less
     * @param ended why the search ended
     * @param circle rules that close a circle by themselves, if that is why there is no order
     */
    public record Outcome(
            List<Integer> order, long cost, long lowerBound, Ended ended, List<Rule> circle) {

        public Outcome {
            order = List.copyOf(order);
            circle = List.copyOf(circle);
        }

        /** Tells whether there is no order at all. */
        public boolean impossible() {
            return ended == Ended.PROVED && cost == Long.MAX_VALUE;
        }
    }

    private static final long FIRST_EFFORT = 5_000;

    /** Making a node ready takes as long as one expansion for each so many triples of items. */
    private static final double ITEMS_PER_EFFORT = 1_000;

    /** So many nodes may be looked at without effort to find any order at all. */
    private static final int MOST_DIVES = 500;

    private final Setups setups;
    private final List<Rule> rules;
    private final Function<int[], List<Rule>> broken;
    private final Limits limits;
    private final List<Node> open = new ArrayList<>();
    private int @Nullable [] best;
    private long cost = Long.MAX_VALUE;

    /** A part of all orders: pairs that hold in it, closed, and the least that one of it costs. */
    private record Node(BitRows before, long bound, int tries) {}

    private RuledOrder(
            Setups setups, List<Rule> rules, Function<int[], List<Rule>> broken, Limits limits) {
        this.setups = setups;
        this.rules = new ArrayList<>(rules);
        this.broken = broken;
        this.limits = limits;
    }

    /**
     * Finds a cheap order.
     *
     * @param setups the items
     * @param rules what an order must keep
     * @param broken finds further rules that an order breaks; none if it is sound. Each must have a
     *     pair that holds in some sound order
     * @param known an order to beat; not looked at if it breaks a rule
     * @param limits when to stop
     */
    public static Outcome find(
            Setups setups,
            List<Rule> rules,
            Function<int[], List<Rule>> broken,
            List<Integer> known,
            Limits limits) {
        return new RuledOrder(setups, rules, broken, limits).run(known);
    }

    private Outcome run(List<Integer> known) {
        BitRows before = new BitRows(setups.items(), setups.items());
        for (Rule rule : rules) {
            if (rule.oneOf().size() == 1) {
                before.set(rule.oneOf().get(0).earlier(), rule.oneOf().get(0).later());
            }
        }
        List<Integer> circle = before.cycle();
        if (!circle.isEmpty()) {
            return new Outcome(
                    List.of(), Long.MAX_VALUE, Long.MAX_VALUE, Ended.PROVED, along(circle));
        }
        before.close();
        int[] given = known.stream().mapToInt(Integer::intValue).toArray();
        if (given.length == setups.items() && firstBroken(given) == null) {
            offer(given);
        }
        open.add(new Node(before, 0, 0));
        int dives = 0;
        while (!open.isEmpty()
                && bound() < cost
                && (!limits.over() || (best == null && dives++ < MOST_DIVES))) {
            look(open.remove(next()));
        }
        long bound = Math.min(cost, bound());
        Ended ended = bound == cost ? Ended.PROVED : limits.ended();
        return new Outcome(
                best == null ? List.of() : Arrays.stream(best).boxed().toList(),
                cost,
                bound,
                ended == null ? Ended.EXPANSIONS : ended,
                List.of());
    }

    private void look(Node node) {
        if (!decided(node.before)) {
            return;
        }
        Limits part = limits.part(FIRST_EFFORT << Math.min(30, 2 * node.tries));
        OrderResult result = OrderSolver.solve(setups.problem(node.before), part);
        double items = setups.items();
        limits.spend(1 + part.expansions() + (long) (items * items * items / ITEMS_PER_EFFORT));
        int[] order = setups.order(result, node.before);
        long bound = Math.max(node.bound, result.lowerBound());
        Rule rule = firstBroken(order);
        if (rule == null) {
            offer(order);
            if (bound < cost) {
                open.add(new Node(node.before, bound, node.tries + 1));
            }
        } else {
            split(node, bound, rule);
        }
    }

    private void split(Node node, long bound, Rule rule) {
        List<Node> parts = new ArrayList<>();
        BitRows rest = node.before;
        for (Pair pair : rule.oneOf()) {
            BitRows with = rest.copy();
            if (with.join(pair.earlier(), pair.later())) {
                parts.add(new Node(with, bound, 0));
            }
            rest = rest.copy();
            if (!rest.join(pair.later(), pair.earlier())) {
                break;
            }
        }
        Collections.reverse(parts);
        open.addAll(parts);
    }

    /** Decides what rules leave no choice; false if one of them cannot be kept. */
    private boolean decided(BitRows before) {
        boolean more = true;
        while (more) {
            more = false;
            for (Rule rule : rules) {
                Pair only = null;
                int left = 0;
                for (Pair pair : rule.oneOf()) {
                    if (before.has(pair.earlier(), pair.later())) {
                        left = 2;
                        break;
                    }
                    if (!before.has(pair.later(), pair.earlier())) {
                        left++;
                        only = pair;
                    }
                }
                if (left == 0) {
                    return false;
                }
                if (left == 1 && only != null) {
                    before.join(only.earlier(), only.later());
                    more = true;
                }
            }
        }
        return true;
    }

    private @Nullable Rule firstBroken(int[] order) {
        int[] place = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            place[order[k]] = k;
        }
        for (Rule rule : rules) {
            if (rule.oneOf().stream().noneMatch(p -> place[p.earlier()] < place[p.later()])) {
                return rule;
            }
        }
        List<Rule> more = broken.apply(order);
        rules.addAll(more);
        return more.isEmpty() ? null : more.get(0);
    }

    private void offer(int[] order) {
        long found = setups.costOf(order);
        if (found < cost) {
            cost = found;
            best = order;
        }
    }

    /** Takes the last node while there is no order, so that there is one soon; then the lowest. */
    private int next() {
        int next = open.size() - 1;
        if (best != null) {
            for (int k = next - 1; k >= 0; k--) {
                if (open.get(k).bound < open.get(next).bound) {
                    next = k;
                }
            }
        }
        return next;
    }

    private long bound() {
        return open.stream().mapToLong(Node::bound).min().orElse(Long.MAX_VALUE);
    }

    private List<Rule> along(List<Integer> circle) {
        List<Rule> along = new ArrayList<>();
        for (int k = 0; k < circle.size(); k++) {
            Pair pair = new Pair(circle.get(k), circle.get((k + 1) % circle.size()));
            rules.stream()
                    .filter(rule -> rule.oneOf().equals(List.of(pair)))
                    .findFirst()
                    .ifPresent(along::add);
        }
        return along;
    }
}
