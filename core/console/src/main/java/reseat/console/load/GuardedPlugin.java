package reseat.console.load;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.spi.Contributions;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Plugin;
import reseat.spi.Plugins;

/** Plugins whose checks, and those of their families, run under guard. */
final class GuardedPlugin {

    private GuardedPlugin() {}

    private static Plugin of(Plugins.Loaded loaded, Guard guard) {
        String whose = "the plugin " + OurPlugins.name(loaded);
        Plugin plugin = loaded.plugin();
        return new Contributions(
                plugin.info(),
                plugin.families().stream()
                        .<DeviceFamily>map(
                                each -> new Family(each, guarded(each.checks(), whose, guard)))
                        .toList(),
                guarded(plugin.checks(), whose, guard),
                plugin.stockSources(),
                plugin.costTables(),
                plugin.outputs(),
                plugin.assessments(),
                plugin.commands());
    }

    /**
     * Returns the plugins, with guards for those in folders. Those that ship need none: a rule of
     * the build forbids them to end the program, and each guarded call costs a change of threads.
     */
    static Plugins guard(Plugins plugins, Guard guard) {
        return new Plugins(
                plugins.loaded().stream()
                        .map(
                                each ->
                                        each.from().isEmpty()
                                                ? each
                                                : new Plugins.Loaded(
                                                        of(each, guard), each.from(), each.data()))
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
}
