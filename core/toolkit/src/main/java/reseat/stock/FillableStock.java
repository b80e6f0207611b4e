package reseat.stock;

import java.util.List;

/** A stock whose lines are managed by Reseat, so that they can be set. */
public interface FillableStock extends Stock {

    /**
     * Sets lines, all or none: existing lines are changed, new ones added, others left as they are.
     * Reservations in the given lines are ignored; the stock keeps its own.
     *
     * @throws StockException {@link StockException.Kind#CONFLICT} if a line would have less on hand
     *     than is reserved of it
     */
    void put(List<StockItem> lines) throws StockException;
}
