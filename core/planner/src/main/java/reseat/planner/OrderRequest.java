package reseat.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.SetupTable;
import reseat.model.State;
import reseat.plan.Effort;

/**
 * What to put in order.
 *
 * @param setup what changes of tool and posture cost
 * @param start what is in hand and how the device lies before the first item
 * @param items the items; moves of the same part keep this order
 * @param before pairs of items, by their place in the list, of which one must come first
 * @param unit the unit whose rules the acts among the items keep; empty if there are none
 * @param effort how long to look
 */
public record OrderRequest(
        SetupTable setup,
        OrderItem.Stance start,
        List<OrderItem> items,
        List<Before> before,
        Optional<Unit> unit,
        Effort effort) {

    /** The largest number of items. */
    public static final int MOST_ITEMS = 2_000;

    /**
     * One item comes before another.
     *
     * @param earlier place of an item in the list
     * @param later place of another
     */
    public record Before(int earlier, int later) {}

    /**
     * The unit that acts are done to.
     *
     * @param device the device
     * @param state where the unit stands before the teardown
     * @param rebuild whether the items put the unit together: the acts among them, read backwards,
     *     then are a teardown from the state
     */
    public record Unit(Device device, State state, boolean rebuild) {}

    public OrderRequest {
        items = List.copyOf(items);
        before = List.copyOf(before);
        if (items.size() > MOST_ITEMS) {
            throw new IllegalArgumentException(
                    "at most " + MOST_ITEMS + " items can be ordered, not " + items.size());
        }
        for (Before pair : before) {
            if (Math.min(pair.earlier, pair.later) < 0
                    || Math.max(pair.earlier, pair.later) >= items.size()
                    || pair.earlier == pair.later) {
                throw new IllegalArgumentException(
                        pair + " does not name two of " + items.size() + " items");
            }
        }
        known(setup, start);
        for (OrderItem item : items) {
            item.stance().ifPresent(stance -> known(setup, stance));
            if (item.act().isPresent() && unit.isEmpty()) {
                throw new IllegalArgumentException(item.id() + " is an act, but there is no unit");
            }
        }
    }

    private static void known(SetupTable setup, OrderItem.Stance stance) {
        setup.setupMs(stance.tool(), stance.posture(), stance.tool(), stance.posture());
    }

    /** Returns a request for acts of a device, as it states them, from the bare hand. */
    public static OrderRequest of(Device device, State state, List<? extends Act> acts) {
        return new OrderRequest(
                device.setup(),
                new OrderItem.Stance(device.hand(), device.usualPosture()),
                acts.stream().map(act -> OrderItem.of(device, act)).toList(),
                List.of(),
                Optional.of(new Unit(device, state, false)),
                Effort.DEFAULT);
    }

    /** Returns a request for items that know no device. */
    public static OrderRequest of(SetupTable setup, OrderItem.Stance start, List<OrderItem> items) {
        return new OrderRequest(setup, start, items, List.of(), Optional.empty(), Effort.DEFAULT);
    }

    /** Adds that one item comes before another. */
    public OrderRequest before(int earlier, int later) {
        List<Before> more = new ArrayList<>(before);
        more.add(new Before(earlier, later));
        return new OrderRequest(setup, start, items, more, unit, effort);
    }

    public OrderRequest with(Effort newEffort) {
        return new OrderRequest(setup, start, items, before, unit, newEffort);
    }
}
