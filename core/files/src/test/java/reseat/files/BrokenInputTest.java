package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.model.Problem;

/**
 * However a file is broken, reading it ends with located problems or a device, never with an
 * exception.
 */
class BrokenInputTest {

    private static final int FILES = 400;

    /** Words that mean something to a parser or to the reader. */
    private static final List<String> WORDS =
            List.of(
                    "null",
                    "{}",
                    "[]",
                    "&a ",
                    "*a",
                    "!!binary ",
                    ".inf",
                    "-1",
                    "1e400",
                    "\"",
                    "'",
                    ": ",
                    "- ",
                    "? ",
                    "|\n",
                    "%",
                    "\t",
                    "lid",
                    "tray",
                    "ways: ",
                    "seats: ",
                    "seat: ",
                    "bond: ",
                    "under: ",
                    "\u0000",
                    "\uFEFF",
                    "9999999999999999999");

    @TempDir Path folder;

    @Test
    void yaml() throws IOException {
        breaks(TinDevice.TIN.getBytes(StandardCharsets.UTF_8), "tin.yaml");
    }

    @Test
    void json() throws IOException {
        breaks(
                ResolvedJson.write(TinDevice.device(TinDevice.tin(folder, "id: tin", "id: tin")))
                        .getBytes(StandardCharsets.UTF_8),
                "tin.json");
    }

    @Test
    void seatTables() throws IOException {
        Path file = TinDevice.tin(folder, "id: tin", "id: tin\nseatTable: s.csv");
        byte[] sound =
                "joint,seat,x,y,clamped,behind\nlid-screw,c,1,2,\"1,5\",cell 2; board 3\nlid-screw,d,3,4,,\n"
                        .getBytes(StandardCharsets.UTF_8);
        for (int seed = 0; seed < FILES; seed++) {
            Files.write(folder.resolve("s.csv"), mutate(sound, new Random(seed)));
            check(file, seed);
        }
    }

    private void breaks(byte[] sound, String name) throws IOException {
        for (int seed = 0; seed < FILES; seed++) {
            check(Files.write(folder.resolve(name), mutate(sound, new Random(seed))), seed);
        }
    }

    private static void check(Path file, int seed) {
        Reading reading;
        try {
            Optional<String> variant = seed % 3 == 0 ? Optional.of("glued") : Optional.empty();
            reading = DeviceFiles.read(file, variant, List.of());
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError("seed " + seed, e);
        }
        boolean failed = reading.problems().stream().anyMatch(Problem::isError);
        assertEquals(failed, reading.device().isEmpty(), () -> "seed " + seed);
        for (Problem problem : reading.problems()) {
            assertFalse(problem.message().isBlank(), () -> "seed " + seed);
            assertFalse(problem.message().contains("Exception"), problem::toString);
        }
    }

    private static byte[] mutate(byte[] sound, Random random) {
        byte[] bytes = sound.clone();
        for (int i = random.nextInt(3); i >= 0; i--) {
            int from = random.nextInt(bytes.length + 1);
            int to = Math.min(bytes.length, from + random.nextInt(20));
            bytes =
                    switch (random.nextInt(6)) {
                        case 0 -> Arrays.copyOf(bytes, from);
                        case 1 -> splice(bytes, from, to, new byte[0]);
                        case 2 -> splice(bytes, from, from, Arrays.copyOfRange(bytes, from, to));
                        case 3 -> {
                            byte[] garbage = new byte[random.nextInt(5)];
                            random.nextBytes(garbage);
                            yield splice(bytes, from, to, garbage);
                        }
                        case 4 -> {
                            String text = new String(bytes, StandardCharsets.UTF_8);
                            List<String> lines = new java.util.ArrayList<>(text.lines().toList());
                            if (!lines.isEmpty()) {
                                lines.add(
                                        random.nextInt(lines.size()),
                                        lines.get(random.nextInt(lines.size())));
                            }
                            yield String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
                        }
                        default ->
                                splice(
                                        bytes,
                                        from,
                                        to,
                                        WORDS.get(random.nextInt(WORDS.size()))
                                                .getBytes(StandardCharsets.UTF_8));
                    };
        }
        return bytes;
    }

    private static byte[] splice(byte[] bytes, int from, int to, byte[] put) {
        byte[] result = new byte[bytes.length - (to - from) + put.length];
        System.arraycopy(bytes, 0, result, 0, from);
        System.arraycopy(put, 0, result, from, put.length);
        System.arraycopy(bytes, to, result, from + put.length, bytes.length - to);
        return result;
    }
}
