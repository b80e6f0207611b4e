package reseat.console.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.load.OurPlugins;
import reseat.plan.Plan;
import reseat.spi.CostTable;
import reseat.spi.Output;
import reseat.spi.Plugins;

/** What plugins add to a plan: its costs, and ways to write it. */
final class PluginArgs {

    @Option(
            names = "--cost-table",
            paramLabel = "ID",
            description = "Plan with the times of a table of a plugin; reseat plugins lists them.")
    private @Nullable String costTable;

    @Option(
            names = "--output",
            paramLabel = "ID[:FILE]",
            description =
                    "Write the plan by an output of a plugin, to a file or in place of the sheet;"
                            + " reseat plugins lists them.")
    private @Nullable String output;

    /** Returns the table of costs, or ends the command where there is none of that id. */
    Optional<CostTable> costs(Plugins plugins) {
        return Optional.ofNullable(costTable).map(id -> costs(plugins, id));
    }

    static CostTable costs(Plugins plugins, String id) {
        List<CostTable> all = plugins.costTables();
        return all.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                DeviceArgs.unknown(
                                        "cost table",
                                        id,
                                        all.stream().map(CostTable::id).toList()));
    }

    /** Returns the output that is wanted, or ends the command where there is none of that id. */
    Optional<Output> output(Plugins plugins) {
        if (output == null) {
            return Optional.empty();
        }
        String id = output.split(":", 2)[0];
        List<Output> all = plugins.outputs();
        return Optional.of(
                all.stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        DeviceArgs.unknown(
                                                "output",
                                                id,
                                                all.stream().map(Output::id).toList())));
    }

    /** Writes a plan to the file that was named, or prints it. */
    void write(Output wanted, Plan plan, PrintWriter out) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        OurPlugins.asked(
                wanted,
                "output " + wanted.id(),
                () -> {
                    wanted.write(plan, bytes);
                    return bytes;
                });
        String[] words = String.valueOf(output).split(":", 2);
        if (words.length == 2) {
            Path file = Path.of(words[1]);
            Files.write(file, bytes.toByteArray());
            out.println("Wrote " + file + ": " + wanted.title() + ", " + wanted.mediaType() + ".");
        } else {
            out.print(bytes.toString(StandardCharsets.UTF_8));
        }
    }
}
