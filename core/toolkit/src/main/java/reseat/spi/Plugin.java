package reseat.spi;

import java.util.List;
import reseat.check.Check;
import reseat.stock.StockSource;

/**
 * What a plugin adds to Reseat. A plugin provides one as a service; it adds what it overrides.
 *
 * <p>Every method is called once, from one thread, when the plugin is loaded. What it returns is
 * used from several threads.
 */
public interface Plugin {

    /** Returns what the plugin says of itself. */
    PluginInfo info();

    /** Returns its families of devices. */
    default List<DeviceFamily> families() {
        return List.of();
    }

    /** Returns its checks. */
    default List<Check> checks() {
        return List.of();
    }

    /** Returns its sorts of stock. */
    default List<StockSource> stockSources() {
        return List.of();
    }
}
