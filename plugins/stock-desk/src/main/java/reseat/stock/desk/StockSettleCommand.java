package reseat.stock.desk;

import java.util.List;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Confirms that the shop's book includes what was used. */
final class StockSettleCommand implements Command {

    @Override
    public String name() {
        return "settle";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "Confirm that the spreadsheet, or the shop's own tables, now include"
                                + " what was used.",
                        "Until then it is subtracted from their quantities. 'reseat stock list'"
                                + " names such lines.")
                .taking(
                        StockArgs.STOCK,
                        CommandOption.parameter("LINE", Kind.TEXT, "Ids of lines.").asRepeatable());
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        List<String> lines = call.values("LINE");
        try (Stock stock = StockArgs.open(call)) {
            if (!(stock instanceof SettlingStock settling)) {
                throw new CommandException(
                        "reseat: this stock keeps its own book; nothing to settle.");
            }
            for (String line : lines) {
                settling.settle(line);
            }
            call.out().println("Settled: " + String.join(", ", lines) + ".");
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return FINE;
    }
}
