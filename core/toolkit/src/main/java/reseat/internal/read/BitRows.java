package reseat.internal.read;

/**
 * Rows of bits of one length, kept word by word: sets of parts are joined and compared 64 at once.
 */
final class BitRows {

    private final long[][] rows;

    /**
     * Makes rows without a bit set.
     *
     * @param count number of rows
     * @param length bits in each
     */
    BitRows(int count, int length) {
        this.rows = new long[count][(length + 63) >>> 6];
    }

    boolean get(int row, int bit) {
        return (rows[row][bit >>> 6] & 1L << bit) != 0;
    }

    void set(int row, int bit) {
        rows[row][bit >>> 6] |= 1L << bit;
    }

    void setAll(int row, int[] bits) {
        for (int bit : bits) {
            set(row, bit);
        }
    }

    /** Returns the first bit set in a row from a place on; -1 if there is none. */
    int next(int row, int from) {
        long[] words = rows[row];
        for (int w = from >>> 6; w < words.length; w++) {
            long word = w == from >>> 6 ? words[w] & -1L << from : words[w];
            if (word != 0) {
                return (w << 6) + Long.numberOfTrailingZeros(word);
            }
        }
        return -1;
    }

    /** Makes one row of these the same as another of them. */
    void copy(int from, int to) {
        System.arraycopy(rows[from], 0, rows[to], 0, rows[to].length);
    }

    /** Makes a row the same as that of others with the same number. */
    void copyFrom(BitRows others, int row) {
        System.arraycopy(others.rows[row], 0, rows[row], 0, rows[row].length);
    }

    /** Makes a row that of others with the same number, without the bits of a third. */
    void copyWithout(int row, BitRows others, BitRows without) {
        long[] words = rows[row];
        for (int w = 0; w < words.length; w++) {
            words[w] = others.rows[row][w] & ~without.rows[row][w];
        }
    }

    /** Adds the bits of another row. */
    void add(int row, BitRows others, int other) {
        long[] words = rows[row];
        for (int w = 0; w < words.length; w++) {
            words[w] |= others.rows[other][w];
        }
    }

    /** Tells whether each bit of a row is set in another row too. */
    boolean within(int row, BitRows others, int other) {
        long[] words = rows[row];
        for (int w = 0; w < words.length; w++) {
            if ((words[w] & ~others.rows[other][w]) != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Adds to a row, for each of its bits, the row of steps with that number, until none is new.
     */
    void close(int row, BitRows steps) {
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int bit = next(row, 0); bit >= 0; bit = next(row, bit + 1)) {
                if (!steps.within(bit, this, row)) {
                    add(row, steps, bit);
                    grown = true;
                }
            }
        }
    }

    /**
     * As {@link #close(int, BitRows)}, but stops when the row has a bit that its row of allowed
     * bits lacks.
     *
     * @return whether all bits are allowed, and none is new
     */
    boolean close(int row, BitRows steps, BitRows allowed) {
        boolean grown = true;
        while (grown) {
            grown = false;
            if (!within(row, allowed, row)) {
                return false;
            }
            for (int bit = next(row, 0); bit >= 0; bit = next(row, bit + 1)) {
                if (!steps.within(bit, this, row)) {
                    add(row, steps, bit);
                    grown = true;
                }
            }
        }
        return true;
    }
}
