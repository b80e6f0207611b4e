package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reseat.console.load.OurPlugins;
import reseat.device.StockFile;
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

    /** Opens the stock; notes about it and about plugins that were left out go to {@code err}. */
    Stock open(PrintWriter err) throws BadInputException {
        return open(file, err);
    }

    static Stock open(Path file, PrintWriter err) throws BadInputException {
        try {
            Stock stock = StockFile.read(file, OurPlugins.get(err).stockSources()).open();
            stock.openingNotes().forEach(note -> err.println("reseat: " + note + "."));
            err.flush();
            return stock;
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
        private @Nullable String today;

        LocalDate day() {
            if (today == null) {
                return LocalDate.now(java.time.ZoneId.systemDefault());
            }
            try {
                return LocalDate.parse(today);
            } catch (DateTimeException e) {
                throw new BadInput(
                        "reseat: --today: found \""
                                + today
                                + "\", expected a date such as 2026-03-02.");
            }
        }
    }
}
