package reseat.console.command;

import java.io.PrintWriter;
import java.util.Map;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Reservations as they are printed. */
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
                                case RELEASED -> "given back";
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

    /** Does something with a stock, in its words if it refuses. */
    interface Wish {
        Reservation ask(Stock stock) throws StockException;
    }

    /** Prints what a stock answers; too little or contradicting is no wrong usage. */
    static int answer(Stock stock, Wish wish, boolean json, PrintWriter out, PrintWriter err) {
        try {
            print(wish.ask(stock), json, out);
            return 0;
        } catch (StockException e) {
            if (e.kind() == StockException.Kind.SHORT || e.kind() == StockException.Kind.CONFLICT) {
                err.println("reseat: " + e.getMessage() + ".");
                err.flush();
                return 1;
            }
            throw StockArgs.refused(e);
        }
    }
}
