package reseat.console.command;

import java.util.List;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The command {@code reseat} itself. A new command of our own is one class here, its line below,
 * and its name in {@link reseat.console.load.BuiltInCommands}.
 */
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
        })
public final class ReseatCommand implements Runnable {

    private static final List<Class<?>> COMMANDS =
            List.of(
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
                    CutCommand.class,
                    NewCommand.class,
                    PluginsCommand.class,
                    ConsoleCommand.class,
                    ScriptCommand.class,
                    CompletionCommand.class);

    @Spec private CommandSpec spec;

    /**
     * Returns the command line that understands some words. Making all commands takes longer than
     * all else at a start, so where the first word is the name of one, that is the only one made.
     * Plugins are loaded here only where it is none of our own.
     *
     * @param words what follows {@code reseat}
     */
    public static CommandLine understanding(String... words) {
        List<Class<?>> named =
                COMMANDS.stream()
                        .filter(type -> words.length > 0 && isNamed(type, words[0]))
                        // writes down what all commands take
                        .filter(type -> type != CompletionCommand.class)
                        .toList();
        CommandLine line = new CommandLine(new ReseatCommand());
        if (named.isEmpty() && words.length > 0) {
            PluginCommands.add(line, words[0]);
        }
        if (named.isEmpty() && line.getSubcommands().isEmpty()) {
            COMMANDS.forEach(line::addSubcommand);
            PluginCommands.addAll(line);
        }
        named.forEach(line::addSubcommand);
        return line;
    }

    /**
     * Tells whether a command is called so. Its class is too; looking there first spares reading
     * what stands at all the others.
     */
    private static boolean isNamed(Class<?> type, String word) {
        return type.getSimpleName().equalsIgnoreCase(word.concat("Command"))
                && Objects.requireNonNull(type.getAnnotation(Command.class)).name().equals(word);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command.");
    }
}
