package reseat.console.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.sheet.Terminal;

/** Options of text output. */
final class OutputArgs {

    @Option(names = "--ascii", description = "Use only ASCII for lines and symbols.")
    private boolean ascii;

    @Option(
            names = "--width",
            paramLabel = "N",
            description = "Width in columns (default: that of the terminal, else 100).")
    private @Nullable Integer width;

    Terminal terminal() {
        Terminal terminal = Terminal.detect();
        if (width != null) {
            terminal = terminal.wide(width);
        }
        return ascii ? terminal.asciiOnly() : terminal;
    }
}
