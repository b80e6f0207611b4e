package reseat.console.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Does something with one reservation of a stock, and prints what became of it. */
abstract class ReservationCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(index = "1", paramLabel = "ID", description = "Id of the reservation.")
    private String id = "";

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    abstract Reservation doneTo(Stock stock, String reservation) throws StockException;

    @Override
    public Integer call() throws BadInputException {
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            return Reserved.answer(
                    stock,
                    s -> doneTo(s, id),
                    json,
                    spec.commandLine().getOut(),
                    spec.commandLine().getErr());
        }
    }
}
