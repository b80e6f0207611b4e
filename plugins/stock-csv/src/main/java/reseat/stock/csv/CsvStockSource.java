package reseat.stock.csv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import reseat.model.BadInputException;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockSource;

/** Opens spreadsheets. */
final class CsvStockSource implements StockSource {

    private static final int LONGEST_WAIT_S = 600;

    @Override
    public String id() {
        return "csv";
    }

    @Override
    public String title() {
        return "CSV spreadsheet";
    }

    @Override
    public List<Setting> settings() {
        return List.of(
                new Setting("file", "The spreadsheet, saved as CSV.", true),
                new Setting("mapping", "The file that maps the columns.", true),
                new Setting(
                        "journal",
                        "The journal of reservations (default: next to the spreadsheet).",
                        false),
                new Setting(
                        "wait",
                        "Longest time to wait for other programs, in seconds (default: 10).",
                        false));
    }

    @Override
    public Stock open(Map<String, String> settings, Path folder) throws StockException {
        Path file = path(folder, settings, "file");
        Path mapping = path(folder, settings, "mapping");
        Path journal =
                settings.containsKey("journal")
                        ? path(folder, settings, "journal")
                        : file.resolveSibling(file.getFileName() + ".reserved.jsonl");
        if (journal.equals(file)) {
            throw bad("the journal and the spreadsheet are the same file: " + file);
        }
        try {
            CsvStock stock =
                    new CsvStock(
                            new SheetFile(file, Columns.read(mapping)),
                            new Journal(journal),
                            new Turn(journal, wait(settings)));
            stock.items(); // errors in the files are reported now
            return stock;
        } catch (BadInputException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT, String.valueOf(e.getMessage()), e);
        }
    }

    private static Path path(Path folder, Map<String, String> settings, String name)
            throws StockException {
        String text = required(settings.get(name), name);
        try {
            Path path = folder.resolve(text).toAbsolutePath().normalize();
            Path parent = path.getParent();
            // one name per file, whatever path leads to it: it is the key of locks
            return parent != null && Files.isDirectory(parent)
                    ? parent.toRealPath().resolve(path.getFileName())
                    : path;
        } catch (IOException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT, "\"" + name + "\": " + e.getMessage(), e);
        } catch (InvalidPathException e) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "\"" + name + "\": \"" + text + "\" is an invalid path",
                    e);
        }
    }

    private static String required(@Nullable String text, String name) throws StockException {
        if (text == null || text.isBlank()) {
            throw bad("\"" + name + "\" is missing");
        }
        return text;
    }

    private static Duration wait(Map<String, String> settings) throws StockException {
        String text = Objects.requireNonNullElse(settings.get("wait"), "10");
        if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) > LONGEST_WAIT_S) {
            throw bad(
                    "\"wait\": found \""
                            + text
                            + "\", expected whole seconds, "
                            + LONGEST_WAIT_S
                            + " at most");
        }
        return Duration.ofSeconds(Integer.parseInt(text));
    }

    private static StockException bad(String message) {
        return new StockException(StockException.Kind.BAD_INPUT, message);
    }
}
