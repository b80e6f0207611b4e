package reseat.stock.desk;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import reseat.files.StockFile;
import reseat.model.BadInputException;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.stock.Stock;
import reseat.stock.StockException;

/** Common arguments of the stock commands: the stock, the date and the output format. */
final class StockArgs {

    static final CommandOption STOCK =
            CommandOption.parameter(
                    "STOCK",
                    Kind.FILE,
                    "File that names the shop's stock; see core/docs/stock.md.");

    static final CommandOption TODAY =
            CommandOption.option(
                    "--today",
                    Kind.TEXT,
                    "DATE",
                    "The date of the work, such as 2026-03-02 (default: today).");

    static final CommandOption JSON =
            CommandOption.flag("--json", "Print the result as JSON; see core/docs/stock.md.");

    private StockArgs() {}

    /** Opens the stock that the command line names. */
    static Stock open(CommandCall call) throws BadInputException {
        return open(call, call.path("STOCK"));
    }

    static Stock open(CommandCall call, Path file) throws BadInputException {
        try {
            return StockFile.read(file, call.plugins().stockSources()).open(call.err());
        } catch (StockException e) {
            throw refused(e);
        }
    }

    /** Returns the failure of a command for a stock's refusal. */
    static CommandException refused(StockException e) {
        return new CommandException(StockFile.message(e));
    }

    /** Returns the date that the command line gives. */
    static LocalDate day(CommandCall call) {
        Optional<String> given = call.value("--today");
        if (given.isEmpty()) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(given.get());
        } catch (DateTimeException e) {
            throw new CommandException(
                    "reseat: --today: found \""
                            + given.get()
                            + "\", expected a date such as 2026-03-02.");
        }
    }
}
