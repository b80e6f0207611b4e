package reseat.stock.desk;

import java.io.PrintWriter;
import java.util.Map;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.text.JsonText;

/** Prints reservations. */
final class Reserved {

    private Reserved() {}

    static Map<String, Object> json(Reservation reservation) {
        return JsonText.map(
                "id", reservation.id(),
                "job", reservation.request().job(),
                "state", reservation.state(),
                "picks",
                        reservation.request().picks().stream()
                                .map(
                                        pick ->
                                                JsonText.map(
                                                        "item",
                                                        pick.item(),
                                                        "quantity",
                                                        pick.quantity()))
                                .toList());
    }

    static void print(Reservation reservation, boolean json, PrintWriter out) {
        if (json) {
            out.print(JsonText.of(json(reservation)));
        } else {
            out.println(
                    reservation.id()
                            + "  "
                            + switch (reservation.state()) {
                                case RESERVED -> "reserved";
                                case USED -> "used";
                                case RELEASED -> "released";
                            }
                            + "  job "
                            + reservation.request().job());
            reservation
                    .request()
                    .picks()
                    .forEach(
                            pick ->
                                    out.println(
                                            "  "
                                                    + pick.quantity().toPlainString()
                                                    + " of "
                                                    + pick.item()));
        }
        out.flush();
    }

    /** Runs an action on a stock; if the stock refuses, its message ends the command. */
    interface Wish {
        Reservation ask(Stock stock) throws StockException;
    }

    /** Prints the reply of a stock; a shortage or conflict is not a usage error. */
    static int answer(Stock stock, Wish wish, CommandCall call) {
        try {
            print(wish.ask(stock), call.has("--json"), call.out());
            return Command.FINE;
        } catch (StockException e) {
            if (e.kind() == StockException.Kind.SHORT || e.kind() == StockException.Kind.CONFLICT) {
                call.err().println("reseat: " + e.getMessage() + ".");
                return Command.FINDINGS;
            }
            throw StockArgs.refused(e);
        }
    }
}
