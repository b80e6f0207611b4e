package reseat.stock.desk;

import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/**
 * Does something with one reservation of a stock, and prints what became of it.
 *
 * @param name what the command is called
 * @param does what it does, as a sentence
 * @param deed how it is done
 */
record ReservationCommand(String name, String does, Deed deed) implements Command {

    /** What is done with a reservation. */
    interface Deed {
        Reservation doneTo(Stock stock, String reservation) throws StockException;
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(does)
                .taking(
                        StockArgs.STOCK,
                        CommandOption.parameter("ID", Kind.ID, "Id of the reservation."),
                        StockArgs.JSON);
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        try (Stock stock = StockArgs.open(call)) {
            String id = call.value("ID").orElseThrow();
            return Reserved.answer(stock, s -> deed.doneTo(s, id), call);
        }
    }
}
