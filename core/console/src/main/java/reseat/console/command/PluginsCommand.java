package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.spi.Plugins;
import reseat.text.JsonText;

/** Lists the plugins, what each contributes, and which were left out. */
@Command(
        name = "plugins",
        description = "List the plugins: what each contributes, and why any was left out.",
        customSynopsis = "reseat plugins [ID] [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat plugins",
            "  reseat plugins slate",
            "",
            "A plugin is a jar, a folder with its jars, or a folder with the data of a family (family.ini).",
            "It lies in a folder that RESEAT_PLUGINS names, else in the folder plugins of this program;",
            "or in ~/.local/share/reseat/plugins.",
            "Exit code 1: a plugin was left out. How to write one: core/docs/first-plugin.md."
        })
final class PluginsCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            index = "0",
            paramLabel = "ID",
            description = "Id of a plugin (default: all plugins).")
    private @Nullable String id;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Plugins plugins = OurPlugins.untold();
        List<Plugins.Loaded> loaded =
                plugins.loaded().stream()
                        .filter(each -> id == null || each.plugin().info().id().equals(id))
                        .toList();
        List<Plugins.Refused> refused =
                plugins.refused().stream()
                        .filter(each -> id == null || each.name().equals(id))
                        .toList();
        if (id != null && loaded.isEmpty() && refused.isEmpty()) {
            throw DeviceArgs.unknown(
                    "plugin",
                    id,
                    plugins.loaded().stream().map(each -> each.plugin().info().id()).toList());
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(JsonText.of(shape(loaded, refused)));
        } else {
            loaded.forEach(each -> print(each, out));
            refused.forEach(each -> out.println("left out: " + each));
            if (loaded.isEmpty() && refused.isEmpty()) {
                out.println("No plugins.");
            }
            OurPlugins.folders().forEach(folder -> out.println("Searched " + folder));
        }
        return refused.isEmpty() ? 0 : 1;
    }

    private static void print(Plugins.Loaded each, PrintWriter out) {
        PluginInfo info = each.plugin().info();
        out.println(
                info.id()
                        + " "
                        + info.version()
                        + "  "
                        + info.title()
                        + each.from()
                                .map(from -> each.data() ? "folder of data: " + from : "" + from)
                                .map(from -> " (" + from + ")")
                                .orElse(""));
        contributes(each.plugin())
                .forEach(
                        (what, ids) -> {
                            if (!ids.isEmpty()) {
                                out.println("    " + what + ": " + String.join(", ", ids));
                            }
                        });
    }

    private static Map<String, List<String>> contributes(Plugin plugin) {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("device families", plugin.families().stream().map(DeviceFamily::id).toList());
        List<String> checks =
                new ArrayList<>(plugin.checks().stream().map(c -> c.info().id()).toList());
        List<String> templates = new ArrayList<>();
        for (DeviceFamily family : plugin.families()) {
            family.checks().forEach(c -> checks.add(c.info().id() + " (" + family.id() + ")"));
            family.templates().forEach(t -> templates.add(t.id() + " (" + family.id() + ")"));
        }
        all.put("templates for new devices", templates);
        all.put("checks", checks);
        all.put("stock sources", plugin.stockSources().stream().map(s -> s.id()).toList());
        all.put("cost tables", plugin.costTables().stream().map(t -> t.id()).toList());
        all.put("outputs", plugin.outputs().stream().map(o -> o.id()).toList());
        all.put("assessments", plugin.assessments().stream().map(a -> a.id()).toList());
        all.put("commands", plugin.commands().stream().map(c -> c.name()).toList());
        return all;
    }

    private static Map<String, Object> shape(
            List<Plugins.Loaded> loaded, List<Plugins.Refused> refused) {
        return JsonText.map(
                "format",
                "reseat-plugins/1",
                "plugins",
                loaded.stream().map(PluginsCommand::shape).toList(),
                "refused",
                refused.stream()
                        .map(
                                each ->
                                        JsonText.map(
                                                "name", each.name(),
                                                "from", from(each.from()),
                                                "why", each.why()))
                        .toList());
    }

    private static Map<String, Object> shape(Plugins.Loaded each) {
        PluginInfo info = each.plugin().info();
        return JsonText.map(
                "id", info.id(),
                "version", info.version(),
                "title", info.title(),
                "from", from(each.from()),
                "data", each.data(),
                "contributes", contributes(each.plugin()));
    }

    private static String from(Optional<Path> from) {
        return from.map(Path::toString).orElse("");
    }
}
