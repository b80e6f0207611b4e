package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Lists what is reserved. */
@Command(
        name = "open",
        description = "List the reservations that are neither used nor given back.",
        sortOptions = false)
final class StockOpenCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            List<Reservation> open = stock.open();
            if (json) {
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
        return 0;
    }
}
