package reseat.console.command;

import picocli.CommandLine.Command;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Take what was reserved out of the stock; tools come back. */
@Command(
        name = "use",
        description = "Take what was reserved out of the stock; tools come back.",
        sortOptions = false)
final class StockUseCommand extends ReservationCommand {

    @Override
    Reservation doneTo(Stock stock, String reservation) throws StockException {
        return stock.use(reservation);
    }
}
