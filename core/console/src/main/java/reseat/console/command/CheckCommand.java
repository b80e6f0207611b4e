package reseat.console.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import reseat.check.Check;
import reseat.check.CheckInput;
import reseat.console.check.CheckReport;
import reseat.console.check.CheckRunner;
import reseat.console.check.Sifted;
import reseat.console.load.OurPlugins;
import reseat.console.report.JsonReport;
import reseat.console.report.JunitReport;
import reseat.console.report.Outcome;
import reseat.console.report.SarifReport;
import reseat.console.report.TextReport;
import reseat.console.sheet.Terminal;
import reseat.files.DeviceSource;
import reseat.files.KnownFinding;
import reseat.files.StockFile;
import reseat.model.BadInputException;
import reseat.model.Severity;
import reseat.script.host.ScriptChecks;
import reseat.script.host.ScriptLimits;
import reseat.spi.Plugins;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.stock.StockItem;

/** Runs checks on device files. */
@Command(
        name = "check",
        description = "Check devices for problems, in all their variants.",
        customSynopsis = "reseat check PATH... [OPTIONS]",
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  reseat check samples/quill/quill.yaml",
            "  reseat check samples/sorrel/sorrel.yaml --variant lte --drives PH00,PH000,T4,T5,H1.5",
            "  reseat check samples/tansy samples/bramble --only screws,bonds --from warning",
            "  reseat check samples/tansy/tansy.yaml --free cell --as sarif > tansy.sarif",
            "",
            "`reseat checks` lists the checks. More in core/docs/checking.md.",
            "Exit code 1: a finding is at or above --from. 2: a file has errors; the others were",
            "checked. 3: a check failed; the others were run."
        })
final class CheckCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Mixin private CheckSubject subject = new CheckSubject();
    @Mixin private CheckChoice choice = new CheckChoice();
    @Mixin private ShopTables shop;

    @Option(
            names = "--drives",
            split = ",",
            paramLabel = "DRIVE",
            description = "Drives that the shop has drivers for; not checked without this option.")
    private @Nullable List<String> drives;

    @Option(
            names = "--stock",
            paramLabel = "FILE",
            description = "File that names the shop's stock; see core/docs/stock.md.")
    private @Nullable Path stockFile;

    @Mixin private ScriptArgs scripts = new ScriptArgs();

    @Mixin private KnownArgs known = new KnownArgs();

    @Option(
            names = "--from",
            paramLabel = "SEVERITY",
            description =
                    "Lowest severity for exit code 1: ${COMPLETION-CANDIDATES}; default: ERROR.")
    private Severity from = Severity.ERROR;

    @Option(
            names = "--as",
            paramLabel = "FORM",
            description = "Output format: ${COMPLETION-CANDIDATES}; default: TEXT.")
    private Form form = Form.TEXT;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to this file, and print only the summary.")
    private @Nullable Path file;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Number of threads (default: one per processor).")
    private int threads = Runtime.getRuntime().availableProcessors();

    /** The output formats. */
    enum Form {
        TEXT,
        JSON,
        SARIF,
        JUNIT
    }

    @Override
    public Integer call() throws BadInputException {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (threads < 1) {
            throw new BadInput("reseat: --threads: found " + threads + ", expected 1 or more.");
        }
        try (ScriptChecks pool = new ScriptChecks(ScriptLimits.USUAL, shop.files())) {
            return check(pool, out, err);
        }
    }

    private int check(ScriptChecks pool, PrintWriter out, PrintWriter err)
            throws BadInputException {
        Plugins plugins = OurPlugins.get(err);
        List<Check> all = new ArrayList<>(plugins.checks());
        all.addAll(scripts.checks(pool, err));
        choice.checkSettings(all);
        List<Check> checks = choice.chosen(all);
        List<KnownFinding> accepted = known.read();
        Optional<List<StockItem>> stock = stock(err);
        List<DeviceSource> sources = new ArrayList<>();
        for (DeviceSource source : subject.sources(shop.tables(), err)) {
            sources.add(source.with((CheckInput input) -> more(input, stock)));
        }

        Terminal terminal = Terminal.detect();
        Following following = new Following(err, terminal.interactive());
        CheckReport report = new CheckRunner(checks, threads, following).run(sources);
        following.done();
        Sifted sifted = Sifted.of(report, accepted, known.today());
        if (known.accepts()) {
            out.println(known.accept(sifted));
            sifted = Sifted.of(report, known.read(), known.today());
        }
        Outcome outcome = new Outcome(report, sifted, from, known.today());
        print(outcome, terminal, out, err);
        return outcome.code();
    }

    /** Adds the shop's stock and other inputs that checks may need. */
    private CheckInput more(CheckInput input, Optional<List<StockItem>> stock) {
        CheckInput more = choice.set(input).on(known.today());
        if (stock.isPresent()) {
            more = more.withStock(stock.get());
        }
        List<String> owned = drives;
        return owned == null ? more : more.withDrives(owned);
    }

    private Optional<List<StockItem>> stock(PrintWriter err) throws BadInputException {
        Path named = stockFile;
        if (named == null) {
            return Optional.empty();
        }
        try (Stock stock = StockFile.read(named, OurPlugins.get(err).stockSources()).open()) {
            stock.openingNotes().forEach(note -> err.println("reseat: " + note + "."));
            return Optional.of(stock.items());
        } catch (StockException e) {
            String message = String.valueOf(e.getMessage());
            // errors of a file already carry their locations, one per line
            throw new BadInput(
                    message.contains(": error: ") ? message : "reseat: " + message + ".");
        }
    }

    private void print(Outcome outcome, Terminal terminal, PrintWriter out, PrintWriter err) {
        String text =
                switch (form) {
                    case TEXT -> TextReport.write(outcome, terminal);
                    case JSON -> JsonReport.write(outcome);
                    case SARIF -> SarifReport.write(outcome, Path.of(""));
                    case JUNIT -> JunitReport.write(outcome);
                };
        if (form != Form.TEXT) {
            // the cause of the exit code is shown even if the report goes to a file
            outcome.hindrances().forEach(err::println);
        }
        if (file == null) {
            out.print(text);
            return;
        }
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.println(TextReport.summary(outcome));
    }
}
