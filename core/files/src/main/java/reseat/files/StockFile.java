package reseat.files;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import reseat.internal.files.SettingsReader;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockSource;
import reseat.text.Nearest;

/**
 * The file that describes a shop's stock: its kind and settings. See core/docs/stock.md.
 *
 * @param source the kind of stock
 * @param settings the settings with which it is opened
 * @param folder the folder against which relative paths in settings are resolved
 */
public record StockFile(StockSource source, Map<String, String> settings, Path folder) {

    private static final String FORMAT = "reseat-stock/1";

    public StockFile {
        settings = Map.copyOf(settings);
    }

    /**
     * Reads a file.
     *
     * @param sources the sorts of stock that it may name
     * @throws BadInputException with all problems if it cannot be used
     */
    public static StockFile read(Path file, List<StockSource> sources) throws BadInputException {
        SettingsFile read = SettingsFile.read(file);
        List<Problem> problems =
                new ArrayList<>(read.unknown(List.of("format", "source", "settings/*")));
        Origin whole = new Origin(read.file(), 0, 0);
        if (!read.text("format").equals(Optional.of(FORMAT))) {
            problems.add(
                    Problem.error(
                            read.first("format").map(SettingsFile.Entry::at).orElse(whole),
                            "expected \"format: " + FORMAT + "\""));
        }
        List<String> ids = sources.stream().map(StockSource::id).sorted().toList();
        String wanted = read.text("source").orElse("");
        Optional<StockSource> source =
                sources.stream().filter(each -> each.id().equals(wanted)).findFirst();
        Map<String, String> settings = new LinkedHashMap<>();
        if (source.isEmpty()) {
            problems.add(
                    Problem.error(
                            read.first("source").map(SettingsFile.Entry::at).orElse(whole),
                            (wanted.isEmpty()
                                            ? "\"source\" is missing: it names the kind of stock"
                                            : "there is no kind of stock "
                                                    + SettingsReader.quoted(wanted))
                                    + "."
                                    + Nearest.question(wanted, ids)
                                    + " Known: "
                                    + (ids.isEmpty() ? "none" : String.join(", ", ids))
                                    + "."));
        } else {
            settings.putAll(settings(read, source.get(), problems));
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        Path folder = file.toAbsolutePath().normalize().getParent();
        return new StockFile(source.orElseThrow(), settings, folder == null ? Path.of("") : folder);
    }

    private static Map<String, String> settings(
            SettingsFile read, StockSource source, List<Problem> problems) {
        Map<String, String> settings = new LinkedHashMap<>();
        List<String> names = source.settings().stream().map(StockSource.Setting::name).toList();
        read.below("settings")
                .forEach(
                        (name, entry) -> {
                            if (names.contains(name)) {
                                settings.put(name, entry.text());
                            } else {
                                problems.add(
                                        Problem.error(
                                                entry.at(),
                                                source.id()
                                                        + " has no setting "
                                                        + SettingsReader.quoted(name)
                                                        + "."
                                                        + SettingsReader.hint(name, names)));
                            }
                        });
        String missing =
                source.settings().stream()
                        .filter(setting -> setting.required())
                        .filter(setting -> !settings.containsKey(setting.name()))
                        .map(setting -> "\"" + setting.name() + "\" (" + setting.says() + ")")
                        .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            problems.add(
                    Problem.error(
                            new Origin(read.file(), 0, 0), source.id() + " needs " + missing));
        }
        return settings;
    }

    /** Opens the stock. */
    public Stock open() throws StockException {
        return source.open(settings, folder);
    }

    /**
     * Opens the stock for a command, and prints what it notes on opening.
     *
     * @param err gets a line for each note
     */
    public Stock open(PrintWriter err) throws StockException {
        Stock stock = open();
        stock.openingNotes().forEach(note -> err.println("reseat: " + note + "."));
        err.flush();
        return stock;
    }

    /** Returns what a command prints if a stock refuses something. */
    public static String message(StockException refusal) {
        String message = String.valueOf(refusal.getMessage());
        // errors of a file already carry their locations, one per line
        return message.contains(": error: ") ? message : "reseat: " + message + ".";
    }
}
