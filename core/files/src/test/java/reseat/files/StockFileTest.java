package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.model.BadInputException;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockSource;

/** The file that names a stock, and settings files in general. */
class StockFileTest {

    @TempDir private Path folder;

    @Test
    void readsSourceAndSettings() throws Exception {
        StockFile file =
                read(
                        """
                        format: reseat-stock/1
                        source: shelf
                        settings: {file: a b.txt, wait: 7}
                        """);

        assertEquals("shelf", file.source().id());
        assertEquals(Map.of("file", "a b.txt", "wait", "7"), file.settings());
        assertEquals(folder.toAbsolutePath(), file.folder());
        StockException e = assertThrows(StockException.class, file::open);
        assertEquals("{file=a b.txt, wait=7}", e.getMessage());
    }

    @Test
    void tellsAllThatIsWrongAtItsPlace() {
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () ->
                                read(
                                        """
                                        format: reseat-stock/1
                                        sourse: x
                                        source: shelf
                                        settings:
                                          wiat: 3
                                        """));
        List<String> lines = e.getMessage().lines().toList();
        assertEquals(3, lines.size(), e.getMessage());
        assertTrue(lines.get(0).endsWith("shelf needs \"file\" (Where it lies.)"), lines.get(0));
        assertTrue(lines.get(1).contains(":2:9: error: there is no setting \"sourse\". Did you"));
        assertTrue(lines.get(2).contains(":5:9: error: shelf has no setting \"wiat\". Did you"));
    }

    @Test
    void tellsWhichSortsThereAre() {
        BadInputException e =
                assertThrows(
                        BadInputException.class,
                        () -> read("format: reseat-stock/1\nsource: cupboard\n"));
        assertTrue(e.getMessage().contains("no kind of stock \"cupboard\". Known: shelf."));
        e = assertThrows(BadInputException.class, () -> read("[1, 2]\n"));
        assertTrue(e.getMessage().contains("expected settings: a name, a colon"), e.getMessage());
    }

    @Test
    void settingsKnowTheirPathsAndPlaces() throws Exception {
        Path path = folder.resolve("s.yaml");
        Files.writeString(path, "a: {b: [1, two], 'c.d': 'x:y'}\ne: |\n  one\n  two\nf:\n");

        SettingsFile file = SettingsFile.read(path);

        assertEquals(
                List.of("1", "two"),
                file.all("a", "b").stream().map(SettingsFile.Entry::text).toList());
        assertEquals("x:y", file.text("a", "c.d").orElseThrow());
        assertEquals(List.of("b", "c.d"), List.copyOf(file.below("a").keySet()));
        assertEquals("one\ntwo\n", file.text("e").orElseThrow());
        assertTrue(file.text("f").isEmpty());
        assertTrue(file.first("a", "b").orElseThrow().at().toString().endsWith("s.yaml:1:9"));
        assertEquals(1, file.unknown(List.of("a/*", "f")).size());
    }

    private StockFile read(String text) throws IOException, BadInputException {
        Path file = folder.resolve("stock.yaml");
        Files.writeString(file, text);
        return StockFile.read(file, List.of(new Shelf()));
    }

    private static final class Shelf implements StockSource {
        @Override
        public String id() {
            return "shelf";
        }

        @Override
        public String title() {
            return "Shelf";
        }

        @Override
        public List<Setting> settings() {
            return List.of(
                    new Setting("file", "Where it lies.", true),
                    new Setting("wait", "How long.", false));
        }

        @Override
        public Stock open(Map<String, String> settings, Path folder) throws StockException {
            throw new StockException(
                    StockException.Kind.UNREACHABLE, new java.util.TreeMap<>(settings).toString());
        }
    }
}
