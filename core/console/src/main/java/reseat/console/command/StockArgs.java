package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reseat.console.load.OurPlugins;
import reseat.files.StockFile;
import reseat.model.BadInputException;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** The stock that a command is about. */
final class StockArgs {

    @Parameters(
            index = "0",
            paramLabel = "STOCK",
            description = "File that names the shop's stock; see core/docs/stock.md.")
    private Path file = Path.of("");

    /** Opens the stock; {@code err} is told of plugins that were left out. */
    Stock open(PrintWriter err) throws BadInputException {
        return open(file, err);
    }

    static Stock open(Path file, PrintWriter err) throws BadInputException {
        try {
            return StockFile.read(file, OurPlugins.get(err).stockSources()).open();
        } catch (StockException e) {
            throw refused(e);
        }
    }

    /** Returns what ends a command when a stock refuses. */
    static BadInput refused(StockException e) {
        String message = String.valueOf(e.getMessage());
        // what is wrong with a file is told with places, line by line
        return new BadInput(message.contains(": error: ") ? message : "reseat: " + message + ".");
    }

    /** The day that a command asks for. */
    static final class Day {

        @Option(
                names = "--today",
                paramLabel = "DATE",
                description = "The day of the work, such as 2026-03-02 (default: this day).")
        private @Nullable LocalDate today;

        LocalDate day() {
            return today == null ? LocalDate.now(ZoneId.systemDefault()) : today;
        }
    }
}
