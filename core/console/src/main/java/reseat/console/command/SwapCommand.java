package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.fasten.StackUp;
import reseat.model.Device;
import reseat.model.ScrewType;
import reseat.text.JsonText;

/** Shows what happens when another screw goes into a seat. */
@Command(
        name = "swap",
        description =
                "Show how a screw sits in its seat, and what any other screw of the device would"
                        + " do there.",
        customSynopsis = "reseat swap FILE JOINT [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat swap samples/sorrel/sorrel.yaml clamp-screw.a",
            "  reseat swap samples/sorrel/sorrel.yaml clamp-screw.a --screw m16x3"
        })
final class SwapCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;
    @Mixin private DeviceArgs deviceArgs = new DeviceArgs();

    @Parameters(index = "1", paramLabel = "JOINT", description = "Id of the joint.")
    private String joint;

    @Option(names = "--screw", paramLabel = "TYPE", description = "Only this screw type.")
    private @Nullable String screw;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        FastenerTables tables = shop.tables();
        Device device = deviceArgs.read(spec.commandLine().getErr());
        String id = DeviceArgs.seat(device, joint).id();
        StackUp right = ShopTables.asked(() -> StackUp.of(tables, device, id));
        List<StackUp> swaps = swaps(tables, device, id);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(
                    JsonText.of(
                            JsonText.map(
                                    "format",
                                    "reseat-swap/1",
                                    "joint",
                                    id,
                                    "right",
                                    shape(right),
                                    "swaps",
                                    swaps.stream().map(SwapCommand::shape).toList())));
            return 0;
        }
        out.println("right screw: " + line(right));
        swaps.forEach(swap -> out.println("instead:     " + line(swap)));
        if (swaps.isEmpty()) {
            out.println("No other screw of the device starts here.");
        }
        return 0;
    }

    private List<StackUp> swaps(FastenerTables tables, Device device, String id) {
        if (screw == null) {
            return ShopTables.asked(() -> StackUp.swaps(tables, device, id));
        }
        ScrewType type = device.screwTypes().get(screw);
        if (type == null) {
            throw DeviceArgs.unknown(
                    "screw type", screw, List.copyOf(device.screwTypes().keySet()));
        }
        return List.of(ShopTables.asked(() -> StackUp.of(tables, device, id, type)));
    }

    private static String line(StackUp swap) {
        return swap.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                + "  "
                + swap.told()
                + (swap.missing().isEmpty() || swap.outcome() == StackUp.Outcome.UNKNOWN
                        ? ""
                        : " Not known: " + String.join(", ", swap.missing()) + ".");
    }

    private static Map<String, Object> shape(StackUp swap) {
        return JsonText.map(
                "screw",
                swap.screw(),
                "outcome",
                swap.outcome(),
                "weight",
                LookAlikes.weight(swap),
                "told",
                swap.told(),
                "reachMm",
                swap.reachMm(),
                "engagementMm",
                swap.engagementMm(),
                "goodEngagementMm",
                swap.goodEngagementMm(),
                "bottomClearanceMm",
                swap.bottomClearanceMm(),
                "protrusionMm",
                swap.protrusionMm(),
                "behind",
                swap.behind().stream()
                        .map(
                                b ->
                                        JsonText.map(
                                                "part",
                                                b.part(),
                                                "name",
                                                b.name(),
                                                "role",
                                                b.role(),
                                                "clearanceMm",
                                                b.clearanceMm()))
                        .toList(),
                "missing",
                swap.missing());
    }
}
