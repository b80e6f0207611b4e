package reseat.console.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Prints a script that adds completion of our commands to bash and zsh. For ids, which depend on
 * the device file on the line, that script calls this command again, with hidden options.
 */
@Command(
        name = "completion",
        description = "Print a completion script for bash and zsh.",
        sortOptions = false,
        footer = {
            "",
            "Example:",
            "  reseat completion > reseat-completion.sh",
            "",
            "For the current shell only: source <(reseat completion)",
            "Ids complete once the device file is on the line: --free <Tab>."
        })
final class CompletionCommand implements Callable<Integer> {

    /** The hidden option by which the script asks for ids. */
    static final String IDS = "--ids";

    @Spec private CommandSpec spec;

    @Option(
            names = IDS,
            hidden = true,
            description = "Print the ids that can follow this word of the line.")
    private @Nullable String after;

    @Option(names = "--current", hidden = true, description = "What of the id is typed already.")
    private String current = "";

    @Parameters(hidden = true, description = "The words of the line, without the program's name.")
    private List<String> words = new ArrayList<>();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (after != null) {
            ShellIds.after(after, current, words).forEach(id -> out.print(id + "\n"));
            return 0;
        }
        CommandLine root = spec.root().commandLine();
        out.print(AutoComplete.bash(root.getCommandName(), root));
        out.print('\n');
        out.print(ShellIds.SCRIPT);
        return 0;
    }
}
