package reseat.spi;

import java.util.List;
import reseat.check.Check;
import reseat.stock.StockSource;

/**
 * What a plugin adds to Reseat. A plugin provides one as a service; it adds what it overrides.
 *
 * <p>Every method is called once, from one thread, when the plugin is loaded; all of them together
 * have a few seconds. What they return is used from several threads. A plugin that throws, returns
 * null or an id that is taken already is left out as a whole.
 */
public interface Plugin {

    /** Returns what the plugin says of itself; see {@link PluginInfo#of}. */
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

    /** Returns its tables of times and set-ups. */
    default List<CostTable> costTables() {
        return List.of();
    }

    /** Returns its ways to write a plan. */
    default List<Output> outputs() {
        return List.of();
    }

    /** Returns its methods to assess a device. */
    default List<Assessment> assessments() {
        return List.of();
    }

    /** Returns its commands. */
    default List<Command> commands() {
        return List.of();
    }
}
