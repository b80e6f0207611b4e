package reseat.console.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.check.CheckInput;
import reseat.check.FastenerChecks;
import reseat.check.Finding;
import reseat.check.Severity;
import reseat.console.sheet.Terminal;
import reseat.fasten.FastenerTables;
import reseat.model.Device;

/** Runs the checks of screws, seats, drives and cuts on a device. */
@Command(
        name = "inspect",
        description =
                "Check the screws, seats, torques, drives and cuts of a device for what would go wrong.",
        customSynopsis = "reseat inspect FILE [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat inspect samples/sorrel/sorrel.yaml",
            "  reseat inspect samples/sorrel/sorrel.yaml --drives PH00,PH000,T4",
            "",
            "Exit code 1: a finding is at or above --from."
        })
final class InspectCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;
    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Option(
            names = "--drives",
            split = ",",
            paramLabel = "DRIVE",
            description = "Drives that the shop has drivers for; not checked if left out.")
    private @Nullable List<String> drives;

    @Option(
            names = "--from",
            paramLabel = "SEVERITY",
            description =
                    "Least severity for exit code 1: ${COMPLETION-CANDIDATES}; default: ERROR.")
    private Severity from = Severity.ERROR;

    @Option(names = "--json", description = "Print the answer as JSON, for other programs.")
    private boolean json;

    @Override
    public Integer call() {
        FastenerTables tables = shop.tables();
        Device device = deviceArgs.read(spec.commandLine().getErr());
        CheckInput input = CheckInput.of(device);
        List<String> owned = drives;
        List<Finding> findings =
                FastenerChecks.run(tables, owned == null ? input : input.withDrives(owned));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(JsonText.of(shape(device, findings)));
        } else {
            findings.stream()
                    .collect(
                            Collectors.groupingBy(
                                    f -> List.of(f.at(), f.check(), f.message()),
                                    LinkedHashMap::new,
                                    Collectors.toList()))
                    .values()
                    .forEach(alike -> print(alike, out));
            out.println(summary(device, findings));
        }
        return findings.stream().anyMatch(f -> f.severity().compareTo(from) <= 0) ? 1 : 0;
    }

    /** Prints findings that differ in their subject alone as one. */
    private static void print(List<Finding> alike, PrintWriter out) {
        Finding first = alike.get(0);
        Terminal shown = Terminal.detect();
        String severity = first.severity().name().toLowerCase(Locale.ROOT);
        out.println(
                first.at() + ": " + severity + ": " + first.title() + " [" + first.check() + "]");
        if (alike.size() > 1) {
            out.println("    " + String.join(", ", alike.stream().map(Finding::subject).toList()));
        }
        out.println(shown.fitted("    " + first.message()));
        first.evidence().forEach(fact -> out.println(shown.fitted("    - " + fact)));
        out.println(shown.fitted("    Do: " + first.remedy()));
    }

    private static String summary(Device device, List<Finding> findings) {
        Map<Severity, Integer> counts = new LinkedHashMap<>();
        for (Severity severity : Severity.values()) {
            int count = (int) findings.stream().filter(f -> f.severity() == severity).count();
            if (count > 0) {
                counts.put(severity, count);
            }
        }
        List<String> told = new ArrayList<>();
        counts.forEach(
                (severity, count) ->
                        told.add(
                                count
                                        + " "
                                        + severity.name().toLowerCase(Locale.ROOT)
                                        + (count == 1 ? "" : "s")));
        return device + ": " + (told.isEmpty() ? "nothing found" : String.join(", ", told));
    }

    private static Map<String, Object> shape(Device device, List<Finding> findings) {
        return JsonText.map(
                "format", "reseat-findings/1",
                "device", device.id(),
                "variant", device.variant(),
                "findings",
                        findings.stream()
                                .map(
                                        f ->
                                                JsonText.map(
                                                        "check", f.check(),
                                                        "severity", f.severity().name(),
                                                        "at", f.at().toString(),
                                                        "subject", f.subject(),
                                                        "title", f.title(),
                                                        "message", f.message(),
                                                        "evidence", f.evidence(),
                                                        "remedy", f.remedy()))
                                .toList());
    }
}
