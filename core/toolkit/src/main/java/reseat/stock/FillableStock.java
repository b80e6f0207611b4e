package reseat.stock;

import java.util.List;

/** A stock whose lines are kept by Reseat, so that they can be set. */
public interface FillableStock extends Stock {

    /**
     * Sets lines: one that is there is changed, one that is not is added, others stay as they are.
     * All or none. What the lines say of reservations is not looked at: those are the stock's own.
     *
     * @throws StockException {@link StockException.Kind#CONFLICT} if a line would have less on hand
     *     than is reserved of it
     */
    void put(List<StockItem> lines) throws StockException;
}
