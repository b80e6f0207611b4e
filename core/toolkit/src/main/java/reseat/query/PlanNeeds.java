package reseat.query;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.plan.Rebuild;
import reseat.plan.SpareNeed;
import reseat.stock.StockItem;

/** What a plan needs from a stock, and how much of it is there. */
final class PlanNeeds {

    private final Device device;
    private final Optional<List<StockItem>> stock;
    private final Optional<LocalDate> today;

    private PlanNeeds(Device device, Optional<List<StockItem>> stock, Optional<LocalDate> today) {
        this.device = device;
        this.stock = stock;
        this.today = today;
    }

    static List<NeedRow> of(
            Device device,
            Rebuild rebuild,
            Optional<List<StockItem>> stock,
            Optional<LocalDate> today) {
        PlanNeeds needs = new PlanNeeds(device, stock, today);
        List<NeedRow> rows = new ArrayList<>();
        rebuild.consumables().forEach(use -> rows.add(needs.consumable(use, rebuild)));
        rebuild.spares().forEach(spare -> rows.add(needs.spare(spare)));
        return List.copyOf(rows);
    }

    /** The location is that of the first use: most consumables are built in. */
    private NeedRow consumable(ConsumableUse use, Rebuild rebuild) {
        String joint =
                rebuild.acts().stream()
                        .filter(
                                act ->
                                        act.consumes().stream()
                                                .anyMatch(
                                                        u ->
                                                                u.consumable()
                                                                        .equals(use.consumable())))
                        .flatMap(act -> act.joints().stream())
                        .map(id -> "/joints/" + id)
                        .findFirst()
                        .orElse("/consumables/" + use.consumable());
        Consumable known = device.consumables().get(use.consumable());
        return row(
                StockItem.Kind.CONSUMABLE,
                use.consumable(),
                joint,
                known == null ? use.consumable() : known.name(),
                Optional.empty(),
                use.quantity(),
                use.unit(),
                "the rebuild uses it up");
    }

    private NeedRow spare(SpareNeed need) {
        boolean part = device.parts().containsKey(need.id());
        return row(
                part ? StockItem.Kind.PART : StockItem.Kind.SCREW,
                need.id(),
                (part ? "/parts/" : "/screwTypes/") + need.id(),
                need.name(),
                need.number(),
                BigDecimal.valueOf(need.count()),
                "piece",
                switch (need.reason()) {
                    case TARGET -> "it is being replaced";
                    case RUINED -> "the work destroys it";
                    case LOCKING_PATCH -> "its locking patch holds only once";
                });
    }

    private NeedRow row(
            StockItem.Kind kind,
            String id,
            String pointer,
            String name,
            Optional<String> number,
            BigDecimal quantity,
            String unit,
            String why) {
        List<StockItem> lines =
                stock.orElse(List.of()).stream()
                        .filter(item -> item.kind() == kind && item.unit().equals(unit))
                        .filter(
                                item ->
                                        item.serves().contains(id)
                                                || number.filter(item.serves()::contains)
                                                        .isPresent())
                        .toList();
        List<StockItem> expired =
                lines.stream()
                        .filter(item -> today.isPresent() && !item.isGoodOn(today.get()))
                        .toList();
        Optional<BigDecimal> there =
                stock.map(
                        all ->
                                lines.stream()
                                        .filter(item -> !expired.contains(item))
                                        .map(StockItem::available)
                                        .reduce(BigDecimal.ZERO, BigDecimal::add));
        return new NeedRow(
                kind,
                id,
                pointer,
                name,
                number,
                quantity,
                unit,
                why,
                there,
                expired.stream().map(StockItem::id).toList());
    }
}
