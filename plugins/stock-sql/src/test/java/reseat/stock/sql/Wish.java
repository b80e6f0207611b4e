package reseat.stock.sql;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import reseat.stock.Reservation;

/**
 * What a program that will be killed asks for: it follows from the id, so that it can be checked.
 */
final class Wish {

    private Wish() {}

    /** Returns a wish for one to three lines. */
    static Reservation.Request of(String id) {
        Random random = new Random(id.hashCode());
        Map<String, Reservation.Pick> picks = new TreeMap<>();
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            String line = "line-" + (char) ('a' + random.nextInt(20));
            BigDecimal quantity = BigDecimal.valueOf(1 + random.nextInt(30), 1);
            picks.put(line, new Reservation.Pick(line, quantity));
        }
        return new Reservation.Request(id, "job " + id, List.copyOf(picks.values()));
    }

    /** Returns what becomes of it: half of the wishes stay open. */
    static Reservation.State end(String id) {
        return switch (new Random(~id.hashCode()).nextInt(4)) {
            case 0 -> Reservation.State.USED;
            case 1 -> Reservation.State.RELEASED;
            default -> Reservation.State.RESERVED;
        };
    }
}
