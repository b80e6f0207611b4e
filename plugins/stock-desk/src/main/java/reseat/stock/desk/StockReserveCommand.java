package reseat.stock.desk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.Stock;

/** Reserves lines of a stock. */
final class StockReserveCommand implements Command {

    @Override
    public String name() {
        return "reserve";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "Reserve lines for a job, all of them or none.",
                        "Repeating it with the same id, after a lost connection, changes nothing.")
                .taking(
                        StockArgs.STOCK,
                        CommandOption.parameter("ID", Kind.ID, "A new id of your choice."),
                        CommandOption.option("--job", Kind.ID, "<job>", "Id of the job it is for.")
                                .asRequired(),
                        CommandOption.option(
                                        "--pick",
                                        Kind.TEXT,
                                        "LINE=QUANTITY",
                                        "Quantity of one line; can be repeated.")
                                .asRequired()
                                .asRepeatable(),
                        StockArgs.JSON)
                .withExamples(
                        "reseat stock reserve shop.yaml J7-1 --job J7 --pick A-12=1 --pick K-03=0.8");
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        Request request = request(call);
        try (Stock stock = StockArgs.open(call)) {
            return Reserved.answer(stock, s -> s.reserve(request), call);
        }
    }

    private static Request request(CommandCall call) {
        List<Pick> wanted = new ArrayList<>();
        for (String each : call.values("--pick")) {
            int sign = each.lastIndexOf('=');
            String quantity = each.substring(sign + 1);
            if (sign < 1 || !quantity.matches("[0-9]{1,12}(\\.[0-9]{1,9})?")) {
                throw new CommandException(
                        "reseat: --pick: found \""
                                + each
                                + "\", expected LINE=QUANTITY, as A-12=1.");
            }
            try {
                wanted.add(new Pick(each.substring(0, sign), new BigDecimal(quantity)));
            } catch (IllegalArgumentException e) {
                throw new CommandException("reseat: --pick " + each + ": " + e.getMessage() + ".");
            }
        }
        try {
            return new Request(
                    call.value("ID").orElseThrow(), call.value("--job").orElseThrow(), wanted);
        } catch (IllegalArgumentException e) {
            throw new CommandException("reseat: " + e.getMessage() + ".");
        }
    }
}
