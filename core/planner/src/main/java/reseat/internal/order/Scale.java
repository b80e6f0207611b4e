package reseat.internal.order;

/**
 * Converts costs to the scaled integers used for bounds, and back, always rounding to the safe
 * side.
 *
 * <p>Multipliers want fractions of small costs and sums of large costs must fit, so costs are
 * shifted up or down until a known order costs about 2^23. Shifting down drops bits, which only
 * lowers a bound.
 */
final class Scale {

    private static final int BITS = 23;

    private final int shift;

    Scale(long knownCost) {
        int length = 64 - Long.numberOfLeadingZeros(Math.max(1, knownCost));
        this.shift = Math.min(12, BITS - length);
    }

    /** Scales a cost; what it loses is lost downward. */
    long up(long cost) {
        return shift >= 0 ? cost << shift : cost >> -shift;
    }

    /** Turns a scaled bound into the smallest whole cost that it allows. */
    long down(long bound) {
        return shift >= 0 ? -(-bound >> shift) : bound << -shift;
    }
}
