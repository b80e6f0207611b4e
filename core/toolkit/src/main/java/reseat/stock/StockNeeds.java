package reseat.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Tool;
import reseat.plan.Plan;
import reseat.plan.Rebuild;
import reseat.plan.RebuildAct;
import reseat.plan.SpareNeed;

/** Determines what a plan needs from a stock. */
public final class StockNeeds {

    private static final String PIECE = "piece";

    private StockNeeds() {}

    /**
     * Returns what a plan and its rebuild need: spares, screws, consumables, then tools, each in
     * the order of first use. The bare hand is not included.
     *
     * @param replace whether the parts it frees are replaced, and not put back
     */
    public static List<StockNeed> of(Plan plan, boolean replace) {
        return of(plan, plan.rebuild(), replace);
    }

    /**
     * Returns what a plan and its rebuild need.
     *
     * @param rebuild its rebuild
     * @param replace whether the parts that it frees are replaced instead of put back
     */
    public static List<StockNeed> of(Plan plan, Rebuild rebuild, boolean replace) {
        Device device = plan.request().device();
        List<StockNeed> needs = new ArrayList<>();
        for (SpareNeed spare : rebuild.spares()) {
            if (replace || spare.reason() != SpareNeed.Reason.TARGET) {
                needs.add(spare(device, spare));
            }
        }
        for (ConsumableUse use : rebuild.consumables()) {
            needs.add(consumable(device, use));
        }
        Set<String> tools = new LinkedHashSet<>();
        plan.acts().stream().map(CostedAct::tool).forEach(tools::add);
        rebuild.acts().stream().map(RebuildAct::tool).forEach(tools::add);
        tools.remove(device.hand());
        tools.forEach(tool -> needs.add(tool(device, tool)));
        return List.copyOf(needs);
    }

    private static StockNeed spare(Device device, SpareNeed spare) {
        boolean screw = spare.reason() == SpareNeed.Reason.LOCKING_PATCH;
        return new StockNeed(
                screw ? StockItem.Kind.SCREW : StockItem.Kind.PART,
                spare.id(),
                spare.name(),
                // part ids are meaningful only within their device, and a number distinguishes
                // variants that an id does not
                List.of(spare.number().orElse(device.id() + "/" + spare.id())),
                BigDecimal.valueOf(spare.count()),
                PIECE,
                switch (spare.reason()) {
                    case TARGET -> StockNeed.Reason.TARGET;
                    case RUINED -> StockNeed.Reason.RUINED;
                    case LOCKING_PATCH -> StockNeed.Reason.LOCKING_PATCH;
                });
    }

    private static StockNeed consumable(Device device, ConsumableUse use) {
        String id = use.consumable();
        String name =
                Optional.ofNullable(device.consumables().get(id)).map(Consumable::name).orElse(id);
        return new StockNeed(
                StockItem.Kind.CONSUMABLE,
                id,
                name,
                List.of(id, device.id() + "/" + id),
                use.quantity(),
                use.unit(),
                StockNeed.Reason.CONSUMED);
    }

    private static StockNeed tool(Device device, String id) {
        Tool tool = Objects.requireNonNull(device.tools().get(id), id);
        List<String> takes = new ArrayList<>(List.of(id, device.id() + "/" + id));
        tool.drive().filter(drive -> !drive.equals(id)).ifPresent(takes::add);
        return new StockNeed(
                StockItem.Kind.TOOL,
                id,
                tool.name(),
                takes,
                BigDecimal.ONE,
                PIECE,
                StockNeed.Reason.WORK);
    }
}
