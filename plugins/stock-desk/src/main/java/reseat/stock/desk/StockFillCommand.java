package reseat.stock.desk;

import java.util.List;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.stock.FillableStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Copies the lines of one stock into another. */
final class StockFillCommand implements Command {

    @Override
    public String name() {
        return "fill";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "Set the lines of a database to those of another stock, such as a spreadsheet.",
                        "Lines missing from the other stock stay; reservations are not copied.")
                .taking(
                        StockArgs.STOCK,
                        CommandOption.parameter(
                                "FROM", Kind.FILE, "File that names the other stock."));
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        try (Stock source = StockArgs.open(call, call.path("FROM"));
                Stock stock = StockArgs.open(call)) {
            if (!(stock instanceof FillableStock fillable)) {
                throw new CommandException(
                        "reseat: the lines of this stock are the shop's own; only a database"
                                + " without a mapping can be filled.");
            }
            List<StockItem> lines = source.items();
            fillable.put(lines);
            call.out().println("Set " + lines.size() + " lines.");
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return FINE;
    }
}
