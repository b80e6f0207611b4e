package reseat.stock;

import java.util.List;
import java.util.Optional;

/**
 * An open stock. Thread-safe.
 *
 * <p>Taking from it is atomic: a reservation holds all of its picks or none, and nothing is ever
 * reserved twice, even if others use the same stock at the same time. Each reservation has an id
 * chosen by the caller, so that it can be repeated after a lost connection: all operations are
 * idempotent.
 */
public interface Stock extends AutoCloseable {

    /** Returns the current lines, in a fixed order. */
    List<StockItem> items() throws StockException;

    /**
     * Reserves all picks of a request, or none.
     *
     * @return the reservation; if one with the same id, job and picks exists already, that one,
     *     unchanged
     * @throws StockException {@link StockException.Kind#SHORT} if some pick is not available,
     *     {@link StockException.Kind#CONFLICT} if the id belongs to another request
     */
    Reservation reserve(Reservation.Request request) throws StockException;

    /**
     * Takes what was reserved out of the stock: consumables, parts and screws are used up, tools
     * come back. Idempotent.
     *
     * @throws StockException {@link StockException.Kind#UNKNOWN} if there is no such reservation,
     *     {@link StockException.Kind#CONFLICT} if it was released
     */
    Reservation use(String reservation) throws StockException;

    /**
     * Returns what was reserved to the stock. Idempotent.
     *
     * @throws StockException {@link StockException.Kind#UNKNOWN} if there is no such reservation,
     *     {@link StockException.Kind#CONFLICT} if it was used
     */
    Reservation release(String reservation) throws StockException;

    /** Returns a reservation, or empty if there is none with this id. */
    Optional<Reservation> reservation(String id) throws StockException;

    /** Returns all reservations that are neither used nor released, oldest first. */
    List<Reservation> open() throws StockException;

    /**
     * Returns warnings, as sentences: a line that vanished while some of it is reserved, less on
     * hand than reserved, use that the shop's own records lack. Empty if there are none.
     */
    default List<String> notices() throws StockException {
        return List.of();
    }

    /**
     * Returns what opening it changed, as sentences without a full stop, such as a file of an
     * earlier version that was replaced. Usually empty.
     */
    default List<String> openingNotes() {
        return List.of();
    }

    @Override
    void close();
}
