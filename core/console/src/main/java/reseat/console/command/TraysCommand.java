package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.fasten.TrayPlan;
import reseat.files.PlanFiles;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.Device;

/** Says which screws lie apart while a device is open. */
@Command(
        name = "trays",
        description =
                "Lay out the fewest tray compartments in which no two screws can be confused to harm.",
        customSynopsis = "reseat trays FILE [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat trays samples/sorrel/sorrel.yaml",
            "  reseat trays samples/sorrel/sorrel.yaml --plan plan.json"
        })
final class TraysCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;
    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Option(
            names = "--joints",
            split = ",",
            paramLabel = "JOINT",
            description =
                    "Joints that come out, in order; all, in the order of the file, if left out.")
    private List<String> joints = new ArrayList<>();

    @Option(
            names = "--plan",
            paramLabel = "PLAN.json",
            description =
                    "Only the joints that a plan releases, in its order; as plan --json prints it.")
    private @Nullable Path planPath;

    @Option(
            names = "--length",
            paramLabel = "MM",
            description = "Difference of length that a person sees, in millimetres.")
    private @Nullable Double length;

    @Option(names = "--json", description = "Print the answer as JSON, for other programs.")
    private boolean json;

    @Override
    public Integer call() throws BadInputException {
        FastenerTables tables = shop.tables();
        Device device = deviceArgs.read(spec.commandLine().getErr());
        joints.forEach(joint -> DeviceArgs.seat(device, joint));
        List<String> order = order(device);
        LookAlikes.Eye usual = LookAlikes.Eye.of(tables);
        Double seen = length;
        LookAlikes alike =
                ShopTables.asked(
                        () ->
                                LookAlikes.of(
                                        tables,
                                        device,
                                        order,
                                        seen == null
                                                ? usual
                                                : new LookAlikes.Eye(seen, usual.headMm())));
        TrayPlan plan = TrayPlan.of(device, order, alike);
        if (json) {
            spec.commandLine().getOut().print(JsonText.of(shape(plan, alike)));
        } else {
            print(plan, alike);
        }
        return 0;
    }

    private List<String> order(Device device) throws BadInputException {
        Path path = planPath;
        if (path == null) {
            return joints.isEmpty() ? List.copyOf(device.joints().keySet()) : joints;
        }
        List<String> released = new ArrayList<>();
        for (Act act : PlanFiles.readPlan(path).acts()) {
            if (act instanceof Act.Release release) {
                if (!device.joints().containsKey(release.joint())) {
                    throw new BadInput(path + ": " + device + " has no joint " + release.joint());
                }
                released.add(release.joint());
            }
        }
        return released;
    }

    private void print(TrayPlan plan, LookAlikes alike) {
        PrintWriter out = spec.commandLine().getOut();
        for (TrayPlan.Compartment compartment : plan.compartments()) {
            out.println("compartment " + compartment.number());
            for (TrayPlan.Lot lot : compartment.content()) {
                out.println(
                        "  "
                                + lot.joints().size()
                                + " x "
                                + lot.screw()
                                + "  from "
                                + String.join(", ", lot.joints()));
            }
        }
        out.println(plan.proof());
        for (LookAlikes.Pair pair : alike.pairs()) {
            if (pair.dangerous()) {
                out.println(
                        "! "
                                + pair.one()
                                + " and "
                                + pair.other()
                                + ": "
                                + pair.worst().orElseThrow().told());
            }
        }
    }

    private static Map<String, Object> shape(TrayPlan plan, LookAlikes alike) {
        return JsonText.map(
                "format", "reseat-trays/1",
                "proved", plan.proved(),
                "proof", plan.proof(),
                "apart", plan.apart(),
                "compartments",
                        plan.compartments().stream()
                                .map(
                                        c ->
                                                JsonText.map(
                                                        "number",
                                                        c.number(),
                                                        "content",
                                                        c.content().stream()
                                                                .map(
                                                                        l ->
                                                                                JsonText.map(
                                                                                        "screw",
                                                                                        l.screw(),
                                                                                        "joints",
                                                                                        l.joints()))
                                                                .toList()))
                                .toList(),
                "lookAlikes",
                        alike.pairs().stream()
                                .map(
                                        p ->
                                                JsonText.map(
                                                        "one",
                                                        p.one(),
                                                        "other",
                                                        p.other(),
                                                        "differences",
                                                        p.differences(),
                                                        "weight",
                                                        p.weight(),
                                                        "dangerous",
                                                        p.dangerous(),
                                                        "worst",
                                                        p.worst().map(w -> w.told())))
                                .toList());
    }
}
