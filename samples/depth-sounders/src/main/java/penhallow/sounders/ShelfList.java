package penhallow.sounders;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;
import reseat.stock.StockSource;

/** A text file, printed for the shelf: {@code id | kind | name | serves | on hand | unit}. */
final class ShelfList implements StockSource {

    @Override
    public String id() {
        return "shelf-list";
    }

    @Override
    public String title() {
        return "list at the shelf";
    }

    @Override
    public List<Setting> settings() {
        return List.of(new Setting("file", "The list, a text file.", true));
    }

    @Override
    public Stock open(Map<String, String> settings, Path folder) throws StockException {
        String file = settings.get("file");
        if (file == null) {
            throw new StockException(
                    StockException.Kind.BAD_INPUT, "\"file\" is missing: the path of the list");
        }
        try {
            List<StockItem> items = new ArrayList<>();
            for (String line : Files.readAllLines(folder.resolve(file))) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    items.add(item(line));
                }
            }
            return new Shelf(List.copyOf(items));
        } catch (IOException | IllegalArgumentException e) {
            throw new StockException(StockException.Kind.BAD_INPUT, file + ": " + e.getMessage(), e);
        }
    }

    private static StockItem item(String line) {
        String[] cells = line.split("\\s*\\|\\s*");
        if (cells.length != 6) {
            throw new IllegalArgumentException("expected six cells, found \"" + line + "\"");
        }
        return new StockItem(
                cells[0].strip(),
                StockItem.Kind.valueOf(cells[1].toUpperCase(Locale.ROOT)),
                cells[2],
                List.of(cells[3].split("\\s*,\\s*")),
                new BigDecimal(cells[4]),
                BigDecimal.ZERO,
                cells[5].strip(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Lists what is in stock. Refuses reservations, because the list is on paper. */
    private record Shelf(List<StockItem> items) implements Stock {

        @Override
        public Reservation reserve(Reservation.Request request) throws StockException {
            throw new StockException(
                    StockException.Kind.BAD_INPUT,
                    "a paper list cannot be reserved from; write down by hand what you take");
        }

        @Override
        public Reservation use(String reservation) throws StockException {
            throw unknown(reservation);
        }

        @Override
        public Reservation release(String reservation) throws StockException {
            throw unknown(reservation);
        }

        @Override
        public Optional<Reservation> reservation(String id) {
            return Optional.empty();
        }

        @Override
        public List<Reservation> open() {
            return List.of();
        }

        @Override
        public void close() {}

        private static StockException unknown(String reservation) {
            return new StockException(
                    StockException.Kind.UNKNOWN, "nothing is reserved as " + reservation);
        }
    }
}
