package reseat.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import reseat.internal.order.Limits;
import reseat.internal.order.Rule;
import reseat.internal.order.RuledOrder;
import reseat.internal.order.Setups;
import reseat.internal.planner.ActOrderRules;
import reseat.internal.planner.AsideCost;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Prepare;
import reseat.plan.Plan;
import reseat.plan.Watch;
import reseat.simulate.Simulator;
import reseat.simulate.Verdict;

/**
 * Puts fixed acts into the valid order with the least set-ups: the acts of a plan, a written
 * procedure, a rebuild.
 *
 * <p>The answer is exact: all orders that the device allows and that keep the caller's pairs are
 * compared, except that moves of the same part keep the order they are given in, and the lower
 * bound holds for all of these. What a teardown costs besides for parts laid aside depends on the
 * whole order: it is charged, but compared between the given order and the best other one alone, so
 * there a gap may stay. Prepare acts that are not among the items count as done. The simulator
 * judges an order before it is handed out. All valid orders leave the unit in the same state, so
 * what a plan reaches is reached by any of them.
 *
 * <p>Stateless; may be shared between threads. With a limit on expansions the same request gives
 * the same answer. An order is never dearer than the given one where that is valid. The time grows
 * exponentially in the worst case.
 */
public final class ActOrder {

    private ActOrder() {}

    /**
     * Finds the order with the least set-ups.
     *
     * @param request what to put in order
     * @param watch hears how it goes and may cancel
     * @return an order, or why there is none
     * @throws IllegalArgumentException if the state is one that no unit of the device can be in
     * @throws IllegalStateException if the simulator refuses the order that was found
     */
    public static OrderAnswer find(OrderRequest request, Watch watch) {
        OrderAnswer answer = unjudged(request, watch);
        if (answer instanceof OrderAnswer.Found found) {
            requireValid(request, found.order());
        }
        return answer;
    }

    /**
     * Verifies an order with the simulator.
     *
     * @throws IllegalStateException if the simulator refuses it
     */
    static void requireValid(OrderRequest request, List<Integer> order) {
        request.unit().ifPresent(unit -> requireValid(unit, request.items(), order));
    }

    /** Finds an order; the caller must have it judged by the simulator. */
    static OrderAnswer unjudged(OrderRequest request, Watch watch) {
        List<OrderItem> items = request.items();
        List<Rule> rules = new ArrayList<>();
        for (OrderRequest.Before pair : request.before()) {
            rules.add(ActOrderRules.asked(pair.earlier(), pair.later()));
        }
        ActOrderRules own = ActOrderRules.NONE;
        if (request.unit().isPresent()) {
            OrderRequest.Unit unit = request.unit().get();
            requirePossible(unit);
            own = ActOrderRules.of(unit.device(), unit.state(), acts(items), unit.rebuild());
            if (!own.faults().isEmpty()) {
                return new OrderAnswer.Impossible(own.faults());
            }
            rules.addAll(own.rules());
        }
        List<Integer> given = new ArrayList<>();
        for (int at = 0; at < items.size(); at++) {
            given.add(at);
        }
        RuledOrder.Outcome outcome =
                RuledOrder.find(
                        setups(request),
                        rules,
                        own::brokenBy,
                        given,
                        new Limits(request.effort(), watch));
        if (outcome.impossible()) {
            return new OrderAnswer.Impossible(reasons(items, outcome.circle()));
        }
        if (outcome.order().isEmpty() && !items.isEmpty()) {
            return new OrderAnswer.Unfinished(outcome.ended(), outcome.lowerBound());
        }
        OrderAnswer.Found found =
                new OrderAnswer.Found(
                        outcome.order(),
                        items.stream().mapToLong(OrderItem::ms).sum(),
                        outcome.cost(),
                        outcome.lowerBound(),
                        outcome.ended());
        return request.unit().isPresent() && !request.unit().get().rebuild()
                ? withAside(request, found, rules, own)
                : found;
    }

    /**
     * Adds to a teardown what depends on where parts lie meanwhile. The solver knows nothing of
     * that, so its bound stays a lower bound and its order may be dearer than the given one.
     */
    private static OrderAnswer withAside(
            OrderRequest request, OrderAnswer.Found found, List<Rule> rules, ActOrderRules own) {
        OrderRequest.Unit unit = request.unit().orElseThrow();
        List<OrderItem> items = request.items();
        AsideCost aside = new AsideCost(unit.device(), unit.state(), acts(items));
        List<Optional<String>> postures =
                items.stream().map(item -> item.stance().map(OrderItem.Stance::posture)).toList();
        String first = request.start().posture();
        List<Integer> order = found.order();
        long setupMs = found.setupMs() + aside.ms(order, postures, first);
        List<Integer> given = new ArrayList<>(order);
        Collections.sort(given);
        if (keeps(given, rules, own)) {
            long givenMs = setupMs(request, given) + aside.ms(given, postures, first);
            if (givenMs < setupMs) {
                setupMs = givenMs;
                order = given;
            }
        }
        long bound = Math.min(setupMs, found.lowerBoundMs() + aside.leastMs());
        Plan.Ended ended = found.ended();
        if (bound < setupMs && ended == Plan.Ended.PROVED) {
            ended = Plan.Ended.EXPANSIONS;
        }
        return new OrderAnswer.Found(
                order, found.workMs() + aside.letGoMs(), setupMs, bound, ended);
    }

