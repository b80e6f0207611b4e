package reseat.stock.csv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import reseat.stock.SettlingStock;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.testkit.StockContract;

/** A spreadsheet in a folder of its own. */
final class CsvShop implements StockContract.Shop {

    private static final String MAPPING =
            """
            columns:
              id: Nr
              kind: Art
              name: Was
              serves: Passt
              quantity: Menge
              unit: Einheit
              lot: Charge
              expires: Haltbar bis
              place: Fach
            decimal: ","
            dates: [dd.MM.yyyy, MM/yyyy]
            """;

    private final Path root;
    private int number;

    CsvShop(Path root) {
        this.root = root;
    }

    Path folder() {
        return root.resolve("shop" + number);
    }

    Path sheet() {
        return folder().resolve("lager.csv");
    }

    Path journal() {
        return folder().resolve("lager.csv.reserved.jsonl");
    }

    @Override
    public SettlingStock fresh(List<StockItem> lines) throws IOException, StockException {
        number++;
        Files.createDirectories(folder());
        Files.writeString(folder().resolve("mapping.yaml"), MAPPING);
        save(lines);
        return again();
    }

    @Override
    public SettlingStock again() throws StockException {
        return open(folder());
    }

    static SettlingStock open(Path folder) throws StockException {
        Stock stock =
                new CsvStockSource()
                        .open(
                                Map.of(
                                        "file",
                                        "lager.csv",
                                        "mapping",
                                        "mapping.yaml",
                                        "wait",
                                        "60"),
                                folder);
        return (SettlingStock) stock;
    }

    /** Saves as spreadsheet programs do: a new file takes the place of the old one. */
    void save(List<StockItem> lines) throws IOException {
        StringBuilder text =
                new StringBuilder(
                        "\uFEFFNr;Art;Was;Passt;Menge;Einheit;Charge;Haltbar bis;Fach\r\n");
        for (StockItem line : lines) {
            text.append(
                    String.join(
                            ";",
                            line.id(),
                            line.kind().name().toLowerCase(java.util.Locale.ROOT),
                            "\"" + line.name() + "\"",
                            String.join("|", line.serves()),
                            line.onHand().toPlainString().replace('.', ','),
                            line.unit(),
                            line.lot().orElse(""),
                            line.expires().map(CsvShop::german).orElse(""),
                            line.place().orElse("")));
            text.append("\r\n");
        }
        Path written = folder().resolve("saving.tmp");
        Files.writeString(written, text);
        Files.move(written, sheet(), StandardCopyOption.ATOMIC_MOVE);
    }

    private static String german(java.time.LocalDate day) {
        return String.format(
                java.util.Locale.ROOT,
                "%02d.%02d.%d",
                day.getDayOfMonth(),
                day.getMonthValue(),
                day.getYear());
    }
}
