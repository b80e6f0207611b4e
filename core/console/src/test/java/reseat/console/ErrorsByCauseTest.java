package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One wrong fact of a whole device is one error, at that fact. */
class ErrorsByCauseTest {

    private static final Path QUILL = Path.of("../../samples/quill");

    @TempDir private Path folder;

    /** Changes one line of the sample and returns what is said about it. */
    private String errors(String line, String instead) throws IOException {
        Files.copy(QUILL.resolve("quill-seats.csv"), folder.resolve("quill-seats.csv"));
        String text = Files.readString(QUILL.resolve("quill.yaml"));
        assertTrue(text.contains(line), line);
        Path file = folder.resolve("quill.yaml");
        Files.writeString(file, text.replace(line, instead));
        Ran ran = Ran.reseat("facts", file.toString());
        assertEquals(2, ran.code());
        return ran.err().replace(file.toString(), "quill.yaml");
    }

    @Test
    void aWrongCoverOfTheScrewsOfTheCover() throws IOException {
        String err =
                errors(
                        "holds: [bottom-cover, chassis], screw: m2x4}",
                        "holds: [bottom-cover, chassis], under: [mainboard], screw: m2x4}");

        assertEquals(1, err.lines().count(), err);
        assertTrue(err.contains("is hidden by mainboard"), err);
        assertTrue(err.contains(" that follow: "), err);
        assertTrue(
                err.endsWith(
                        "Without \"cover-screw.a is hidden by mainboard\" everything would come"
                                + " apart\n"),
                err);
    }

    @Test
    void aPartWhoseEntryHasAnotherName() throws IOException {
        String err = errors("\n  cell-sheet: {name:", "\n  cell-sheets: {name:");

        assertEquals(
                1,
                err.lines()
                        .filter(line -> line.contains("there is no part \"cell-sheet\""))
                        .count(),
                err);
        assertTrue(err.contains("Did you mean \"cell-sheets\"? The same at "), err);
    }
}
