package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.console.load.OurPlugins;
import reseat.console.load.PluginFailed;
import reseat.console.sheet.Terminal;
import reseat.model.Device;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.plan.Watch;
import reseat.planner.Planner;
import reseat.spi.Assessment;
import reseat.text.JsonText;

/** Assesses a device by a published method. */
@Command(
        name = "assess",
        description = "Rate how easily a device comes apart, by a published method.",
        customSynopsis = "reseat assess FILE --by METHOD [--stated FILE] [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Example:",
            "  reseat assess samples/sorrel/sorrel.yaml --by eu-index --ask",
            "",
            "samples/sorrel/eu-index.txt is a file of statements for it (--stated).",
            "A file of statements has one name = value per line; # starts a comment."
        })
final class AssessCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Option(
            names = "--by",
            paramLabel = "METHOD",
            required = true,
            description = "Id of the method.")
    private String by = "";

    @Option(
            names = "--stated",
            paramLabel = "FILE",
            description = "File with the statements that the method needs.")
    private @Nullable Path stated;

    @Option(names = "--ask", description = "List the statements that the method needs, and exit.")
    private boolean ask;

    @Option(names = "--evidence", description = "Print the facts behind each value.")
    private boolean evidence;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "Time limit for each plan; default: 5.")
    private int seconds = 5;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Assessment method = method(err);
        Terminal shown = Terminal.detect();
        if (ask) {
            for (Assessment.Statement each : method.statements()) {
                out.println(each.name() + (each.required() ? " (required)" : ""));
                out.println(shown.fitted("    " + each.says()));
            }
            return 0;
        }
        Device device = deviceArgs.read(err);
        Assessment.Result result = assess(method, device);
        if (json) {
            out.print(JsonText.of(shape(method, device, result)));
            return 0;
        }
        out.println(device + ": " + method.title());
        out.println(shown.fitted(method.source()));
        out.println();
        for (Assessment.Criterion each : result.criteria()) {
            out.println(each.title() + ": " + each.value());
            if (evidence) {
                each.evidence().forEach(fact -> out.println(shown.fitted("    - " + fact)));
            }
        }
        out.println();
        result.remarks().forEach(remark -> out.println(shown.fitted(remark)));
        return 0;
    }

    private Assessment method(PrintWriter err) {
        List<Assessment> methods = OurPlugins.get(err).assessments();
        return methods.stream()
                .filter(each -> each.id().equals(by))
                .findFirst()
                .orElseThrow(
                        () ->
                                DeviceArgs.unknown(
                                        "method",
                                        by,
                                        methods.stream().map(Assessment::id).toList()));
    }

    private Assessment.Result assess(Assessment method, Device device) throws IOException {
        Path file = stated;
        Map<String, String> said = file == null ? Map.of() : StatedFile.read(file);
        try {
            return OurPlugins.asked(
                    method, "method " + method.id(), () -> method.assess(device, said, this::plan));
        } catch (PluginFailed failed) {
            if (!(failed.getCause() instanceof IllegalArgumentException e)) {
                throw failed;
            }
            throw new BadInput(
                    "reseat: "
                            + method.id()
                            + (file == null ? "" : ", " + file)
                            + ":\n"
                            + e.getMessage()
                            + "\nTo list what the method needs: reseat assess ... --ask.");
        }
    }

    private PlanResult plan(PlanRequest request, Watch watch) {
        return new Planner().plan(request.with(Effort.ofTime(Duration.ofSeconds(seconds))), watch);
    }

    private static Map<String, Object> shape(
            Assessment method, Device device, Assessment.Result result) {
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("format", "reseat-assessment/1");
        shape.put("method", method.id());
        shape.put("source", method.source());
        shape.put("device", device.id());
        shape.put("variant", device.variant());
        shape.put(
                "criteria",
                result.criteria().stream()
                        .map(
                                each ->
                                        JsonText.map(
                                                "id", each.id(),
                                                "title", each.title(),
                                                "value", each.value(),
                                                "evidence", each.evidence(),
                                                "source", each.source()))
                        .toList());
        shape.put("remarks", result.remarks());
        return shape;
    }
}
