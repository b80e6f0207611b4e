package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.load.OurPlugins;
import reseat.plan.Plan;
import reseat.spi.CostTable;
import reseat.spi.Output;
import reseat.spi.OutputFiles;
import reseat.spi.Plugins;

/** Options for what plugins add to a plan: costs and outputs. */
final class PluginArgs {

    @Option(
            names = "--cost-table",
            paramLabel = "ID",
            description = "Plan with a cost table of a plugin; reseat plugins lists them.")
    private @Nullable String costTable;

    @Option(
            names = "--output",
            paramLabel = "ID[:FILE]",
            description =
                    "Write the plan with an output of a plugin instead of the sheet, to standard"
                            + " output, or to a file; reseat plugins lists them.")
    private @Nullable String output;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description =
                    "Write the files of --output into a folder; files that Reseat did not write"
                            + " are not overwritten.")
    private @Nullable Path into;

    @Option(names = "--force", description = "With --into: overwrite any file of the same name.")
    private boolean force;

    /** Returns the cost table, or fails the command if its id is unknown. */
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

    /** Returns the chosen output, or fails the command if options contradict each other. */
    Optional<Output> output(Plugins plugins) {
        if (output == null) {
            if (into != null) {
                throw new BadInput("reseat: --into needs --output, which says what to write.");
            }
            return Optional.empty();
        }
        String id = output.split(":", 2)[0];
        boolean toFile = output.contains(":");
        List<Output> all = plugins.outputs();
        Output wanted =
                all.stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        DeviceArgs.unknown(
                                                "output",
                                                id,
                                                all.stream().map(Output::id).toList()));
        refuse(wanted, toFile, into != null);
        return Optional.of(wanted);
    }

    /** Fails the command if an output cannot be written to the given destination. */
    static void refuse(Output wanted, boolean toFile, boolean intoFolder) {
        if (toFile && intoFolder) {
            throw new BadInput("reseat: give --output ID:FILE or --into, not both.");
        }
        if (wanted.files() == Output.Files.SEVERAL && !intoFolder) {
            throw new BadInput(
                    "reseat: the output "
                            + wanted.id()
                            + " writes several files; give --into FOLDER.");
        }
    }

    /** Writes a plan to the given folder or file, or prints it. */
    void write(Output wanted, Plan plan, PrintWriter out) throws IOException {
        Output.Content content = Output.Content.of(plan);
        Map<String, byte[]> files =
                OurPlugins.asked(
                        wanted, "output " + wanted.id(), () -> OutputFiles.of(wanted, content));
        String what = wanted.title() + ", " + wanted.mediaType() + ".";
        String[] words = String.valueOf(output).split(":", 2);
        if (into != null) {
            new OutputFolder(into).write(files, force);
            for (String name : files.keySet()) {
                out.println("Wrote " + into.resolve(name) + ": " + what);
            }
            return;
        }
        byte[] bytes = files.values().iterator().next();
        if (words.length == 2) {
            OutputFolder.replace(Path.of(words[1]), bytes);
            out.println("Wrote " + words[1] + ": " + what);
        } else {
            out.print(text(wanted, bytes));
        }
    }

    private static CharBuffer text(Output wanted, byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
        } catch (CharacterCodingException e) {
            throw new BadInput(
                    "reseat: the output "
                            + wanted.id()
                            + " is not text ("
                            + wanted.mediaType()
                            + "); give --output "
                            + wanted.id()
                            + ":FILE or --into FOLDER.");
        }
    }
}
