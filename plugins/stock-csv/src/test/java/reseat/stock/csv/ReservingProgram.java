package reseat.stock.csv;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import reseat.stock.Reservation.Pick;
import reseat.stock.Reservation.Request;
import reseat.stock.Stock;
import reseat.stock.StockException;

/**
 * A program of its own that reserves, one after the other, and says on its output what it was
 * promised: {@code ReservingProgram FOLDER NAME COUNT}.
 */
final class ReservingProgram {

    private ReservingProgram() {}

    public static void main(String[] args) throws StockException {
        try (Stock stock = CsvShop.open(Path.of(args[0]))) {
            for (int n = 0; n < Integer.parseInt(args[2]); n++) {
                String id = args[1] + "-" + n;
                try {
                    stock.reserve(
                            new Request(id, args[1], List.of(new Pick("B1", BigDecimal.ONE))));
                    System.out.println(id);
                    System.out.flush();
                } catch (StockException e) {
                    if (e.kind() != StockException.Kind.SHORT) {
                        throw e;
                    }
                    System.out.println("short");
                }
            }
        }
    }
}
