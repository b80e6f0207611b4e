package reseat.spi;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import java.util.function.Function;
import reseat.check.Check;
import reseat.stock.StockSource;

/**
 * The plugins that were loaded.
 *
 * @param plugins the plugins, in order of their ids
 */
public record Plugins(List<Plugin> plugins) {

    public Plugins {
        plugins = List.copyOf(plugins);
    }

    /** Loads the plugins that ship with Reseat. */
    public static Plugins bundled() {
        List<Plugin> found = new ArrayList<>();
        ServiceLoader.load(Plugin.class, Plugins.class.getClassLoader()).forEach(found::add);
        found.sort((a, b) -> a.info().id().compareTo(b.info().id()));
        return new Plugins(found);
    }

    /** Returns the families of devices of all plugins. */
    public List<DeviceFamily> families() {
        return all(Plugin::families);
    }

    /** Returns the checks of all plugins. */
    public List<Check> checks() {
        return all(Plugin::checks);
    }

    /** Returns the sorts of stock of all plugins. */
    public List<StockSource> stockSources() {
        return all(Plugin::stockSources);
    }

    private <T> List<T> all(Function<Plugin, List<T>> what) {
        return plugins.stream().flatMap(plugin -> what.apply(plugin).stream()).toList();
    }
}
