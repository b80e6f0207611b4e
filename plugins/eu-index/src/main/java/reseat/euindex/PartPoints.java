package reseat.euindex;

/**
 * Points of one priority part, each from 1 to 5.
 *
 * @param depth for the steps it takes to reach it
 * @param fasteners for the fasteners met on the way from the priority part before it
 * @param tools for the tools needed on that way
 */
public record PartPoints(int depth, int fasteners, int tools) {

    /** Points of a part that the product does not have: the highest. */
    public static final PartPoints ABSENT = new PartPoints(5, 5, 5);

    public PartPoints {
        for (int points : new int[] {depth, fasteners, tools}) {
            if (points < 1 || points > 5) {
                throw new IllegalArgumentException("expected points from 1 to 5, found " + points);
            }
        }
    }

    /** Returns the lower points of two instances of one part, each score by itself. */
    public PartPoints worse(PartPoints other) {
        return new PartPoints(
                Math.min(depth, other.depth),
                Math.min(fasteners, other.fasteners),
                Math.min(tools, other.tools));
    }
}
