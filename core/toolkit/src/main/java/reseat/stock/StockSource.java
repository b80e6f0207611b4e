package reseat.stock;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A sort of stock that a plugin can open: a spreadsheet, a database. */
public interface StockSource {

    /** Returns the id that configuration files name; lower case with hyphens. */
    String id();

    /** Returns what people call it ("CSV spreadsheet"). */
    String title();

    /** Returns what can be set, for help texts and for messages about unknown settings. */
    List<Setting> settings();

    /**
     * Opens a stock.
     *
     * @param settings values by name of a setting; names are those of {@link #settings}
     * @param folder the folder that relative paths in settings are meant from
     * @throws StockException if it cannot be opened
     */
    Stock open(Map<String, String> settings, Path folder) throws StockException;

    /**
     * Something that can be set.
     *
     * @param name its name, lower case with hyphens
     * @param says what it does, as a sentence
     * @param required whether a stock cannot be opened without it
     */
    record Setting(String name, String says, boolean required) {}
}
