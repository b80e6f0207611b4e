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
 * Acts on one reservation of a stock, and prints the result.
 *
 * @param name the name of the command
 * @param does its description, as a sentence
 * @param deed the action
 */
record ReservationCommand(String name, String does, Deed deed) implements Command {

    /** An action on a reservation. */
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
