package reseat.internal.files;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import reseat.fasten.SeatOrder;
import reseat.model.ConsumableUse;
import reseat.plan.Tally;

/** Objects common to several JSON formats. */
final class JsonPieces {

    private JsonPieces() {}

    static void tally(JsonObject node, Tally tally) {
        node.put("closes", tally.closes())
                .put("screws", (long) tally.screwsOut())
                .put("left", (long) tally.left());
        JsonArray types = node.putArray("types");
        for (Tally.Total total : tally.totals()) {
            JsonObject type = types.addObject().put("screw", total.type());
            texts(type.putArray("out"), total.out());
            texts(type.putArray("in"), total.in());
        }
    }

    static void passes(JsonArray passes, SeatOrder order) {
        for (SeatOrder.Pass pass : order.passes()) {
            texts(
                    passes.addObject()
                            .put("stage", lower(pass.stage()))
                            .put("torqueShare", pass.torqueShare())
                            .putArray("joints"),
                    pass.joints());
        }
    }

    static void uses(JsonArray all, List<ConsumableUse> uses) {
        for (ConsumableUse use : uses) {
            all.addObject()
                    .put("of", use.consumable())
                    .put("quantity", use.quantity())
                    .put("unit", use.unit());
        }
    }

    static void some(JsonObject node, String key, Collection<String> ids) {
        if (!ids.isEmpty()) {
            texts(node.putArray(key), ids);
        }
    }

    static void texts(JsonArray array, Collection<String> texts) {
        texts.forEach(text -> array.add(Objects.requireNonNull(text)));
    }

    static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
