package reseat.stock.desk;

import java.io.PrintWriter;
import java.util.List;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.text.JsonText;

/** Lists open reservations. */
final class StockOpenCommand implements Command {

    @Override
    public String name() {
        return "open";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of("List the reservations that are neither used nor released.")
                .taking(StockArgs.STOCK, StockArgs.JSON);
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        PrintWriter out = call.out();
        try (Stock stock = StockArgs.open(call)) {
            List<Reservation> open = stock.open();
            if (call.has("--json")) {
                out.print(
                        JsonText.of(
                                JsonText.map(
                                        "format",
                                        "reseat-reservations/1",
                                        "reservations",
                                        open.stream().map(Reserved::json).toList())));
            } else if (open.isEmpty()) {
                out.println("Nothing is reserved.");
            } else {
                open.forEach(each -> Reserved.print(each, false, out));
            }
            out.flush();
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return FINE;
    }
}
