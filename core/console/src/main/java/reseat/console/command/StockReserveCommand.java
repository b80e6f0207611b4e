package reseat.console.command;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.model.BadInputException;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.Stock;

/** Reserves lines of a stock. */
@Command(
        name = "reserve",
        description = {
            "Reserve lines for a job, all of them or none.",
            "Repeating it with the same id, after a lost connection, changes nothing."
        },
        sortOptions = false,
        footer = {
            "",
            "Example:",
            "  reseat stock reserve shop.yaml J7-1 --job J7 --pick A-12=1 --pick K-03=0.8"
        })
final class StockReserveCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private StockArgs stockArgs = new StockArgs();

    @Parameters(index = "1", paramLabel = "ID", description = "An id of your own, never used yet.")
    private String id = "";

    @Option(names = "--job", required = true, description = "Id of the job it is for.")
    private String job = "";

    @Option(
            names = "--pick",
            required = true,
            paramLabel = "LINE=QUANTITY",
            description = "So much of one line; may be given several times.")
    private List<String> picks = new ArrayList<>();

    @Option(names = "--json", description = "Print it for other programs; see core/docs/stock.md.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        Request request = request();
        try (Stock stock = stockArgs.open(spec.commandLine().getErr())) {
            return Reserved.answer(
                    stock,
                    s -> s.reserve(request),
                    json,
                    spec.commandLine().getOut(),
                    spec.commandLine().getErr());
        }
    }

    private Request request() {
        List<Pick> wanted = new ArrayList<>();
        for (String each : picks) {
            int sign = each.lastIndexOf('=');
            String quantity = each.substring(sign + 1);
            if (sign < 1 || !quantity.matches("[0-9]{1,12}(\\.[0-9]{1,9})?")) {
                throw new BadInput(
                        "reseat: --pick: found \""
                                + each
                                + "\", expected LINE=QUANTITY, as A-12=1.");
            }
            try {
                wanted.add(new Pick(each.substring(0, sign), new BigDecimal(quantity)));
            } catch (IllegalArgumentException e) {
                throw new BadInput("reseat: --pick " + each + ": " + e.getMessage() + ".");
            }
        }
        try {
            return new Request(id, job, wanted);
        } catch (IllegalArgumentException e) {
            throw new BadInput("reseat: " + e.getMessage() + ".");
        }
    }
}
