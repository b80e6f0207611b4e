package reseat.internal.order;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Reads problems from the files in which they are published.
 *
 * <p>Two forms are known. TSPLIB 95: lines {@code KEY: value}, then {@code EDGE_WEIGHT_SECTION},
 * the number of acts and the matrix. SOPLIB 2006: the matrix alone, one row a line, or the number
 * of acts before it. In row i and column j stands the cost of j directly after i, or -1 where j
 * must come before i; what stands on the diagonal has no meaning. The precedence need not be
 * closed. Reading takes as much memory as the matrix.
 */
public final class SopFiles {

    /** Files that are larger are refused. */
    public static final long MAX_BYTES = 64L << 20;

    private final SopTokens tokens;

    private SopFiles(SopTokens tokens) {
        this.tokens = tokens;
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @return the problem
     * @throws SopFormatException when it is no such file; says where and why
     * @throws IOException when it cannot be read
     */
    public static OrderProblem read(Path file) throws IOException {
        long bytes = Files.size(file);
        if (bytes > MAX_BYTES) {
            throw new SopFormatException(
                    file.toString(), 1, "the file has " + bytes + " bytes, more than " + MAX_BYTES);
        }
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            return read(file.toString(), in);
        }
    }

    /**
     * Reads from a stream, which stays open.
     *
     * @param name what messages call the file
     * @param in the text
     * @return the problem
     * @throws SopFormatException when it is no such text; says where and why
     * @throws IOException when it cannot be read
     */
    public static OrderProblem read(String name, InputStream in) throws IOException {
        return new SopFiles(new SopTokens(name, in, MAX_BYTES)).problem();
    }

    private OrderProblem problem() throws IOException {
        int first = tokens.look();
        if (first < 0) {
            throw tokens.fault("expected the matrix of a problem, found nothing");
        }
        if ((first >= 'A' && first <= 'Z') || (first >= 'a' && first <= 'z')) {
            int dimension = header();
            String word = tokens.word();
            if (dimension < 0) {
                return matrix(size(number(word)), new int[0]);
            }
            int number = number(word);
            if (number == dimension) {
                return matrix(dimension, new int[0]);
            }
            if (number != 0) {
                throw tokens.fault(
                        "expected " + dimension + ", the DIMENSION, found '" + word + "'");
            }
            return matrix(dimension, new int[] {0});
        }
        return plain();
    }

    /** Reads up to the matrix and returns the dimension, or -1 when none is given. */
    private int header() throws IOException {
        int dimension = -1;
        while (true) {
            if (tokens.look() < 0) {
                throw tokens.fault("expected EDGE_WEIGHT_SECTION, found the end");
            }
            String[] entry = tokens.restOfLine().split(":", 2);
            String key = entry[0].strip().toUpperCase(Locale.ROOT);
            String value = entry.length > 1 ? entry[1].strip() : "";
            switch (key) {
                case "EDGE_WEIGHT_SECTION" -> {
                    return dimension;
                }
                case "DIMENSION" -> dimension = size(number(value));
                case "TYPE" -> demand(key, value, "SOP");
                case "EDGE_WEIGHT_TYPE" -> demand(key, value, "EXPLICIT");
                case "EDGE_WEIGHT_FORMAT" -> demand(key, value, "FULL_MATRIX");
                default -> {
                    if (entry.length < 2) {
                        throw tokens.fault(
                                "expected 'KEY: value' or EDGE_WEIGHT_SECTION, found '"
                                        + entry[0]
                                        + "'");
                    }
                }
            }
        }
    }

    private void demand(String key, String value, String known) throws SopFormatException {
        if (!value.equalsIgnoreCase(known)) {
            throw tokens.fault(key + " must be " + known + ", not '" + value + "'");
        }
    }

    /** Reads a matrix whose first line tells its size. */
    private OrderProblem plain() throws IOException {
        int[] row = new int[OrderProblem.MAX_SIZE];
        int count = 0;
        do {
            if (count == row.length) {
                throw tokens.fault(
                        "more than " + OrderProblem.MAX_SIZE + " numbers in the first row");
            }
            row[count++] = entry(tokens.word());
        } while (!tokens.atEndOfLine());
        if (count == 1 && row[0] > 0) {
            return matrix(size(row[0]), new int[0]);
        }
        return matrix(count, Arrays.copyOf(row, count));
    }

    private OrderProblem matrix(int n, int[] known) throws IOException {
        OrderProblem.Builder builder = OrderProblem.ofSize(n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int at = i * n + j;
                int entry = at < known.length ? known[at] : nextEntry(i, j, n);
                if (i == j) {
                    continue;
                }
                if (entry < 0) {
                    builder.precede(j, i);
                } else {
                    builder.cost(i, j, entry);
                }
            }
        }
        String end = tokens.word();
        if (!end.isEmpty() && !end.equals("EOF")) {
            throw tokens.fault(
                    "expected the end after "
                            + n
                            + " rows of "
                            + n
                            + " numbers, found '"
                            + end
                            + "'");
        }
        try {
            return builder.build();
        } catch (IllegalArgumentException e) {
            throw (SopFormatException) tokens.fault(String.valueOf(e.getMessage())).initCause(e);
        }
    }

    private int nextEntry(int i, int j, int n) throws IOException {
        String word = tokens.word();
        if (word.isEmpty() || word.equals("EOF")) {
            throw tokens.fault(
                    "expected "
                            + n
                            + " rows of "
                            + n
                            + " numbers, found the end in row "
                            + i
                            + " before column "
                            + j);
        }
        return entry(word);
    }

    private int entry(String word) throws SopFormatException {
        int number = number(word);
        if (number < -1) {
            throw tokens.fault("expected a cost or -1, found '" + word + "'");
        }
        return number;
    }

    private int size(int n) throws SopFormatException {
        if (n < 1 || n > OrderProblem.MAX_SIZE) {
            throw tokens.fault(
                    "the number of acts must be 1 to " + OrderProblem.MAX_SIZE + ", not " + n);
        }
        return n;
    }

    private int number(String word) throws SopFormatException {
        try {
            int number =
                    Integer.parseInt(
                            word.endsWith(".0") ? word.substring(0, word.length() - 2) : word);
            if (number <= OrderProblem.MAX_COST) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw (SopFormatException)
                    tokens.fault("expected a whole number, found '" + word + "'").initCause(e);
        }
        throw tokens.fault("numbers go up to " + OrderProblem.MAX_COST + ", not '" + word + "'");
    }
}
