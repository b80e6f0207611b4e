package reseat.spi;

import java.util.List;
import reseat.check.Check;
import reseat.stock.StockSource;

/**
 * The contributions of a plugin, provided as a service. A plugin overrides the methods for what it
 * contributes.
 *
 * <p>Every method is called once, from one thread, when the plugin is loaded; all calls together
 * must finish within a few seconds. The returned objects are used from several threads. A plugin
 * that throws, or returns null or an id already in use, is not loaded at all.
 */
public interface Plugin {

    /** Returns the description of the plugin; see {@link PluginInfo#of}. */
    PluginInfo info();

    /** Returns its families of devices. */
    default List<DeviceFamily> families() {
        return List.of();
    }

    /** Returns its checks. */
    default List<Check> checks() {
        return List.of();
    }

    /** Returns its kinds of stock. */
    default List<StockSource> stockSources() {
        return List.of();
    }

    /** Returns its cost tables. */
    default List<CostTable> costTables() {
        return List.of();
    }

    /** Returns its outputs. */
    default List<Output> outputs() {
        return List.of();
    }

    /** Returns its assessment methods. */
    default List<Assessment> assessments() {
        return List.of();
    }

    /** Returns its commands. */
    default List<Command> commands() {
        return List.of();
    }
}
