package reseat.console.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.model.Problem;

/**
 * 5,000 changed inputs for all readers, and the commands that take them; {@code
 * -Dreseat.fuzz.inputs=100000} takes more, {@code -Dreseat.fuzz.seed} begins with another number.
 */
class FuzzTest {

    @TempDir Path folder;

    @Test
    @Timeout(3600) // a guard against hanging, no measure
    void everyReaderAndCommandStandsEveryInput() throws Exception {
        long seed = Long.getLong("reseat.fuzz.seed", 1);
        int inputs = Integer.getInteger("reseat.fuzz.inputs", 5000);
        System.out.println("fuzz: inputs " + seed + " to " + (seed + inputs - 1));
        Fuzz fuzz = new Fuzz(folder, Path.of("../../samples"));
        for (int i = 0; i < inputs; i++) {
            fuzz.input(seed + i);
        }
        System.out.print(fuzz.summary());
    }

    @Test
    void whatChangesBeginWithIsSound() throws IOException {
        assertEquals(List.of(), new Fuzz(folder, Path.of("../../samples")).refusedAtFirst());
    }

    @Test
    void aHugeFileIsRefusedUnread() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(200L << 20);
        }
        assertEquals(List.of("the file is larger than 16 MiB"), messages(file));
    }

    /** Aliases within aliases: a few hundred bytes that stand for ten thousand million values. */
    @Test
    @Timeout(60) // a guard against hanging, no measure
    void aBombIsRefused() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(10)).append("x]\n");
        }
        Path file = Files.writeString(folder.resolve("bomb.yaml"), bomb.toString());
        List<String> messages = messages(file);
        assertEquals(1, messages.size());
        assertTrue(messages.get(0).contains("aliases counted each time"), messages.get(0));
    }

    private static List<String> messages(Path file) {
        return DeviceFiles.read(file, Optional.empty(), List.of()).problems().stream()
                .map(Problem::message)
                .toList();
    }
}
