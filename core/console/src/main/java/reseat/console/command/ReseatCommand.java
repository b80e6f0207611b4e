package reseat.console.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command {@code reseat} itself. A new command is one class here and one line below. */
@Command(
        name = "reseat",
        description = "Take portable electronics apart and put them back, in a known order.",
        mixinStandardHelpOptions = true,
        versionProvider = VersionLines.class,
        scope = ScopeType.INHERIT,
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:fine",
            "1:findings at or above the threshold",
            "2:wrong usage or bad input",
            "3:failed inside"
        },
        subcommands = {
            PlanCommand.class,
            WhyCommand.class,
            GraphCommand.class,
            CompareCommand.class,
            JudgeCommand.class,
            FactsCommand.class,
            ProofreadCommand.class,
            AssessCommand.class,
            SchemaCommand.class,
            CheckCommand.class,
            ChecksCommand.class,
            TorqueCommand.class,
            DriverCommand.class,
            SwapCommand.class,
            TraysCommand.class,
            CutCommand.class,
            NewCommand.class,
            PluginsCommand.class,
            ConsoleCommand.class,
            StockCommand.class,
            TodayCommand.class,
            ScriptCommand.class,
            CompletionCommand.class
        })
public final class ReseatCommand implements Runnable {

    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command.");
    }
}
