package reseat.internal.order;

/** Reproducible random numbers (xorshift, Marsaglia 2003). */
final class Dice {

    private long state;

    Dice(long seed) {
        this.state = seed;
    }

    long next() {
        state ^= state << 13;
        state ^= state >>> 7;
        state ^= state << 17;
        return state;
    }

    /** A number from 0 to below the bound. */
    int below(int bound) {
        return (int) (((next() >>> 33) * bound) >>> 31);
    }

    /** The random loss accepted at a temperature: 0 or more, seldom much. */
    double patience(double temperature) {
        double unit = ((next() >>> 11) + 1) * 0x1.0p-53;
        return -temperature * Math.log(unit);
    }
}
