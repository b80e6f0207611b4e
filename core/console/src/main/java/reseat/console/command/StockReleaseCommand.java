package reseat.console.command;

import picocli.CommandLine.Command;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Give back what was reserved. */
@Command(name = "release", description = "Give back what was reserved.", sortOptions = false)
final class StockReleaseCommand extends ReservationCommand {

    @Override
    Reservation doneTo(Stock stock, String reservation) throws StockException {
        return stock.release(reservation);
    }
}
