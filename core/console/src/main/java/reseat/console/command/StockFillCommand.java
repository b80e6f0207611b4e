package reseat.console.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.FillableStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Copies the lines of one stock into another. */
@Command(
        name = "fill",
        description = {
            "Set the lines of a database to those of another stock, such as a spreadsheet.",
            "Lines that are not in the other one stay; reservations are not copied."
        },
        sortOptions = false)
final class StockFillCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(index = "1", paramLabel = "FROM", description = "File that names the other stock.")
    private Path from = Path.of("");

    @Override
    public Integer call() throws BadInputException {
        try (Stock source = StockArgs.open(from, spec.commandLine().getErr());
                Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            if (!(stock instanceof FillableStock fillable)) {
                throw new BadInput(
                        "reseat: the lines of this stock are the shop's own; only a database"
                                + " without a mapping can be filled.");
            }
            List<StockItem> lines = source.items();
            fillable.put(lines);
            spec.commandLine().getOut().println("Set " + lines.size() + " lines.");
            spec.commandLine().getOut().flush();
        } catch (StockException e) {
            throw StockArgs.refused(e);
        }
        return 0;
    }
}
