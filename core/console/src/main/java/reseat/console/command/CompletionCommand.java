package reseat.console.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that adds completion of our commands to bash and zsh. */
@Command(
        name = "completion",
        description = "Print a completion script for bash and zsh.",
        sortOptions = false,
        footer = {
            "",
            "Example:",
            "  reseat completion > reseat-completion.sh",
            "",
            "For the current shell only: source <(reseat completion)"
        })
final class CompletionCommand implements Callable<Integer> {

    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        CommandLine root = spec.root().commandLine();
        PrintWriter out = spec.commandLine().getOut();
        out.print(AutoComplete.bash(root.getCommandName(), root));
        out.print('\n');
        return 0;
    }
}
