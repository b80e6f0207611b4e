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
 * The command {@code reseat} itself. A new built-in command is one class here, its line below, and
 * its name in {@link reseat.console.load.BuiltInCommands}.
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
            "3:internal error"
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
                    KindsCommand.class,
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
     * Returns the command line for some words. Creating all commands dominates the start-up time,
     * so if the first word names a command, only that one is created. Plugins are loaded only if it
     * is not a built-in command.
     *
     * @param words what follows {@code reseat}
     */
    public static CommandLine understanding(String... words) {
        List<Class<?>> named =
                COMMANDS.stream()
                        .filter(type -> words.length > 0 && isNamed(type, words[0]))
                        // the script inspects the options of all commands
                        .filter(type -> type != CompletionCommand.class || asksForIds(words))
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

    private static boolean asksForIds(String... words) {
        return words.length > 1 && words[1].startsWith(CompletionCommand.IDS);
    }

    /**
     * Returns whether a command has a name. Its class name matches; checking that first avoids
     * reading the annotations of all others.
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
