package reseat.stock;

/**
 * A stock whose own book is written by others: a spreadsheet, the tables of another program. What
 * is used through Reseat is remembered beside it and taken off what the book says, until somebody
 * says that the book knows of it.
 */
public interface SettlingStock extends Stock {

    /**
     * Says that the book now knows of everything that was used of a line so far. Settling what is
     * settled changes nothing.
     *
     * @param item id of the line
     * @throws StockException {@link StockException.Kind#UNKNOWN} if neither the book nor what is
     *     remembered beside it has such a line
     */
    void settle(String item) throws StockException;
}
