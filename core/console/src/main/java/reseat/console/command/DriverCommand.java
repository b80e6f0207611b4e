package reseat.console.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
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
import reseat.fasten.DriverFit;
import reseat.fasten.Drives;
import reseat.fasten.FastenerTables;
import reseat.fasten.TableRow;
import reseat.text.JsonText;

/** Shows which driver fits a recess, and which only appears to fit. */
@Command(
        name = "driver",
        description = "Show which driver fits a recess, or which recess a screw usually has.",
        customSynopsis = {
            "reseat driver RECESS [OPTIONS]",
            "       reseat driver DRIVER RECESS [OPTIONS]",
            "       reseat driver --thread THREAD [--head HEAD] [OPTIONS]"
        },
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat driver JIS-S0",
            "  reseat driver PH0 JIS-S0",
            "  reseat driver --thread M3 --head pan"
        })
final class DriverCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;
    @Mixin private ShopTables shop;

    @Parameters(
            arity = "0..2",
            paramLabel = "DRIVE",
            description =
                    "The recess, or the driver and the recess: T5, PH00, JIS-S0, H1.5, 5L0.8.")
    private List<String> drives = List.of();

    @Option(
            names = "--thread",
            paramLabel = "THREAD",
            description = "Thread of the screw, such as M3.")
    private @Nullable String thread;

    @Option(names = "--head", paramLabel = "HEAD", description = "Shape of its head, such as pan.")
    private @Nullable String head;

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        FastenerTables tables = shop.tables();
        if (drives.isEmpty() == (thread == null)) {
            throw new ParameterException(
                    spec.commandLine(), "Name a recess, such as PH00, or a --thread, not both.");
        }
        if (thread == null && head != null) {
            throw new ParameterException(spec.commandLine(), "--head needs a --thread.");
        }
        if (thread != null) {
            List<TableRow> rows = byScrew(tables, thread);
            printRows(rows);
            return 0;
        }
        Drives known = tables.drives();
        String recess = drives.get(drives.size() - 1);
        List<DriverFit> fits =
                ShopTables.asked(
                        () ->
                                drives.size() == 2
                                        ? List.of(
                                                known.fit(
                                                        known.drive(drives.get(0)),
                                                        known.drive(recess)))
                                        : known.drivers(known.drive(recess)));
        printFits(fits);
        return 0;
    }

    private List<TableRow> byScrew(FastenerTables tables, String wanted) {
        return ShopTables.asked(
                () -> tables.drives().byScrew(Optional.ofNullable(head), tables.thread(wanted)));
    }

    private void printRows(List<TableRow> rows) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(
                    JsonText.of(
                            JsonText.map(
                                    "format",
                                    "reseat-drives/1",
                                    "drives",
                                    rows.stream().map(TableRow::cells).toList())));
            return;
        }
        for (TableRow row : rows) {
            out.println(
                    row.text("drive")
                            + "  "
                            + row.text("standard")
                            + ", "
                            + row.text("head")
                            + measure(row, "recessAcrossMm", "across")
                            + measure(row, "recessDepthMm", "deep")
                            + " ["
                            + row.source()
                            + "]");
        }
        if (rows.isEmpty()) {
            out.println("No table row matches.");
        }
    }

    private static String measure(TableRow row, String column, String word) {
        String cell = row.text(column);
        return cell.isEmpty() ? "" : ", " + cell + " mm " + word;
    }

    private void printFits(List<DriverFit> fits) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(
                    JsonText.of(
                            JsonText.map(
                                    "format",
                                    "reseat-driver/1",
                                    "fits",
                                    fits.stream()
                                            .map(
                                                    f ->
                                                            JsonText.map(
                                                                    "driver",
                                                                    f.driver().id(),
                                                                    "recess",
                                                                    f.recess().id(),
                                                                    "verdict",
                                                                    f.verdict(),
                                                                    "why",
                                                                    f.why(),
                                                                    "source",
                                                                    f.source()))
                                            .toList())));
            return;
        }
        if (fits.isEmpty()) {
            out.println("No known driver fits it.");
        }
        for (DriverFit fit : fits) {
            out.println(
                    fit.driver().id()
                            + " in "
                            + fit.recess().id()
                            + ": "
                            + fit.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                            + ", "
                            + fit.why()
                            + " ["
                            + fit.source()
                            + "]");
        }
    }
}
