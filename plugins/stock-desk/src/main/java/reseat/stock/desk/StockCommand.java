package reseat.stock.desk;

import java.util.List;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;

/** The command {@code stock} with its actions. */
final class StockCommand implements Command {

    @Override
    public String name() {
        return "stock";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "List the shop's stock; reserve from it for a job, use or release"
                                + " reservations.")
                .withExamples(
                        "reseat stock list samples/stock/shop.yaml",
                        "reseat stock list samples/stock/shop.yaml --expired --today 2026-12-01",
                        "reseat stock open samples/stock/shop.yaml")
                .withNotes("Each command has its own help: reseat stock reserve --help.");
    }

    @Override
    public List<Command> actions() {
        return List.of(
                new StockListCommand(),
                new StockOpenCommand(),
                new StockReserveCommand(),
                new ReservationCommand(
                        "use",
                        "Use a reservation: take its lines out of the stock; tools come back.",
                        (stock, id) -> stock.use(id)),
                new ReservationCommand(
                        "release", "Release a reservation.", (stock, id) -> stock.release(id)),
                new StockSettleCommand(),
                new StockFillCommand());
    }

    @Override
    public int run(CommandCall call) {
        throw new IllegalStateException("one of its actions is run");
    }
}
