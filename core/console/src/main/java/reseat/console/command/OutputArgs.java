package reseat.console.command;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import reseat.console.sheet.Terminal;

/** How text comes out. */
final class OutputArgs {

    @Option(names = "--ascii", description = "Use nothing but ASCII for lines and signs.")
    private boolean ascii;

    @Option(
            names = "--width",
            paramLabel = "N",
            description = "Columns to fill (default: those of the terminal, else 100).")
    private @Nullable Integer width;

    Terminal terminal() {
        Terminal terminal = Terminal.detect();
        if (width != null) {
            terminal = terminal.wide(width);
        }
        return ascii ? terminal.asciiOnly() : terminal;
    }
}
