package reseat.internal.graph;

/** Sets of small numbers in arrays of words; several sets of one width may share an array. */
public final class Bits {

    private Bits() {}

    /** Returns the number of words that hold a number of bits. */
    public static int words(int bits) {
        return (bits + 63) >>> 6;
    }

    public static boolean get(long[] set, int bit) {
        return (set[bit >>> 6] & (1L << bit)) != 0;
    }

    public static void set(long[] set, int bit) {
        set[bit >>> 6] |= 1L << bit;
    }

    public static void clear(long[] set, int bit) {
        set[bit >>> 6] &= ~(1L << bit);
    }

    public static int count(long[] set) {
        int n = 0;
        for (long word : set) {
            n += Long.bitCount(word);
        }
        return n;
    }

    /** Returns whether every member of one set is in another. */
    public static boolean subset(long[] small, long[] large) {
        for (int i = 0; i < small.length; i++) {
            if ((small[i] & ~large[i]) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Returns the first member at or after a bit, or -1. */
    public static int next(long[] set, int from) {
        int word = from >>> 6;
        if (word >= set.length) {
            return -1;
        }
        long bits = set[word] & (-1L << from);
        while (bits == 0) {
            if (++word == set.length) {
                return -1;
            }
            bits = set[word];
        }
        return (word << 6) + Long.numberOfTrailingZeros(bits);
    }

    public static void addAll(long[] to, long[] from) {
        for (int i = 0; i < to.length; i++) {
            to[i] |= from[i];
        }
    }
}
