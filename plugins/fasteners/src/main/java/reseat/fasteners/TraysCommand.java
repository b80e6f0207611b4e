package reseat.fasteners;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.fasten.TrayPlan;
import reseat.files.PlanFiles;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.text.JsonText;
import reseat.text.ListText;
import reseat.text.Nearest;

/** Shows which screws to keep apart while a device is open. */
final class TraysCommand implements Command {

    /** How many known names a message lists. */
    private static final int LISTED = 40;

    @Override
    public String name() {
        return "trays";
    }

    @Override
    public CommandInfo info() {
        return CommandInfo.of(
                        "Sort screws into the fewest tray compartments that rule out harmful"
                                + " mix-ups.")
                .calledAs("trays FILE [OPTIONS]")
                .taking(
                        CommandOption.option(
                                        "--rows",
                                        Kind.FILE,
                                        "FILE",
                                        "Add rows to a fastener table; the file is named as the table, such as materials.csv.")
                                .asRepeatable(),
                        CommandOption.parameter(
                                "FILE",
                                Kind.DEVICE,
                                "Device file, YAML or JSON; see core/docs/device-file.md."),
                        CommandOption.option(
                                "--variant",
                                Kind.ID,
                                "ID",
                                "Variant of the device (default: the base device)."),
                        CommandOption.option(
                                        "--joints",
                                        Kind.JOINT,
                                        "JOINT",
                                        "Joints that come out, in order (default: all, in the"
                                                + " order of the file).")
                                .asRepeatable(),
                        CommandOption.option(
                                "--plan",
                                Kind.FILE,
                                "PLAN.json",
                                "Only the joints that a plan releases, in its order; a file from"
                                        + " plan --json."),
                        CommandOption.option(
                                "--length",
                                Kind.NUMBER,
                                "MM",
                                "Visible difference in length, in millimetres."),
                        CommandOption.flag("--json", "Print the result as JSON."))
                .withExamples(
                        "reseat trays samples/sorrel/sorrel.yaml",
                        "reseat trays samples/sorrel/sorrel.yaml --plan plan.json");
    }

    @Override
    public int run(CommandCall call) throws BadInputException {
        FastenerTables tables = call.tables(call.paths("--rows"));
        Device device = call.device(call.path("FILE"), call.value("--variant"), Optional.empty());
        call.values("--joints").forEach(joint -> seat(device, joint));
        List<String> order = order(device, call);
        LookAlikes alike = alike(tables, device, order, call.number("--length"));
        TrayPlan plan = TrayPlan.of(device, order, alike);
        if (call.has("--json")) {
            call.out().print(JsonText.of(shape(plan, alike)));
        } else {
            print(plan, alike, call.out());
        }
        return FINE;
    }

    private static LookAlikes alike(
            FastenerTables tables, Device device, List<String> order, OptionalDouble seen) {
        LookAlikes.Eye usual = LookAlikes.Eye.of(tables);
        try {
            return LookAlikes.of(
                    tables,
                    device,
                    order,
                    seen.isEmpty()
                            ? usual
                            : new LookAlikes.Eye(seen.getAsDouble(), usual.headMm()));
        } catch (FastenerInputException e) {
            throw new CommandException("reseat: " + e.getMessage());
        }
    }

    private static void seat(Device device, String id) {
        Joint joint = device.joints().get(id);
        if (joint == null || joint.seat().isEmpty()) {
            List<String> known =
                    device.joints().values().stream()
                            .filter(each -> each.seat().isPresent())
                            .map(Joint::id)
                            .toList();
            throw new CommandException(
                    "reseat: there is no screw in a seat \""
                            + id
                            + "\"."
                            + Nearest.question(id, known)
                            + " Known: "
                            + ListText.first(known, LISTED)
                            + ".");
        }
    }

    private static List<String> order(Device device, CommandCall call) throws BadInputException {
        if (!call.has("--plan")) {
            return call.has("--joints")
                    ? call.values("--joints")
                    : List.copyOf(device.joints().keySet());
        }
        Path path = call.path("--plan");
        List<String> released = new ArrayList<>();
        for (Act act : PlanFiles.readPlan(path).acts()) {
            if (act instanceof Act.Release release) {
                if (!device.joints().containsKey(release.joint())) {
                    throw new CommandException(
                            path + ": " + device + " has no joint " + release.joint());
                }
                released.add(release.joint());
            }
        }
        return released;
    }

    private static void print(TrayPlan plan, LookAlikes alike, PrintWriter out) {
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
