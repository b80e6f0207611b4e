package reseat.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SopFilesTest {

    private static final String TSPLIB =
            """
            NAME: four.sop
            TYPE: SOP
            COMMENT: made up
            DIMENSION: 4
            EDGE_WEIGHT_TYPE: EXPLICIT
            EDGE_WEIGHT_FORMAT: FULL_MATRIX
            EDGE_WEIGHT_SECTION
            4
             0  3  4 1000000
            -1  0  5  6
            -1 -1  0  7
            -1 -1 -1  0
            EOF
            """;

    private static OrderProblem read(String text) throws IOException {
        return SopFiles.read(
                "f.sop", new ByteArrayInputStream(text.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private static String fault(String text) {
        return assertThrows(SopFormatException.class, () -> read(text)).getMessage();
    }

    @Test
    void readsTsplib() throws IOException {
        OrderProblem problem = read(TSPLIB);
        assertEquals(4, problem.size());
        assertEquals(5, problem.cost(1, 2));
        assertTrue(problem.mustPrecede(1, 2));
    }

    @Test
    void readsAMatrixWithoutItsSizeBeforeIt() throws IOException {
        assertEquals(4, read(TSPLIB.replace("SECTION\n4\n", "SECTION\n")).size());
    }

    @Test
    void readsAPlainMatrixAndClosesIt() throws IOException {
        OrderProblem problem =
                read("0 1 1 1 9\r\n-1 0 2 2 2\r\n-1 -1 0 2 2\r\n-1 3 -1 0 2\r\n-1 -1 -1 -1 0\r\n");
        assertEquals(5, problem.size());
        assertTrue(problem.mustPrecede(1, 3), "through 2");
        assertEquals(2, read("2\n0 5\n-1 0\n").size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "| f.sop:1: expected the matrix of a problem, found nothing",
                "0 1 2\\n-1 0 NaN | f.sop:2: expected a whole number, found 'NaN'",
                "0 1 2\\n-1 0 | f.sop:2: expected 3 rows of 3 numbers, found the end in row 1 before column 2",
                "0 1 2\\n-1 0 5\\n-1 -1 0\\n8 | f.sop:4: expected the end after 3 rows of 3 numbers, found '8'",
                "0 1 2\\n-1 0 -2 | f.sop:2: expected a cost or -1, found '-2'",
                "0 1 2\\n-1 0 1e400 | f.sop:2: expected a whole number, found '1e400'",
                "0 1 2000000000 | f.sop:1: numbers go up to 1000000000, not '2000000000'",
                "5000 | f.sop:1: the number of acts must be 1 to 2048, not 5000",
                "0 1 1 1\\n-1 0 -1 1\\n-1 -1 0 1\\n-1 -1 -1 0 "
                        + "| f.sop:4: the precedence has a cycle: 1 before 2 before 1",
                "TYPE: TSP | f.sop:1: TYPE must be SOP, not 'TSP'",
                "TYPE: SOP\\nDIMENSION: many | f.sop:2: expected a whole number, found 'many'",
                "TYPE: SOP\\nDIMENSION: 4\\n | f.sop:3: expected EDGE_WEIGHT_SECTION, found the end",
                "nothing of the kind | f.sop:1: expected 'KEY: value' or EDGE_WEIGHT_SECTION, found 'nothing of the kind'",
                "DIMENSION: 4\\nEDGE_WEIGHT_SECTION\\n5 | f.sop:3: expected 4, the DIMENSION, found '5'",
            })
    void saysWhereAndWhy(String text, String message) {
        assertEquals(message, fault(text == null ? "" : text.replace("\\n", "\n")));
    }

    @Test
    void knowsItsPlace() {
        SopFormatException thrown = assertThrows(SopFormatException.class, () -> read("0 1\n-1 x"));
        assertEquals("f.sop", thrown.file());
        assertEquals(2, thrown.line());
    }

    @Test
    void refusesEndlessInput() {
        InputStream blanks =
                new InputStream() {
                    @Override
                    public int read() {
                        return ' ';
                    }
                };
        SopFormatException thrown =
                assertThrows(SopFormatException.class, () -> SopFiles.read("blanks", blanks));
        assertEquals("blanks:1: the file is larger than 67108864 bytes", thrown.getMessage());
    }

    @Test
    void refusesEndlessWordsLinesAndRows() {
        assertTrue(fault("7".repeat(100_000)).startsWith("f.sop:1: expected a number, found '777"));
        assertEquals(
                "f.sop:1: the line is longer than 2000 characters", fault("A".repeat(100_000)));
        assertEquals(
                "f.sop:1: more than 2048 numbers in the first row", fault("0 ".repeat(100_000)));
    }

    @Test
    void refusesALargeFileUnread(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("large.sop");
        try (var channel =
                java.nio.channels.FileChannel.open(
                        file,
                        java.nio.file.StandardOpenOption.CREATE,
                        java.nio.file.StandardOpenOption.WRITE)) {
            channel.write(java.nio.ByteBuffer.wrap(new byte[] {'0'}), 200L << 20);
        }
        String message =
                assertThrows(SopFormatException.class, () -> SopFiles.read(file)).getMessage();
        assertEquals(file + ":1: the file has 209715201 bytes, more than 67108864", message);
        Files.delete(file);
    }

    @Test
    void neverFailsOtherwiseOnMutatedInput() throws IOException {
        long seed = 4_711;
        Random random = new Random(seed);
        String[] pieces = {
            "-1", "EOF", "NaN", "\n", ":", "99999999999", "-", "4", "\0", "é", "DIMENSION: 3\n", " "
        };
        for (int k = 0; k < 5_000; k++) {
            StringBuilder text = new StringBuilder(TSPLIB);
            for (int cuts = 1 + random.nextInt(4); cuts > 0; cuts--) {
                int from = random.nextInt(text.length());
                int to = Math.min(text.length(), from + random.nextInt(12));
                text.replace(from, to, pieces[random.nextInt(pieces.length)]);
            }
            try {
                read(text.toString());
            } catch (SopFormatException e) {
                assertTrue(e.getMessage().startsWith("f.sop:"), "seed " + seed + ", round " + k);
            }
        }
    }
}
