package reseat.internal.planner;

import java.util.Arrays;

/** The state of a search: released nodes, places, class in hand, requirements met. Immutable. */
final class Position {

    final long[] released;
    final char[] place;
    final int clazz;
    final long met;
    private final int hash;

    Position(long[] released, char[] place, int clazz, long met) {
        this.released = released;
        this.place = place;
        this.clazz = clazz;
        this.met = met;
        hash =
                ((Arrays.hashCode(released) * 31 + Arrays.hashCode(place)) * 31 + clazz) * 31
                        + Long.hashCode(met);
    }

    /** Returns an estimate of the heap it takes, in bytes. */
    int bytes() {
        return 72 + 8 * released.length + 2 * place.length;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Position that
                && hash == that.hash
                && clazz == that.clazz
                && met == that.met
                && Arrays.equals(released, that.released)
                && Arrays.equals(place, that.place);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
