package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.check.CheckInfo;
import reseat.console.load.OurPlugins;
import reseat.console.report.ChecksPage;
import reseat.console.sheet.Terminal;
import reseat.text.JsonText;

/** Lists the checks. */
@Command(
        name = "checks",
        description = "List the checks, or describe one.",
        customSynopsis = {"reseat checks [OPTIONS]", "       reseat checks ID [OPTIONS]"},
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat checks",
            "  reseat checks protrusion-into-hazard",
            "  reseat checks --page > checks.md"
        })
final class ChecksCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "ID", description = "Id of a check.")
    private @Nullable String id;

    @Option(names = "--page", description = "Print a Markdown page that describes all checks.")
    private boolean page;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<CheckInfo> all =
                CheckChoice.infos(OurPlugins.get(spec.commandLine().getErr()).checks());
        String wanted = id;
        List<CheckInfo> infos =
                wanted == null
                        ? all
                        : all.stream().filter(info -> info.id().equals(wanted)).toList();
        if (wanted != null && infos.isEmpty()) {
            throw DeviceArgs.unknown("check", wanted, all.stream().map(CheckInfo::id).toList());
        }
        if (json) {
            out.print(JsonText.of(shape(infos)));
        } else if (page) {
            out.print(ChecksPage.write(infos));
        } else if (id != null) {
            tell(infos.get(0), out);
        } else {
            list(infos, out);
        }
        return 0;
    }

    private static void list(List<CheckInfo> infos, PrintWriter out) {
        int width = infos.stream().mapToInt(info -> info.id().length()).max().orElse(0);
        for (CheckInfo info : infos) {
            out.println(
                    String.format(
                            Locale.ROOT,
                            "%-" + width + "s  %-7s  %s",
                            info.id(),
                            word(info),
                            info.title()));
        }
    }

    private static void tell(CheckInfo info, PrintWriter out) {
        Terminal terminal = Terminal.detect();
        out.println(info.id() + ": " + info.title() + ", " + word(info));
        out.println(terminal.fitted("  Finds: " + info.finds()));
        out.println(terminal.fitted("  Why it matters: " + info.matters()));
        out.println("  Tags: " + String.join(", ", info.tags()));
        out.println("  Needs: " + ChecksPage.needs(info).replace("`", ""));
        for (CheckInfo.Parameter each : info.parameters()) {
            out.println(
                    terminal.fitted(
                            "  --set "
                                    + info.id()
                                    + "."
                                    + each.name()
                                    + "="
                                    + each.usual()
                                    + ": "
                                    + each.says()
                                    + ChecksPage.unit(each)));
        }
    }

    private static String word(CheckInfo info) {
        return info.severity().name().toLowerCase(Locale.ROOT);
    }

    private static Object shape(List<CheckInfo> infos) {
        return JsonText.map(
                "format",
                "reseat-checks/1",
                "checks",
                infos.stream()
                        .map(
                                info ->
                                        JsonText.map(
                                                "id", info.id(),
                                                "title", info.title(),
                                                "finds", info.finds(),
                                                "matters", info.matters(),
                                                "severity", info.severity(),
                                                "tags", info.tags(),
                                                "parameters",
                                                        info.parameters().stream()
                                                                .map(ChecksCommand::shape)
                                                                .toList(),
                                                "needs", info.needs(),
                                                "api", info.api()))
                        .toList());
    }

    private static Object shape(CheckInfo.Parameter parameter) {
        return JsonText.map(
                "name", parameter.name(),
                "says", parameter.says(),
                "unit", parameter.unit(),
                "usual", parameter.usual());
    }
}
