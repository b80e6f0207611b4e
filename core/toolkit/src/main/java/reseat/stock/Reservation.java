package reseat.stock;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Things of a stock that are held for a job.
 *
 * @param request what was asked for
 * @param state what became of it
 */
public record Reservation(Request request, State state) {

    /** What became of a reservation. */
    public enum State {
        /** Held; nobody else can take it. */
        RESERVED,
        /** Used: gone from the stock. */
        USED,
        /** Given back. */
        RELEASED
    }

    /** Returns the id that the caller chose. */
    public String id() {
        return request.id();
    }

    /**
     * A wish to reserve.
     *
     * @param id id that the caller chooses, unlike any other; never blank
     * @param job id of the job it is for; never blank
     * @param picks what to take; at least one, each of another line
     */
    public record Request(String id, String job, List<Pick> picks) {

        public Request {
            picks = List.copyOf(picks);
            if (id.isBlank() || job.isBlank() || picks.isEmpty()) {
                throw new IllegalArgumentException("a reservation has an id, a job and picks");
            }
            Set<String> items = new HashSet<>();
            for (Pick pick : picks) {
                if (!items.add(pick.item())) {
                    throw new IllegalArgumentException(pick.item() + " is picked twice");
                }
            }
        }
    }

    /**
     * So much of one line of a stock.
     *
     * @param item id of the line
     * @param quantity how much, greater than zero; kept without zeros at the end, so that picks of
     *     as much are equal
     */
    public record Pick(String item, BigDecimal quantity) {

        public Pick {
            if (quantity.signum() <= 0) {
                throw new IllegalArgumentException(
                        "a quantity picked is greater than zero: " + quantity);
            }
            BigDecimal bare = quantity.stripTrailingZeros();
            quantity = bare.scale() < 0 ? bare.setScale(0) : bare;
        }
    }
}
