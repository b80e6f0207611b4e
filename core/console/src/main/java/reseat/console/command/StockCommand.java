package reseat.console.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the shop has, and taking it for a job. */
@Command(
        name = "stock",
        description = "Look into the shop's stock; reserve from it for a job, use, give back.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            StockListCommand.class,
            StockOpenCommand.class,
            StockReserveCommand.class,
            StockUseCommand.class,
            StockReleaseCommand.class,
            StockSettleCommand.class,
            StockFillCommand.class
        },
        footer = {
            "",
            "Examples:",
            "  reseat stock list samples/stock/shop.yaml",
            "  reseat stock list samples/stock/shop.yaml --expired --today 2026-12-01",
            "  reseat stock open samples/stock/shop.yaml",
            "",
            "Each has its own help: reseat stock reserve --help."
        })
final class StockCommand implements Runnable {

    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command.");
    }
}
