package reseat.stock;

/**
 * A stock whose records are maintained elsewhere: a spreadsheet, the tables of another program.
 * What is used through Reseat is recorded separately and subtracted from those records, until it is
 * settled.
 */
public interface SettlingStock extends Stock {

    /**
     * States that the external records now include everything used of a line so far. Settling is
     * idempotent.
     *
     * @param item id of the line
     * @throws StockException {@link StockException.Kind#UNKNOWN} if neither the external records
     *     nor the separate ones have such a line
     */
    void settle(String item) throws StockException;
}
