package reseat.planner;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.internal.planner.ActOrderRules;
import reseat.internal.planner.HalfOpen;
import reseat.internal.planner.LateBeds;
import reseat.internal.planner.RebuildItems;
import reseat.internal.planner.RebuildSearch;
import reseat.internal.planner.RebuildTests;
import reseat.internal.planner.RebuildWants;
import reseat.internal.planner.RebuildWriter;
import reseat.internal.planner.Undoing;
import reseat.internal.planner.Want;
import reseat.model.Act;
import reseat.model.Device;
import reseat.plan.Effort;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.Watch;

/** Makes the rebuild of a plan: its acts, in the valid order with the least set-ups. */
final class RebuildOrder {

    /** Effort of the ordering; see {@link ActOrder}. */
    private static final Effort EFFORT = Effort.ofExpansions(50_000);

    /**
     * Effort of the exact search before the ordering solver takes over: sets of items that it looks
     * at, times the number of items.
     */
    private static final long SEARCH_EFFORT = 200_000;

    private static final String PLAIN =
            "No better order was found than the teardown backwards; it is not proved to be the best.";

    private final Plan plan;
    private final Device device;

    private RebuildOrder(Plan plan) {
        this.plan = plan;
        this.device = plan.request().device();
    }

    /**
     * Makes the rebuild of a plan.
     *
     * @throws IllegalStateException if its order is refused by the simulator
     */
    static Rebuild of(Plan plan) {
        return new RebuildOrder(plan).make();
    }

    private Rebuild make() {
        if (!plan.request().leaveOpen()) {
            for (List<Act> before : HalfOpen.acts(device, plan.request().start())) {
                Optional<Rebuild> whole = ordered(new RebuildItems(plan, before));
                if (whole.isPresent()) {
                    return whole.get();
                }
            }
        }
        RebuildItems items = new RebuildItems(plan, List.of());
        return ordered(items).orElseGet(() -> backwards(items));
    }

    private Optional<Rebuild> ordered(RebuildItems items) {
        ActOrderRules rules =
                ActOrderRules.of(device, items.end(), items.acts(), /* backwards= */ true);
        if (!rules.faults().isEmpty() || items.size() > OrderRequest.MOST_ITEMS) {
            return Optional.empty();
        }
        RebuildTests tests = new RebuildTests(items);
        RebuildWants wants = new RebuildWants(items, tests, rules.rules());
        List<Want> kept = wants.all();
        RebuildSearch.Outcome exact = search(items, kept, rules);
        if (exact.order().isEmpty() && !exact.stopped()) {
            if (search(items, List.of(), rules).order().isEmpty()) {
                return Optional.empty();
            }
            kept = mostKept(items, kept, rules);
            exact = search(items, kept, rules);
        }
        if (!exact.order().isEmpty()) {
            ActOrder.requireValid(request(items, List.of()), exact.order());
            return Optional.of(written(items, tests, wants, kept, exact.order(), exact.boundMs()));
        }
        return solved(items, tests, wants, kept, exact.boundMs());
    }

    private RebuildSearch.Outcome search(
            RebuildItems items, List<Want> wants, ActOrderRules rules) {
        return new RebuildSearch(items, rules(wants), rules, RebuildWriter.endPosture(plan))
                .find(SEARCH_EFFORT / Math.max(1, items.size()));
    }

    private static List<Rule> rules(List<Want> wants) {
        return wants.stream().flatMap(want -> want.rules().stream()).toList();
    }

    /** Drops what contradicts what is more important, and nothing else. */
    private List<Want> mostKept(RebuildItems items, List<Want> wants, ActOrderRules rules) {
        List<Want> kept = new ArrayList<>();
        List<Want> left = wants;
        while (!left.isEmpty()) {
            int fits = 0;
            int fails = left.size() + 1;
            while (fails - fits > 1) {
                int middle = (fits + fails) / 2;
                List<Want> tried = new ArrayList<>(kept);
                tried.addAll(left.subList(0, middle));
                if (search(items, tried, rules).order().isEmpty()) {
                    fails = middle;
                } else {
                    fits = middle;
                }
            }
            kept.addAll(left.subList(0, fits));
            left = left.subList(Math.min(fits + 1, left.size()), left.size());
        }
        return kept;
    }

