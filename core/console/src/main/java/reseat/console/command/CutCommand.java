package reseat.console.command;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.fasten.CutPlan;
import reseat.model.Bond;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.text.JsonText;

/** Shows how deep to cut along the edges of a bonded part. */
@Command(
        name = "cut",
        description =
                "Show how deep to cut along each edge of a bonded part, and where no depth is"
                        + " safe.",
        customSynopsis = "reseat cut FILE BOND [OPTIONS]",
        sortOptions = false,
        footer = {"", "Example:", "  reseat cut samples/sorrel/sorrel.yaml display-bond"})
final class CutCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(
            index = "1",
            paramLabel = "BOND",
            description = "Id of the bond, or of the part that it holds.")
    private String wanted;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Device device = deviceArgs.read(spec.commandLine().getErr());
        List<Joint> bonds =
                device.joints().values().stream()
                        .filter(j -> j.bond().isPresent())
                        .filter(j -> j.id().equals(wanted) || j.holds().get(0).equals(wanted))
                        .toList();
        if (bonds.isEmpty()) {
            throw DeviceArgs.unknown(
                    "bond with a geometry",
                    wanted,
                    device.joints().values().stream()
                            .filter(j -> j.bond().isPresent())
                            .map(Joint::id)
                            .toList());
        }
        if (json && bonds.size() > 1) {
            throw new BadInput(
                    "reseat: several bonds hold "
                            + wanted
                            + "; with --json name one: "
                            + String.join(", ", bonds.stream().map(Joint::id).toList())
                            + ".");
        }
        for (Joint joint : bonds) {
            Bond bond = joint.bond().orElseThrow();
            CutPlan plan = ShopTables.asked(() -> CutPlan.of(bond));
            List<CutPlan.Judged> judged = ShopTables.asked(() -> plan.judge(bond));
            if (json) {
                spec.commandLine().getOut().print(JsonText.of(shape(joint.id(), plan, judged)));
            } else {
                print(joint.id(), plan, judged);
            }
        }
        return 0;
    }

    private void print(String id, CutPlan plan, List<CutPlan.Judged> judged) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                id
                        + ": settings "
                        + String.join(", ", plan.settings().stream().map(CutCommand::mm).toList()));
        for (CutPlan.Unsafe stretch : plan.unsafe()) {
            out.println(
                    "! edge "
                            + place(stretch.place())
                            + ": no safe depth; severing needs "
                            + mm(stretch.neededMm())
                            + ", keep-out "
                            + stretch.keepOut()
                            + " allows "
                            + mm(stretch.allowedMm()));
        }
        for (CutPlan.Judged each : judged) {
            if (!each.safe()) {
                out.println(
                        "! edge "
                                + each.edge()
                                + ": the "
                                + mm(each.depthMm())
                                + " that is given is deeper than the "
                                + mm(each.greatestMm())
                                + " that keep-out "
                                + each.keepOut()
                                + " allows");
            } else if (!each.severs()) {
                out.println(
                        "! edge "
                                + each.edge()
                                + ": the "
                                + mm(each.depthMm())
                                + " that is given does not sever; "
                                + mm(each.leastMm())
                                + " does");
            }
        }
        int number = 1;
        for (CutPlan.Pass pass : plan.passes()) {
            out.println("pass " + number++ + " at " + mm(pass.depthMm()));
            pass.places().forEach(p -> out.println("  edge " + place(p)));
        }
    }

    private static String place(CutPlan.Place place) {
        return place.edge() + " from " + mm(place.fromMm()) + " to " + mm(place.toMm());
    }

    private static String mm(double value) {
        return BigDecimal.valueOf(value)
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " mm";
    }

    private static Map<String, Object> shape(String id, CutPlan plan, List<CutPlan.Judged> judged) {
        return JsonText.map(
                "format", "reseat-cut/1",
                "bond", id,
                "settingsMm", plan.settings(),
                "passes", plan.passes().stream().map(CutCommand::shape).toList(),
                "unsafe", plan.unsafe().stream().map(CutCommand::shape).toList(),
                "given", judged.stream().map(CutCommand::shape).toList(),
                "pieces", plan.pieces().stream().map(CutCommand::shape).toList());
    }

    private static Map<String, Object> shape(CutPlan.Pass pass) {
        return JsonText.map(
                "depthMm", pass.depthMm(),
                "places", pass.places().stream().map(CutCommand::shape).toList());
    }

    private static Map<String, Object> shape(CutPlan.Unsafe unsafe) {
        return JsonText.map(
                "place", shape(unsafe.place()),
                "neededMm", unsafe.neededMm(),
                "allowedMm", unsafe.allowedMm(),
                "keepOut", unsafe.keepOut());
    }

    private static Map<String, Object> shape(CutPlan.Judged given) {
        return JsonText.map(
                "edge", given.edge(),
                "depthMm", given.depthMm(),
                "safe", given.safe(),
                "severs", given.severs(),
                "greatestMm", given.greatestMm(),
                "leastMm", given.leastMm(),
                "keepOut", given.keepOut());
    }

    private static Map<String, Object> shape(CutPlan.Piece piece) {
        return JsonText.map(
                "place", shape(piece.place()),
                "leastMm", piece.leastMm(),
                "greatestMm", piece.greatestMm(),
                "keepOut", piece.keepOut());
    }

    private static Map<String, Object> shape(CutPlan.Place place) {
        return JsonText.map("edge", place.edge(), "fromMm", place.fromMm(), "toMm", place.toMm());
    }
}