    private static boolean keeps(List<Integer> order, List<Rule> rules, ActOrderRules own) {
        int[] place = new int[order.size()];
        for (int at = 0; at < place.length; at++) {
            place[order.get(at)] = at;
        }
        return rules.stream()
                        .allMatch(
                                rule ->
                                        rule.oneOf().stream()
                                                .anyMatch(
                                                        pair ->
                                                                place[pair.earlier()]
                                                                        < place[pair.later()]))
                && own.brokenBy(order.stream().mapToInt(Integer::intValue).toArray()).isEmpty();
    }

    private static long setupMs(OrderRequest request, List<Integer> order) {
        OrderItem.Stance at = request.start();
        long ms = 0;
        for (int item : order) {
            Optional<OrderItem.Stance> next = request.items().get(item).stance();
            if (next.isPresent()) {
                ms +=
                        request.setup()
                                .setupMs(
                                        at.tool(),
                                        at.posture(),
                                        next.get().tool(),
                                        next.get().posture());
                at = next.get();
            }
        }
        return ms;
    }

    private static Map<Integer, Act> acts(List<OrderItem> items) {
        Map<Integer, Act> acts = new LinkedHashMap<>();
        for (int at = 0; at < items.size(); at++) {
            int each = at;
            items.get(at).act().ifPresent(act -> acts.put(each, act));
        }
        return acts;
    }

    private static Setups setups(OrderRequest request) {
        List<OrderItem.Stance> kinds = new ArrayList<>(List.of(request.start()));
        int[] kindOf = new int[request.items().size()];
        for (int at = 0; at < kindOf.length; at++) {
            kindOf[at] =
                    request.items()
                            .get(at)
                            .stance()
                            .map(stance -> number(kinds, stance))
                            .orElse(-1);
        }
        int[][] costs = new int[kinds.size()][kinds.size()];
        for (int a = 0; a < costs.length; a++) {
            for (int b = 0; b < costs.length; b++) {
                OrderItem.Stance from = kinds.get(a);
                OrderItem.Stance to = kinds.get(b);
                costs[a][b] =
                        Math.toIntExact(
                                request.setup()
                                        .setupMs(
                                                from.tool(),
                                                from.posture(),
                                                to.tool(),
                                                to.posture()));
            }
        }
        return new Setups(kindOf, costs, 0);
    }

    private static int number(List<OrderItem.Stance> kinds, OrderItem.Stance stance) {
        if (!kinds.contains(stance)) {
            kinds.add(stance);
        }
        return kinds.indexOf(stance);
    }

    private static List<String> reasons(List<OrderItem> items, List<Rule> circle) {
        List<String> reasons = new ArrayList<>();
        for (Rule rule : circle) {
            reasons.add(
                    items.get(rule.oneOf().get(0).earlier()).id()
                            + " must come before "
                            + items.get(rule.oneOf().get(0).later()).id()
                            + ": "
                            + rule.why()
                            + ".");
        }
        return reasons.isEmpty()
                ? List.of("No order of these acts is allowed, although each by itself could be.")
                : reasons;
    }

    private static void requirePossible(OrderRequest.Unit unit) {
        List<String> faults = Simulator.faultsOf(unit.device(), unit.state());
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", faults));
        }
    }

    private static void requireValid(
            OrderRequest.Unit unit, List<OrderItem> items, List<Integer> order) {
        List<Act> acts = new ArrayList<>();
        for (int at : order) {
            items.get(at).act().ifPresent(acts::add);
        }
        if (unit.rebuild()) {
            Collections.reverse(acts);
        }
        Verdict verdict = Simulator.simulate(unit.device(), unit.state(), prepared(unit, acts));
        if (!verdict.allowed()) {
            throw new IllegalStateException(
                    "the solver and the simulator disagree, so there is no order: "
                            + String.join(" ", verdict.sentences()));
        }
    }

    /** Puts the prepare acts that are needed and not among the acts before them. */
    private static List<Act> prepared(OrderRequest.Unit unit, List<Act> acts) {
        Device device = unit.device();
        boolean inside = acts.stream().anyMatch(act -> !device.power().isOutside(act));
        Set<Act> all = new LinkedHashSet<>();
        for (Prepare prepare : device.prepares().values()) {
            if ((inside || !prepare.onlyInside())
                    && !unit.state().prepared().contains(prepare.id())) {
                all.add(new Act.Prepared(prepare.id()));
            }
        }
        acts.forEach(all::remove);
        List<Act> prepared = new ArrayList<>(all);
        prepared.addAll(acts);
        return prepared;
    }
}
