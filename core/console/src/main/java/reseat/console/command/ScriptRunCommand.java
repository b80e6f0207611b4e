package reseat.console.command;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.console.sheet.Terminal;
import reseat.files.DeviceFiles;
import reseat.files.PluginFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Severity;
import reseat.plan.PlanRequest;
import reseat.plan.Watch;
import reseat.script.host.ScriptHost;
import reseat.script.host.ScriptLimits;
import reseat.script.host.ScriptOutcome;
import reseat.script.host.ScriptOutcome.Status;
import reseat.text.JsonText;

/** Runs scripts on one device. */
@Command(
        name = "run",
        description = "Run scripts on a device, isolated in processes of their own.",
        customSynopsis = "reseat script run SCRIPT... DEVICE [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat script run scripts samples/quill/quill.yaml",
            "  reseat script run scripts/many-flips samples/quill/quill.yaml --free keyboard --set many-flips.most=1",
            "",
            "Exit code 1: a finding is at or above --from, or a script did not finish."
        })
final class ScriptRunCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopFolder shop = new ShopFolder();
    @Mixin private ShopTables tables = new ShopTables();
    @Mixin private GoalArgs goal = new GoalArgs();

    @Parameters(
            arity = "2..*",
            paramLabel = "FILE",
            description = "Scripts or folders with scripts, then the device file.")
    private List<Path> files = List.of();

    @Option(names = "--variant", paramLabel = "ID", description = "Variant of the device.")
    private @Nullable String variant;

    @Option(
            names = "--drives",
            split = ",",
            paramLabel = "DRIVE",
            description = "Drives that the shop has drivers for.")
    private @Nullable List<String> drives;

    @Option(names = "--today", paramLabel = "DAY", description = "Date to judge expiry by.")
    private @Nullable LocalDate today;

    @Option(
            names = "--set",
            paramLabel = "CHECK.NAME=VALUE",
            description = "Set a parameter of a script.")
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--from",
            paramLabel = "SEVERITY",
            description =
                    "Lowest severity for exit code 1: ${COMPLETION-CANDIDATES}; default: ERROR.")
    private Severity from = Severity.ERROR;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Path deviceFile = files.get(files.size() - 1);
        var folder = ScriptCommand.read(files.subList(0, files.size() - 1));
        CheckInput input = input(deviceFile);
        ScriptHost host = new ScriptHost(ScriptLimits.USUAL, shop.approvals(), tables.files());
        ScriptHost.Ran ran = host.run(folder.scripts(), input);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(JsonText.of(shape(input.device(), ran)));
        } else {
            print(ran, out);
        }
        boolean worse = ran.findings().stream().anyMatch(f -> f.severity().compareTo(from) <= 0);
        return worse || !ran.problems().isEmpty() ? 1 : 0;
    }

    private CheckInput input(Path file) {
        PrintWriter err = spec.commandLine().getErr();
        Device device = DeviceArgs.read(file, Optional.ofNullable(variant), err);
        Reading base = DeviceFiles.read(file, Optional.empty(), PluginFiles.bundled().families());
        List<Device> all = new ArrayList<>();
        if (base.device().isPresent()) {
            all.add(variant == null ? device : base.device().get());
        }
        for (String id : base.variants()) {
            all.add(
                    id.equals(variant)
                            ? device
                            : DeviceArgs.read(
                                    file, Optional.of(id), new PrintWriter(Writer.nullWriter())));
        }
        CheckInput input = CheckInput.of(device, tables.tables()).withVariants(all);
        if (goal.given()) {
            input = input.withPlan(Planned.plan(PlanRequest.of(device, goal.goal()), Watch.NONE));
        }
        input = drives == null ? input : input.withDrives(drives);
        input = today == null ? input : input.on(today);
        return CheckChoice.set(input, settings);
    }

    private static void print(ScriptHost.Ran ran, PrintWriter out) {
        Terminal shown = Terminal.detect();
        for (Finding each : ran.findings()) {
            out.println(
                    each.at()
                            + ": "
                            + each.severity().name().toLowerCase(Locale.ROOT)
                            + ": "
                            + each.title()
                            + " ["
                            + each.check()
                            + "]");
            out.println(shown.fitted("    " + each.message()));
            each.evidence().forEach(fact -> out.println(shown.fitted("    - " + fact)));
            out.println(shown.fitted("    Do: " + each.remedy()));
        }
        for (ScriptOutcome each : ran.outcomes()) {
            each.printed()
                    .lines()
                    .forEach(line -> out.println(each.script().info().id() + "| " + line));
            if (each.status() == Status.LEFT_OUT) {
                out.println("left out " + each.script().info().id() + ": " + each.problem());
            }
        }
        ran.problems().forEach(each -> out.println("failed   " + each.told()));
        long ranWell = ran.outcomes().stream().filter(o -> o.status() == Status.RAN).count();
        out.println(
                ranWell
                        + " of "
                        + ran.outcomes().size()
                        + " scripts ran; "
                        + ran.findings().size()
                        + (ran.findings().size() == 1 ? " finding" : " findings"));
    }

    private static Map<String, Object> shape(Device device, ScriptHost.Ran ran) {
        return JsonText.map(
                "format",
                "reseat-script-run/1",
                "device",
                device.id(),
                "variant",
                device.variant(),
                "scripts",
                ran.outcomes().stream()
                        .map(
                                o ->
                                        JsonText.map(
                                                "id", o.script().info().id(),
                                                "sha256", o.script().sha256(),
                                                "status", o.status(),
                                                "problem", o.problem(),
                                                "printed", o.printed(),
                                                "findings",
                                                        o.findings().stream()
                                                                .map(ScriptRunCommand::shape)
                                                                .toList()))
                        .toList());
    }

    private static Map<String, Object> shape(Finding f) {
        return JsonText.map(
                "check", f.check(),
                "severity", f.severity().name(),
                "at", f.at().toString(),
                "subject", f.subject(),
                "title", f.title(),
                "message", f.message(),
                "evidence", f.evidence(),
                "remedy", f.remedy());
    }
}
