package reseat.console.load;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.spi.Assessment;
import reseat.spi.Command;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Output;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.spi.Plugins;
import reseat.stock.StockSource;

/** A plugin whose checks, and those of its families, run under guard. */
final class GuardedPlugin implements Plugin {

    private final Plugin plugin;
    private final List<DeviceFamily> families;
    private final List<Check> checks;

    private GuardedPlugin(Plugins.Loaded loaded, Guard guard) {
        String whose = "the plugin " + OurPlugins.name(loaded);
        plugin = loaded.plugin();
        checks = guarded(plugin.checks(), whose, guard);
        families =
                plugin.families().stream()
                        .<DeviceFamily>map(
                                each -> new Family(each, guarded(each.checks(), whose, guard)))
                        .toList();
    }

    /** Returns the plugins, with guards for those that do not ship with the program. */
    static Plugins guard(Plugins plugins, Guard guard) {
        return new Plugins(
                plugins.loaded().stream()
                        .map(
                                each ->
                                        each.from().isEmpty()
                                                ? each
                                                : new Plugins.Loaded(
                                                        new GuardedPlugin(each, guard),
                                                        each.from(),
                                                        each.data()))
                        .toList(),
                plugins.refused());
    }

    private static List<Check> guarded(List<Check> checks, String whose, Guard guard) {
        return checks.stream().<Check>map(each -> new Guarded(each, whose, guard)).toList();
    }

    private record Guarded(Check check, String whose, Guard guard) implements Check {

        @Override
        public CheckInfo info() {
            return guard.<CheckInfo, RuntimeException>run(whose, check::info);
        }

        @Override
        public List<Finding> run(CheckInput input) {
            return guard.<List<Finding>, RuntimeException>run(whose, () -> check.run(input));
        }
    }

    private record Family(DeviceFamily family, List<Check> checks) implements DeviceFamily {

        @Override
        public String id() {
            return family.id();
        }

        @Override
        public String title() {
            return family.title();
        }

        @Override
        public InputStream openDefaults() throws IOException {
            return family.openDefaults();
        }

        @Override
        public Map<String, String> fastenerRows() {
            return family.fastenerRows();
        }

        @Override
        public List<DeviceTemplate> templates() {
            return family.templates();
        }
    }

    @Override
    public PluginInfo info() {
        return plugin.info();
    }

    @Override
    public List<DeviceFamily> families() {
        return families;
    }

    @Override
    public List<Check> checks() {
        return checks;
    }

    @Override
    public List<StockSource> stockSources() {
        return plugin.stockSources();
    }

    @Override
    public List<CostTable> costTables() {
        return plugin.costTables();
    }

    @Override
    public List<Output> outputs() {
        return plugin.outputs();
    }

    @Override
    public List<Assessment> assessments() {
        return plugin.assessments();
    }

    @Override
    public List<Command> commands() {
        return plugin.commands();
    }
}
