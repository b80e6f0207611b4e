package reseat.internal.files;

/** Bit rows of one length, stored in words: sets of parts are merged and compared 64 at a time. */
final class BitRows {

    private final long[] words;
    private final int width;

    /**
     * Creates rows with no bit set.
     *
     * @param count number of rows
     * @param length bits in each
     */
    BitRows(int count, int length) {
        this.width = (length + 63) >>> 6;
        this.words = new long[count * width];
    }

    private BitRows(long[] words, int width) {
        this.words = words;
        this.width = width;
    }

    /** Returns other rows with the same bits. */
    BitRows copy() {
        return new BitRows(words.clone(), width);
    }

    boolean get(int row, int bit) {
        return (words[row * width + (bit >>> 6)] & 1L << bit) != 0;
    }

    void set(int row, int bit) {
        words[row * width + (bit >>> 6)] |= 1L << bit;
    }

    void clear(int row, int bit) {
        words[row * width + (bit >>> 6)] &= ~(1L << bit);
    }

    /** Returns whether a row has a bit in common with another. */
    boolean meets(int row, BitRows others, int other) {
        for (int w = 0; w < width; w++) {
            if ((words[row * width + w] & others.words[other * width + w]) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Returns how many bits of a row are set. */
    int count(int row) {
        int count = 0;
        for (int w = row * width; w < (row + 1) * width; w++) {
            count += Long.bitCount(words[w]);
        }
        return count;
    }

    /**
     * Returns the first bit from a place on that is set neither in a row nor in the same of others;
     * -1 if there is none before the end.
     */
    int nextOutside(int row, BitRows others, int from, int end) {
        for (int w = from >>> 6; w < width; w++) {
            long word = ~(words[row * width + w] | others.words[row * width + w]);
            word &= w == from >>> 6 ? -1L << from : -1L;
            if (word != 0) {
                int bit = (w << 6) + Long.numberOfTrailingZeros(word);
                return bit < end ? bit : -1;
            }
        }
        return -1;
    }

    /** Returns the first bit set in a row from a place on; -1 if there is none. */
    int next(int row, int from) {
        for (int w = from >>> 6; w < width; w++) {
            long word = words[row * width + w];
            word &= w == from >>> 6 ? -1L << from : -1L;
            if (word != 0) {
                return (w << 6) + Long.numberOfTrailingZeros(word);
            }
        }
        return -1;
    }

    /** Copies one row of these to another. */
    void copy(int from, int to) {
        System.arraycopy(words, from * width, words, to * width, width);
    }

    /** Copies the row with the same number from others. */
    void copyFrom(BitRows others, int row) {
        System.arraycopy(others.words, row * width, words, row * width, width);
    }

    /** Copies the row with the same number from others, without the bits of a third. */
    void copyWithout(int row, BitRows others, BitRows without) {
        for (int w = row * width; w < (row + 1) * width; w++) {
            words[w] = others.words[w] & ~without.words[w];
        }
    }

    /** Adds the bits of another row. */
    void add(int row, BitRows others, int other) {
        for (int w = 0; w < width; w++) {
            words[row * width + w] |= others.words[other * width + w];
        }
    }

    /** Returns whether each bit of a row is set in another row too. */
    boolean within(int row, BitRows others, int other) {
        for (int w = 0; w < width; w++) {
            if ((words[row * width + w] & ~others.words[other * width + w]) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Adds the bits of another row; returns the lowest that is new, or -1 if none is. */
    private int addNew(int row, BitRows others, int other) {
        int lowest = -1;
        for (int w = width - 1; w >= 0; w--) {
            long more = others.words[other * width + w] & ~words[row * width + w];
            if (more != 0) {
                words[row * width + w] |= more;
                lowest = (w << 6) + Long.numberOfTrailingZeros(more);
            }
        }
        return lowest;
    }

    /**
     * Adds to a row, for each of its bits, the row of steps with that number, until none is new.
     */
    void close(int row, BitRows steps) {
        int bit = next(row, 0);
        while (bit >= 0) {
            int lowest = addNew(row, steps, bit);
            bit = next(row, lowest >= 0 && lowest < bit ? lowest : bit + 1);
        }
    }

    /**
     * As {@link #close(int, BitRows)}, but stops when the row has a bit that its row of allowed
     * bits lacks.
     *
     * @return whether all bits are allowed, and none is new
     */
    boolean close(int row, BitRows steps, BitRows allowed) {
        if (!within(row, allowed, row)) {
            return false;
        }
        int bit = next(row, 0);
        while (bit >= 0) {
            int lowest = addNew(row, steps, bit);
            if (lowest >= 0 && !within(row, allowed, row)) {
                return false;
            }
            bit = next(row, lowest >= 0 && lowest < bit ? lowest : bit + 1);
        }
        return true;
    }
}
