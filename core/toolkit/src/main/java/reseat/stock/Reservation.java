package reseat.stock;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Items of a stock that are held for a job.
 *
 * @param request the request for
 * @param state its state
 */
public record Reservation(Request request, State state) {

    /** The state of a reservation. */
    public enum State {
        /** Held; nobody else can take it. */
        RESERVED,
        /** Used: taken out of the stock. */
        USED,
        /** Given back. */
        RELEASED
    }

    /** Returns the id that the caller chose. */
    public String id() {
        return request.id();
    }

    /**
     * A request to reserve.
     *
     * @param id id that the caller chooses, unique; never blank
     * @param job id of the job it is for; never blank
     * @param picks what to take; at least one, each of another line
     */
    public record Request(String id, String job, List<Pick> picks) {

        public Request {
            picks = List.copyOf(picks);
            if (id.isBlank() || job.isBlank() || picks.isEmpty()) {
                throw new IllegalArgumentException(
                        "a reservation must have an id, a job and picks");
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
     * A quantity of one line of a stock.
     *
     * @param item id of the line
     * @param quantity how much, greater than zero; stored without trailing zeros, so that equal
     *     quantities are equal
     */
    public record Pick(String item, BigDecimal quantity) {

        public Pick {
            if (quantity.signum() <= 0) {
                throw new IllegalArgumentException(
                        "a picked quantity must be greater than zero: " + quantity);
            }
            BigDecimal bare = quantity.stripTrailingZeros();
            quantity = bare.scale() < 0 ? bare.setScale(0) : bare;
        }
    }
}
