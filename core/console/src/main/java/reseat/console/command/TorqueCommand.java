package reseat.console.command;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import reseat.fasten.FastenerTables;
import reseat.fasten.SeatConditions;
import reseat.fasten.Torque;
import reseat.fasten.TorqueAdvice;
import reseat.fasten.TorqueAdvisor;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueUnit;
import reseat.model.Device;
import reseat.text.JsonText;

/** Shows the torque of a screw. */
@Command(
        name = "torque",
        description = "Show the torque of a screw, from its seat or from a description.",
        customSynopsis = {
            "reseat torque WORDS [OPTIONS]",
            "       reseat torque --device FILE JOINT [OPTIONS]",
            "       reseat torque --convert TORQUE [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat torque \"M1.6 8.8 pan T5 into magnesium, 3 mm, oiled\"",
            "  reseat torque --device samples/sorrel/sorrel.yaml dock-screw.a",
            "  reseat torque --convert \"0.6 kgf·cm\""
        })
final class TorqueCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;

    @Parameters(
            arity = "0..*",
            paramLabel = "WORDS",
            description = "Description of the screw, or with --device the id of a joint.")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--device",
            paramLabel = "FILE",
            description = "Device file that contains the joint.")
    private @Nullable Path device;

    @Option(names = "--variant", paramLabel = "ID", description = "Variant of the device.")
    private @Nullable String variant;

    @Option(
            names = "--friction",
            paramLabel = "SURFACE",
            description = "Surface of thread and head, such as oiled or zinc-dry.")
    private @Nullable String friction;

    @Option(
            names = "--convert",
            paramLabel = "TORQUE",
            description = "Convert a torque to every unit.")
    private @Nullable String convert;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            defaultValue = "N·m",
            description = "Unit to print in; default: N·m.")
    private String unit = "N·m";

    @Option(
            names = "--evidence",
            description = "Show every limit with its formula, and the inputs with their sources.")
    private boolean evidence;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        FastenerTables tables = shop.tables();
        if (convert != null) {
            String text = convert;
            conversion(tables, ShopTables.asked(() -> tables.torqueUnits().parse(text)));
            return 0;
        }
        if (words.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Describe the screw, such as \"M1.6 8.8 into magnesium, 3 mm\".");
        }
        TorqueUnit printed = ShopTables.asked(() -> tables.torqueUnits().unit(unit));
        TorqueAdvisor advisor = TorqueAdvisor.of(tables);
        TorqueAdvice advice =
                device == null
                        ? ShopTables.asked(() -> bare(tables, advisor))
                        : ofSeat(
                                tables,
                                advisor,
                                DeviceArgs.read(
                                        device,
                                        Optional.ofNullable(variant),
                                        spec.commandLine().getErr()));
        if (json) {
            spec.commandLine().getOut().print(JsonText.of(shape(advice)));
        } else {
            print(advice, printed);
        }
        return 0;
    }

    private TorqueAdvice bare(FastenerTables tables, TorqueAdvisor advisor) {
        if (friction != null) {
            tables.friction(friction); // gives its own error message
        }
        String text = String.join(" ", words) + (friction == null ? "" : ", " + friction);
        TorqueEstimate estimate = advisor.estimate(advisor.read(text));
        return new TorqueAdvice(
                TorqueAdvice.Basis.ESTIMATE,
                estimate.valueNm(),
                estimate.lowNm(),
                estimate.highNm(),
                estimate.governing().kind().words(),
                Optional.of(estimate),
                "",
                estimate.cautions());
    }

    private TorqueAdvice ofSeat(FastenerTables tables, TorqueAdvisor advisor, Device read) {
        String joint = DeviceArgs.seat(read, String.join(" ", words)).id();
        SeatConditions conditions =
                friction == null
                        ? SeatConditions.unknown()
                        : new SeatConditions(
                                Optional.of(
                                        ShopTables.asked(
                                                () -> tables.friction(String.valueOf(friction)))),
                                true);
        return ShopTables.asked(() -> advisor.forSeat(read, joint, conditions));
    }

    private void print(TorqueAdvice advice, TorqueUnit printed) {
        PrintWriter out = spec.commandLine().getOut();
        String basis =
                switch (advice.basis()) {
                    case MAKER -> "given by the maker";
                    case STATED -> "stated in the device file";
                    case FAMILY -> "of the family table";
                    case ESTIMATE -> "ESTIMATE";
                };
        out.println(
                text(advice.valueNm(), printed)
                        + "  "
                        + basis
                        + (advice.from().equals(basis) ? "" : " (" + advice.from() + ")"));
        if (advice.lowNm() < advice.highNm()) {
            out.println(
                    "window "
                            + text(advice.lowNm(), printed)
                            + " to "
                            + text(advice.highNm(), printed));
        }
        advice.cautions().forEach(caution -> out.println("! " + caution));
        advice.estimate().ifPresent(estimate -> detail(out, advice, estimate, printed));
        if (!advice.noEstimate().isEmpty()) {
            out.println("No estimate to compare: " + advice.noEstimate());
        }
    }

    private void detail(
            PrintWriter out, TorqueAdvice advice, TorqueEstimate estimate, TorqueUnit printed) {
        if (advice.basis() != TorqueAdvice.Basis.ESTIMATE) {
            out.println(
                    "An estimate would be "
                            + text(estimate.valueNm(), printed)
                            + ", window "
                            + text(estimate.lowNm(), printed)
                            + " to "
                            + text(estimate.highNm(), printed)
                            + ".");
        }
        estimate.assumptions().forEach(assumption -> out.println("? " + assumption));
        if (!evidence) {
            out.println("Limits, inputs and formulas: --evidence.");
            return;
        }
        out.println("Limits, cautious and utmost:");
        for (TorqueEstimate.Limit limit : estimate.limits()) {
            out.println(
                    "  "
                            + text(limit.cautiousNm(), printed)
                            + " / "
                            + text(limit.utmostNm(), printed)
                            + "  "
                            + limit.kind().words()
                            + ": "
                            + limit.told());
            out.println("      by " + limit.kind().formula());
        }
        out.println("Inputs:");
        for (TorqueEstimate.Input input : estimate.inputs()) {
            out.println("  " + input.name() + ": " + input.value() + " [" + input.from() + "]");
        }
    }

    private void conversion(FastenerTables tables, Torque torque) {
        PrintWriter out = spec.commandLine().getOut();
        Map<String, Object> all = JsonText.map();
        for (String name : tables.torqueUnits().names()) {
            all.put(name, torque.in(tables.torqueUnits().unit(name)));
        }
        if (json) {
            out.print(
                    JsonText.of(
                            JsonText.map(
                                    "format",
                                    "reseat-torque-units/1",
                                    "torque",
                                    torque,
                                    "in",
                                    all)));
        } else {
            all.forEach((name, amount) -> out.println(readable((BigDecimal) amount) + " " + name));
        }
    }

    /** Seven digits exceed the precision of any driver; JSON has them all. */
    private static String readable(BigDecimal amount) {
        return amount.round(new MathContext(7)).stripTrailingZeros().toPlainString();
    }

    private static String text(double newtonMetres, TorqueUnit printed) {
        return Torque.newtonMetres(newtonMetres)
                        .in(printed)
                        .round(new MathContext(3))
                        .toPlainString()
                + " "
                + printed.name();
    }

    private static Map<String, Object> shape(TorqueAdvice advice) {
        return JsonText.map(
                "format", "reseat-torque/1",
                "basis", advice.basis(),
                "valueNm", advice.valueNm(),
                "lowNm", advice.lowNm(),
                "highNm", advice.highNm(),
                "from", advice.from(),
                "cautions", advice.cautions(),
                "noEstimate", advice.noEstimate(),
                "estimate", advice.estimate().map(TorqueCommand::shape));
    }

    private static Map<String, Object> shape(TorqueEstimate estimate) {
        return JsonText.map(
                "valueNm", estimate.valueNm(),
                "lowNm", estimate.lowNm(),
                "highNm", estimate.highNm(),
                "governing", estimate.governing().kind(),
                "preloadLowN", estimate.preloadLowN(),
                "preloadHighN", estimate.preloadHighN(),
                "limits",
                        estimate.limits().stream()
                                .map(
                                        l ->
                                                JsonText.map(
                                                        "kind",
                                                        l.kind(),
                                                        "cautiousNm",
                                                        l.cautiousNm(),
                                                        "utmostNm",
                                                        l.utmostNm(),
                                                        "told",
                                                        l.told(),
                                                        "formula",
                                                        l.kind().formula()))
                                .toList(),
                "inputs",
                        estimate.inputs().stream()
                                .map(
                                        i ->
                                                JsonText.map(
                                                        "name", i.name(), "value", i.value(),
                                                        "from", i.from()))
                                .toList(),
                "assumptions", estimate.assumptions(),
                "cautions", estimate.cautions());
    }
}
