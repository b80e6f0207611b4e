package reseat.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import reseat.internal.order.Pair;
import reseat.internal.planner.ActOrderRules;
import reseat.internal.planner.HalfOpen;
import reseat.internal.planner.RebuildItems;
import reseat.internal.planner.RebuildPairs;
import reseat.internal.planner.RebuildTests;
import reseat.internal.planner.RebuildWriter;
import reseat.internal.planner.Undoing;
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
                Optional<Rebuild> whole = ordered(new RebuildItems(plan, before), true);
                if (whole.isPresent()) {
                    return whole.get();
                }
            }
        }
        RebuildItems items = new RebuildItems(plan, List.of());
        return ordered(items, true)
                .or(() -> ordered(items, false))
                .orElseGet(() -> backwards(items));
    }

    private Optional<Rebuild> ordered(RebuildItems items, boolean all) {
        ActOrderRules rules =
                ActOrderRules.of(device, items.end(), items.acts(), /* backwards= */ true);
        if (!rules.faults().isEmpty() || items.size() > OrderRequest.MOST_ITEMS) {
            return Optional.empty();
        }
        RebuildTests tests = new RebuildTests(items);
        List<OrderRequest.Before> before = new ArrayList<>();
        if (all) {
            for (Pair pair : new RebuildPairs(items, tests, rules.rules()).all()) {
                before.add(new OrderRequest.Before(pair.earlier(), pair.later()));
            }
        }
        OrderRequest request =
                new OrderRequest(
                        device.setup(),
                        new OrderItem.Stance(device.hand(), RebuildWriter.endPosture(plan)),
                        orderItems(items),
                        before,
                        Optional.of(
                                new OrderRequest.Unit(device, items.end(), /* rebuild= */ true)),
                        EFFORT);
        return ActOrder.find(request, Watch.NONE) instanceof OrderAnswer.Found found
                ? Optional.of(
                        written(
                                items,
                                tests,
                                found.order(),
                                found.lowerBoundMs(),
                                found.ended()))
                : Optional.empty();
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

    private Rebuild backwards(RebuildItems items) {
        List<Integer> order = IntStream.range(0, items.size()).boxed().toList();
        return written(items, new RebuildTests(items), order, 0, Plan.Ended.EXPANSIONS);
    }

    private Rebuild written(
            RebuildItems items,
            RebuildTests tests,
            List<Integer> order,
            long boundMs,
            Plan.Ended ended) {
        List<RebuildAct> acts = new RebuildWriter(plan, items, tests).write(order);
        return Rebuild.of(plan, acts, boundMs, ended, items.end());
    }
}
