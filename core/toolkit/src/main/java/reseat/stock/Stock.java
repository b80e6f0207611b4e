package reseat.stock;

import java.util.List;
import java.util.Optional;

/**
 * An open stock. Safe for use by several threads.
 *
 * <p>Taking from it is atomic: a reservation holds all of its picks or none, and nothing is ever
 * reserved twice, whoever else uses the same stock at the same time. Each reservation carries an id
 * that the caller chose, so that after a lost connection it can be repeated: doing again what was
 * done already changes nothing.
 */
public interface Stock extends AutoCloseable {

    /** Returns what is there now, in a fixed order. */
    List<StockItem> items() throws StockException;

    /**
     * Reserves all picks of a request, or none.
     *
     * @return the reservation; if one with this id is there already and its job and picks are the
     *     same, that one, unchanged
     * @throws StockException {@link StockException.Kind#SHORT} if some pick is not available,
     *     {@link StockException.Kind#CONFLICT} if the id stands for another request
     */
    Reservation reserve(Reservation.Request request) throws StockException;

    /**
     * Takes what was reserved out of the stock: consumables, parts and screws are gone, tools come
     * back. Using what is used changes nothing.
     *
     * @throws StockException {@link StockException.Kind#UNKNOWN} if there is no such reservation,
     *     {@link StockException.Kind#CONFLICT} if it was released
     */
    Reservation use(String reservation) throws StockException;

    /**
     * Gives back what was reserved. Releasing what is released changes nothing.
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
     * Returns what a person should know of, as sentences: a line that vanished while some of it is
     * reserved, less on hand than reserved, use that the shop's own book does not know of. Empty if
     * all is well.
     */
    default List<String> notices() throws StockException {
        return List.of();
    }

    /**
     * Returns what opening it did that a person should know of, as sentences without a full stop: a
     * file of an earlier version was replaced. Empty as a rule.
     */
    default List<String> openingNotes() {
        return List.of();
    }

    @Override
    void close();
}
