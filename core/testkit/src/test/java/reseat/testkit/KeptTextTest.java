package reseat.testkit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptTextTest {

    @TempDir Path folder;

    @Test
    void acceptsEqualTextWhateverTheLineEnds() throws IOException {
        Path file = Files.writeString(folder.resolve("kept.txt"), "one\r\ntwo\r\n", UTF_8);

        KeptText.matches(file, "one\ntwo\n");
    }

    @Test
    void namesTheFirstLineThatDiffers() throws IOException {
        Path file = Files.writeString(folder.resolve("kept.txt"), "one\ntwo\n", UTF_8);

        AssertionError error =
                assertThrows(AssertionError.class, () -> KeptText.matches(file, "one\ntoo\n"));

        assertEquals(
                file
                        + ":2: kept <two> but got <too>; if the new text is right,"
                        + " run once with -Dreseat.keep=true",
                error.getMessage());
    }

    @Test
    void saysHowToMakeAMissingFile() {
        Path file = folder.resolve("missing.txt");

        AssertionError error =
                assertThrows(AssertionError.class, () -> KeptText.matches(file, "text"));

        assertEquals(
                "there is no " + file + " yet; run once with -Dreseat.keep=true",
                error.getMessage());
    }
}
