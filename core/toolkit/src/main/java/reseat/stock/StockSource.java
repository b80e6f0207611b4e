package reseat.stock;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** A kind of stock that a plugin can open: a spreadsheet, a database. */
public interface StockSource {

    /** Returns the id that configuration files name; lower case with hyphens. */
    String id();

    /** Returns its display name ("CSV spreadsheet"). */
    String title();

    /** Returns its settings, for help texts and for messages about unknown settings. */
    List<Setting> settings();

    /**
     * Opens a stock.
     *
     * @param settings values by name of a setting; names are those of {@link #settings}
     * @param folder the folder against which relative paths in settings are resolved
     * @throws StockException if it cannot be opened
     */
    Stock open(Map<String, String> settings, Path folder) throws StockException;

    /**
     * A setting.
     *
     * @param name its name, lower case with hyphens
     * @param says description, as a sentence
     * @param required whether it is required to open a stock
     */
    record Setting(String name, String says, boolean required) {}
}
