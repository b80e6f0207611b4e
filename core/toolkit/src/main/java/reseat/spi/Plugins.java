package reseat.spi;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.fasten.FastenerTables;
import reseat.model.BadInputException;
import reseat.stock.StockSource;

/**
 * The plugins that were loaded, and those that were not.
 *
 * @param loaded the plugins: those included in Reseat first, then folder by folder
 * @param refused the plugins that were not loaded, and why
 */
public record Plugins(List<Loaded> loaded, List<Refused> refused) {

    public Plugins {
        loaded = List.copyOf(loaded);
        refused = List.copyOf(refused);
    }

    /**
     * A plugin that was loaded.
     *
     * @param plugin what it contributes; calling it is cheap and never fails
     * @param from its jar or folder; empty if it ships with Reseat
     * @param data whether it is a folder of data, without a jar
     */
    public record Loaded(Plugin plugin, Optional<Path> from, boolean data) {}

    /**
     * A plugin that was not loaded.
     *
     * @param name its id, or the name of its jar or folder where the id is not known
     * @param from its jar or folder; empty if it is included in Reseat
     * @param why the reason, as the end of a sentence that begins with the name
     */
    public record Refused(String name, Optional<Path> from, String why) {

        /** Returns one line to display. */
        @Override
        public String toString() {
            return "plugin " + name + from.map(p -> " (" + p + ")").orElse("") + ": " + why;
        }
    }

    /** Creates a list of plugins. */
    public static Plugins of(List<Plugin> plugins) {
        return new Plugins(
                plugins.stream()
                        .map(plugin -> new Loaded(plugin, Optional.empty(), false))
                        .toList(),
                List.of());
    }

    /** Returns the plugins. */
    public List<Plugin> plugins() {
        return loaded.stream().map(Loaded::plugin).toList();
    }

    /** Returns the families of devices of all plugins. */
    public List<DeviceFamily> families() {
        return all(Plugin::families);
    }

    /** Returns the family of an id. */
    public Optional<DeviceFamily> family(String id) {
        return families().stream().filter(family -> family.id().equals(id)).findFirst();
    }

    /** Returns the checks of all plugins; checks of families apply only to their devices. */
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>(all(Plugin::checks));
        for (DeviceFamily family : families()) {
            family.checks().forEach(check -> checks.add(new FamilyCheck(family.id(), check)));
        }
        return List.copyOf(checks);
    }

    /** Returns the kinds of stock of all plugins. */
    public List<StockSource> stockSources() {
        return all(Plugin::stockSources);
    }

    /** Returns the cost tables of all plugins. */
    public List<CostTable> costTables() {
        return all(Plugin::costTables);
    }

    /** Returns the outputs of all plugins. */
    public List<Output> outputs() {
        return all(Plugin::outputs);
    }

    /** Returns the assessment methods of all plugins. */
    public List<Assessment> assessments() {
        return all(Plugin::assessments);
    }

    /** Returns the commands of all plugins. */
    public List<Command> commands() {
        return all(Plugin::commands);
    }

    /**
     * Returns the standard fastener tables with the rows of all families.
     *
     * @throws IllegalArgumentException if a row is invalid; loaded plugins have none
     */
    public FastenerTables fastenerTables() {
        FastenerTables tables = FastenerTables.standard();
        for (DeviceFamily family : families()) {
            for (Map.Entry<String, String> rows : new TreeMap<>(family.fastenerRows()).entrySet()) {
                try {
                    tables = tables.withRows(rows.getKey(), rows.getValue());
                } catch (BadInputException e) {
                    throw new IllegalArgumentException(
                            "family " + family.id() + ": " + e.getMessage(), e);
                }
            }
        }
        return tables;
    }

    private record FamilyCheck(String family, Check check) implements Check {

        @Override
        public CheckInfo info() {
            return check.info();
        }

        @Override
        public List<Finding> run(CheckInput input) {
            return input.device().family().equals(family) ? check.run(input) : List.of();
        }
    }

    private <T> List<T> all(Function<Plugin, List<T>> what) {
        return loaded.stream().flatMap(each -> what.apply(each.plugin()).stream()).toList();
    }
}
