package reseat.console.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.Stock;

/** Take what was reserved out of the stock; tools come back. */
@Command(
        name = "use",
        description = "Take what was reserved out of the stock; tools come back.",
        sortOptions = false)
final class StockUseCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(index = "1", paramLabel = "ID", description = "Id of the reservation.")
    private String id = "";

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            return Reserved.answer(
                    stock,
                    s -> s.use(id),
                    json,
                    spec.commandLine().getOut(),
                    spec.commandLine().getErr());
        }
    }
}
