package reseat.console.command;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.sheet.Terminal;
import reseat.model.BadInputException;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Lists the lines of a stock. */
@Command(
        name = "list",
        description = "List what there is, and what a person should look at.",
        sortOptions = false)
final class StockListCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();
    @Mixin private StockArgs.Day day = new StockArgs.Day();

    @Option(names = "--expired", description = "List what has expired alone.")
    private boolean expired;

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        LocalDate today = day.day();
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            List<StockItem> items =
                    stock.items().stream()
                            .filter(item -> !expired || !item.isGoodOn(today))
                            .toList();
            List<String> notices = stock.notices();
            if (json) {
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
                print(items, today, out);
                notices.forEach(notice -> out.println("! " + notice));
            }
            out.flush();
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return 0;
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

    private static void print(List<StockItem> items, LocalDate today, PrintWriter out) {
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
        Table.of(rows, 1, 2).forEach(line -> out.println(Terminal.detect().fitted(line)));
    }
}
