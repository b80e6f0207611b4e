package reseat.stock.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.stock.Reservation;
import reseat.stock.StockItem;
import reseat.text.JsonText;

/** Answers to "can it be done today", as JSON. The format is described in core/docs/stock.md. */
final class TodayJson {

    private TodayJson() {}

    static String of(Today today, List<CanDo> answers, Optional<Reservation> reserved) {
        return JsonText.of(
                JsonText.map(
                        "format", "reseat-today/1",
                        "today", today.day().toString(),
                        "warnDays", today.warnDays(),
                        "repairs", answers.stream().map(TodayJson::repair).toList(),
                        "reserved", reserved.map(Reserved::json)));
    }

    private static Map<String, Object> repair(CanDo answer) {
        return JsonText.map(
                "device", answer.request().device().id(),
                "variant", answer.request().device().variant(),
                "goal", answer.request().goal().toString(),
                "possible", answer.yes(),
                "reasons", answer.reasons(),
                "planMs", answer.plan().map(plan -> plan.totalMs()),
                "proved", answer.plan().map(plan -> plan.proved()),
                "avoided", answer.avoided().stream().map(StockNeed::id).toList(),
                "toolsJudged", answer.availability().map(Availability::toolsJudged),
                "needs",
                        answer.availability().map(Availability::lines).orElse(List.of()).stream()
                                .map(TodayJson::line)
                                .toList());
    }

    private static Map<String, Object> line(Availability.Line line) {
        StockNeed need = line.need();
        return JsonText.map(
                "kind", need.kind(),
                "id", need.id(),
                "name", need.name(),
                "takes", need.takes(),
                "quantity", need.quantity(),
                "unit", need.unit(),
                "reason", need.reason(),
                "missing", line.missing(),
                "reservedForOthers", line.held(),
                "take",
                        line.taken().stream()
                                .map(
                                        taken ->
                                                JsonText.map(
                                                        "item", taken.item().id(),
                                                        "quantity", taken.quantity(),
                                                        "unit", taken.item().unit(),
                                                        "expires", taken.item().expires(),
                                                        "soon", taken.soon()))
                                .toList(),
                "expired", ids(line.expired()),
                "otherUnit", ids(line.otherUnit()),
                "alternates", ids(line.alternates()));
    }

    private static List<String> ids(List<StockItem> items) {
        return items.stream().map(StockItem::id).toList();
    }
}
