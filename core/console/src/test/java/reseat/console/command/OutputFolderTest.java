package reseat.console.command;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.spi.Output;

/** What outputs write into a folder, and what they leave alone. */
class OutputFolderTest {

    @TempDir private Path temp;

    private Path folder() {
        return temp.resolve("sheets");
    }

    private void write(boolean force, String... namesAndTexts) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            files.put(namesAndTexts[i], namesAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        new OutputFolder(folder()).write(files, force);
    }

    private String text(String name) throws IOException {
        return Files.readString(folder().resolve(name));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder())) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void makesTheFolderAndListsWhatItWrote() throws IOException {
        write(false, "a.svg", "one", "b.svg", "two");

        assertEquals("one", text("a.svg"));
        assertEquals("two", text("b.svg"));
        assertEquals(List.of(OutputFolder.LIST, "a.svg", "b.svg"), names());
        assertEquals(2, text(OutputFolder.LIST).lines().count());
    }

    @Test
    void overwritesWhatItWroteBefore() throws IOException {
        write(false, "a.svg", "one", "b.svg", "two");

        write(false, "a.svg", "three");

        assertEquals("three", text("a.svg"));
        assertEquals("two", text("b.svg"));
        write(false, "b.svg", "four");
        assertEquals("four", text("b.svg"));
    }

    @Test
    void leavesAloneWhatItDidNotWrite() throws IOException {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("b.svg"), "somebody's");

        BadInput refused =
                assertThrows(BadInput.class, () -> write(false, "a.svg", "one", "b.svg", "two"));

        assertTrue(refused.getMessage().contains("has b.svg, which"), refused.getMessage());
        assertEquals("somebody's", text("b.svg"));
        assertEquals(List.of("b.svg"), names());
        write(true, "a.svg", "one", "b.svg", "two");
        assertEquals("two", text("b.svg"));
    }

    @Test
    void leavesAloneWhatSomebodyChanged() throws IOException {
        write(false, "a.svg", "one");
        Files.writeString(folder().resolve("a.svg"), "one, with a note");

        assertThrows(BadInput.class, () -> write(false, "a.svg", "two"));

        assertEquals("one, with a note", text("a.svg"));
    }

    @Test
    void takesAFileThatHoldsTheSameAlready() throws IOException {
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("a.svg"), "one");

        write(false, "a.svg", "one");
        write(false, "a.svg", "two");

        assertEquals("two", text("a.svg"));
    }

    @Test
    void refusesFoldersInPlaceOfFilesAndFilesInPlaceOfFolders() throws IOException {
        Files.createDirectories(folder().resolve("a.svg"));

        assertThrows(BadInput.class, () -> write(true, "a.svg", "one"));
        Files.delete(folder().resolve("a.svg"));
        Files.delete(folder());
        Files.writeString(folder(), "a file");
        BadInput refused = assertThrows(BadInput.class, () -> write(true, "a.svg", "one"));
        assertTrue(refused.getMessage().endsWith("is a file, expected a folder."));
    }

    @Test
    void aFileThatCannotBeWrittenStaysAsItWas() throws IOException {
        Path file = temp.resolve("no-such-folder").resolve("sheet.html");

        assertThrows(IOException.class, () -> OutputFolder.replace(file, new byte[] {1}));

        Path link = temp.resolve("link");
        Path real = Files.writeString(temp.resolve("real"), "before");
        Files.createSymbolicLink(link, real);
        OutputFolder.replace(link, "after".getBytes(StandardCharsets.UTF_8));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("after", Files.readString(real));
    }

    @Test
    void severalFilesNeedAFolder() {
        Output several =
                new Output() {
                    @Override
                    public String id() {
                        return "drawings";
                    }

                    @Override
                    public String title() {
                        return "drawings";
                    }

                    @Override
                    public String mediaType() {
                        return "image/svg+xml";
                    }

                    @Override
                    public Files files() {
                        return Files.SEVERAL;
                    }

                    @Override
                    public void write(Content content, Place place) {}
                };

        BadInput refused =
                assertThrows(BadInput.class, () -> PluginArgs.refuse(several, false, false));
        assertEquals(
                "reseat: the output drawings writes several files; give --into FOLDER.",
                refused.getMessage());
        assertThrows(BadInput.class, () -> PluginArgs.refuse(several, true, true));
        assertDoesNotThrow(() -> PluginArgs.refuse(several, false, true));
    }
}
