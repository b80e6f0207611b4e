package reseat.stock.desk;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.text.JsonText;

/** Lists the lines of a stock. */
final class StockListCommand implements Command {

    @Override
    public String name() {
        return "list";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of("List the lines of the stock, and what needs attention.")
                .taking(
                        StockArgs.STOCK,
                        StockArgs.TODAY,
                        CommandOption.flag("--expired", "List only expired lines."),
                        StockArgs.JSON);
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        PrintWriter out = call.out();
        boolean expired = call.has("--expired");
        LocalDate today = StockArgs.day(call);
        try (Stock stock = StockArgs.open(call)) {
            List<StockItem> items =
                    stock.items().stream()
                            .filter(item -> !expired || !item.isGoodOn(today))
                            .toList();
            List<String> notices = stock.notices();
            if (call.has("--json")) {
                out.print(
                        JsonText.of(
                                JsonText.map(
                                        "format",
                                        "reseat-stock-list/1",
                                        "today",
                                        today.toString(),
                                        "items",
                                        items.stream().map(item -> json(item, today)).toList(),
                                        "notices",
                                        notices)));
            } else {
                print(items, today, call);
                notices.forEach(notice -> out.println("! " + notice));
            }
            out.flush();
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return FINE;
    }

    private static Map<String, Object> json(StockItem item, LocalDate today) {
        return JsonText.map(
                "id", item.id(),
                "kind", item.kind(),
                "name", item.name(),
                "serves", item.serves(),
                "onHand", item.onHand(),
                "reserved", item.reserved(),
                "unit", item.unit(),
                "lot", item.lot(),
                "expires", item.expires(),
                "expired", !item.isGoodOn(today),
                "place", item.place());
    }

    private static void print(List<StockItem> items, LocalDate today, CommandCall call) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("LINE", "ON HAND", "FREE", "UNIT", "WHAT", "SERVES", "EXPIRES"));
        for (StockItem item : items) {
            rows.add(
                    List.of(
                            item.id(),
                            item.onHand().toPlainString(),
                            item.available().toPlainString(),
                            item.unit(),
                            item.name(),
                            String.join(" ", item.serves()),
                            item.expires().map(LocalDate::toString).orElse("")
                                    + (item.isGoodOn(today) ? "" : " expired")));
        }
        Table.of(rows, 1, 2).forEach(call::line);
    }
}
