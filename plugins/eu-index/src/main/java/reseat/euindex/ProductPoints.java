package reseat.euindex;

/**
 * Points of the product as a whole.
 *
 * @param spareParts 1 to 5, for the priority parts that end users can buy
 * @param updates 1, 3 or 5, for the years of updates after the end of placement on the market
 * @param information 1, 3 or 5, for who gets the repair information and at what price
 */
public record ProductPoints(int spareParts, int updates, int information) {

    public ProductPoints {
        if (spareParts < 1 || spareParts > 5) {
            throw new IllegalArgumentException(
                    "points for spare parts: expected 1 to 5, found " + spareParts);
        }
        oneThreeFive("updates", updates);
        oneThreeFive("information", information);
    }

    private static void oneThreeFive(String of, int points) {
        if (points != 1 && points != 3 && points != 5) {
            throw new IllegalArgumentException(
                    "points for " + of + ": expected 1, 3 or 5, found " + points);
        }
    }
}