    /** Has the ordering solver find an order where the exact search was stopped. */
    private Optional<Rebuild> solved(
            RebuildItems items,
            RebuildTests tests,
            RebuildWants wants,
            List<Want> kept,
            long boundMs) {
        for (List<Want> tried : List.of(kept, List.<Want>of())) {
            List<Pair> pairs = new ArrayList<>();
            for (Rule rule : rules(tried)) {
                if (rule.oneOf().size() == 1) {
                    pairs.add(rule.oneOf().get(0));
                }
            }
            if (ActOrder.find(request(items, pairs), Watch.NONE)
                    instanceof OrderAnswer.Found found) {
                // the solver knows pairs only; beds can be put right without touching the rest
                List<Integer> order =
                        new LateBeds(items, rules(kept), RebuildWriter.endPosture(plan))
                                .mended(found.order());
                return Optional.of(
                        written(
                                items,
                                tests,
                                wants,
                                tried.stream().filter(want -> want.isKeptBy(order)).toList(),
                                order,
                                Math.max(boundMs, found.lowerBoundMs())));
            }
        }
        return Optional.empty();
    }

    private OrderRequest request(RebuildItems items, List<Pair> pairs) {
        return new OrderRequest(
                device.setup(),
                new OrderItem.Stance(device.hand(), RebuildWriter.endPosture(plan)),
                orderItems(items),
                pairs.stream()
                        .map(pair -> new OrderRequest.Before(pair.earlier(), pair.later()))
                        .toList(),
                Optional.of(new OrderRequest.Unit(device, items.end(), /* rebuild= */ true)),
                EFFORT);
    }

    private static List<OrderItem> orderItems(RebuildItems items) {
        List<OrderItem> all = new ArrayList<>();
        for (int at = 0; at < items.size(); at++) {
            Undoing item = items.get(at);
            all.add(
                    new OrderItem(
                            (item.kind().isUndoing() ? "undo " : "lay for ") + item.act().id(),
                            item.kind().isUndoing() ? Optional.of(item.act()) : Optional.empty(),
                            item.tool()
                                    .map(
                                            tool ->
                                                    new OrderItem.Stance(
                                                            tool, item.posture().orElseThrow())),
                            item.ms()));
        }
        return all;
    }

    /** The plain reverse of the teardown. */
    private Rebuild backwards(RebuildItems items) {
        List<Integer> order = IntStream.range(0, items.size()).boxed().toList();
        RebuildTests tests = new RebuildTests(items);
        RebuildWants wants = new RebuildWants(items, tests, List.of());
        List<Want> kept = wants.all().stream().filter(want -> want.isKeptBy(order)).toList();
        Rebuild rebuild = written(items, tests, wants, kept, order, 0);
        List<String> broken = new ArrayList<>(rebuild.broken());
        broken.add(0, PLAIN);
        return rebuild.withBroken(broken);
    }

    private Rebuild written(
            RebuildItems items,
            RebuildTests tests,
            RebuildWants wants,
            List<Want> kept,
            List<Integer> order,
            long boundMs) {
        List<Integer> late =
                new LateBeds(items, rules(kept), RebuildWriter.endPosture(plan)).of(order);
        List<RebuildAct> acts = new RebuildWriter(plan, items, tests).write(late);
        long setups = acts.stream().mapToLong(RebuildAct::setupMs).sum();
        Set<String> broken = new LinkedHashSet<>(wants.broken());
        wants.all().stream()
                .filter(want -> !kept.contains(want))
                .forEach(want -> broken.add(want.broken()));
        return Rebuild.of(
                        plan,
                        acts,
                        boundMs,
                        setups == boundMs ? Plan.Ended.PROVED : Plan.Ended.EXPANSIONS,
                        items.end())
                .withBroken(List.copyOf(broken));
    }
}
