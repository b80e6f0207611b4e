package reseat.console.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Says that the shop's book knows of what was used. */
@Command(
        name = "settle",
        description = {
            "Say that the spreadsheet, or the shop's own tables, now know of what was used.",
            "Until then it is taken off what they say. 'reseat stock list' names such lines."
        },
        sortOptions = false)
final class StockSettleCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "LINE", description = "Ids of lines.")
    private List<String> lines = new ArrayList<>();

    @Override
    public Integer call() throws BadInputException {
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            if (!(stock instanceof SettlingStock settling)) {
                throw new BadInput("reseat: this stock keeps its own book; nothing to settle.");
            }
            for (String line : lines) {
                settling.settle(line);
            }
            spec.commandLine().getOut().println("Settled: " + String.join(", ", lines) + ".");
            spec.commandLine().getOut().flush();
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return 0;
    }
}
