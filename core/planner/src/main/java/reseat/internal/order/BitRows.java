package reseat.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A matrix of bits in rows of whole words: relations between acts, and sets of acts. */
final class BitRows {

    final int words;
    final long[] bits;
    private final int rows;
    private final int columns;

    BitRows(int rows, int columns) {
        this.rows = rows;
        this.columns = columns;
        this.words = (columns + 63) >>> 6;
        this.bits = new long[rows * words];
    }

    BitRows copy() {
        BitRows copy = new BitRows(rows, columns);
        System.arraycopy(bits, 0, copy.bits, 0, bits.length);
        return copy;
    }

    void set(int row, int column) {
        bits[row * words + (column >>> 6)] |= 1L << column;
    }

    boolean has(int row, int column) {
        return ((bits[row * words + (column >>> 6)] >>> column) & 1) != 0;
    }

    /** Returns whether a row here and a row there share a bit. */
    boolean meets(int row, BitRows other, int otherRow) {
        for (int w = 0; w < words; w++) {
            if ((bits[row * words + w] & other.bits[otherRow * words + w]) != 0) {
                return true;
            }
        }
        return false;
    }

    /** Returns whether a row here has all bits of a row there. */
    boolean holds(int row, BitRows other, int otherRow) {
        for (int w = 0; w < words; w++) {
            if ((~bits[row * words + w] & other.bits[otherRow * words + w]) != 0) {
                return false;
            }
        }
        return true;
    }

    int count(int row) {
        int sum = 0;
        for (int w = 0; w < words; w++) {
            sum += Long.bitCount(bits[row * words + w]);
        }
        return sum;
    }

    long count() {
        long sum = 0;
        for (int row = 0; row < rows; row++) {
            sum += count(row);
        }
        return sum;
    }

    /** The transposed relation; only for square relations. */
    BitRows transposed() {
        BitRows result = new BitRows(rows, rows);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                if (has(row, column)) {
                    result.set(column, row);
                }
            }
        }
        return result;
    }

    /** The relation with every act renamed to its mirror image, and transposed. */
    BitRows mirrored() {
        BitRows result = new BitRows(rows, rows);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                if (has(row, column)) {
                    result.set(columns - 1 - column, rows - 1 - row);
                }
            }
        }
        return result;
    }

    /** Closes the relation under transitivity (Warshall 1962), in size^3 / 64 steps. */
    void close() {
        for (int middle = 0; middle < rows; middle++) {
            for (int row = 0; row < rows; row++) {
                if (has(row, middle)) {
                    for (int w = 0; w < words; w++) {
                        bits[row * words + w] |= bits[middle * words + w];
                    }
                }
            }
        }
    }

    /**
     * Adds a pair to a closed relation and closes it again.
     *
     * @return false, and nothing is added, when the pair closes a cycle
     */
    boolean join(int earlier, int later) {
        if (earlier == later || has(later, earlier)) {
            return false;
        }
        for (int row = 0; row < rows; row++) {
            if (row == earlier || has(row, earlier)) {
                set(row, later);
                for (int w = 0; w < words; w++) {
                    bits[row * words + w] |= bits[later * words + w];
                }
            }
        }
        return true;
    }

    /** Returns a cycle of the relation, in its order, or nothing when there is none. */
    List<Integer> cycle() {
        int[] open = new int[rows]; // 0 unvisited, 1 on the stack, 2 done
        int[] path = new int[rows + 1];
        int[] next = new int[rows];
        for (int start = 0; start < rows; start++) {
            if (open[start] != 0) {
                continue;
            }
            int depth = 0;
            path[0] = start;
            open[start] = 1;
            while (depth >= 0) {
                int act = path[depth];
                int to = nextBit(act, next[act]);
                if (to < 0) {
                    open[act] = 2;
                    depth--;
                } else {
                    next[act] = to + 1;
                    if (open[to] == 1) {
                        return cut(path, depth, to);
                    }
                    if (open[to] == 0) {
                        open[to] = 1;
                        path[++depth] = to;
                    }
                }
            }
        }
        return List.of();
    }

    private static List<Integer> cut(int[] path, int depth, int first) {
        int begin = depth;
        while (path[begin] != first) {
            begin--;
        }
        List<Integer> cycle = new ArrayList<>();
        Arrays.stream(path, begin, depth + 1).forEach(cycle::add);
        return Collections.unmodifiableList(cycle);
    }

    /** Returns the first column from the given one on whose bit is set, or -1. */
    int nextBit(int row, int from) {
        for (int w = from >>> 6; w < words; w++) {
            long word = bits[row * words + w];
            if (w == (from >>> 6)) {
                word &= -1L << from;
            }
            if (word != 0) {
                return (w << 6) + Long.numberOfTrailingZeros(word);
            }
        }
        return -1;
    }
}
