package reseat.console.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import reseat.console.load.OurPlugins;
import reseat.console.load.PluginFailed;
import reseat.spi.Command;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;

/** Adds commands of plugins to the command line. */
final class PluginCommands {

    private PluginCommands() {}

    /** Adds the command of a name, if a plugin has it; throws if that plugin fails. */
    static void add(CommandLine line, String name) {
        for (Command command : OurPlugins.quietly().commands()) {
            if (command.name().equals(name)) {
                line.addSubcommand(name, described(command));
            }
        }
    }

    /** Adds all commands of plugins. Reports each one that fails, and adds the others. */
    static void addAll(CommandLine line) {
        for (Command command : OurPlugins.quietly().commands()) {
            try {
                line.addSubcommand(command.name(), described(command));
            } catch (PluginFailed e) {
                OurPlugins.tellLater(String.valueOf(e.getMessage()));
            }
        }
    }

    /** Returns the command line of one command. */
    static CommandLine described(Command command) {
        return OurPlugins.described(command, () -> made(command, command, command.name()));
    }

    private static CommandLine made(Command top, Command command, String path) {
        CommandInfo info = command.info();
        PluginRun run = new PluginRun(top, command, path, info);
        CommandSpec spec = CommandSpec.wrapWithoutInspection(run).name(command.name());
        run.isKnownBy(spec);
        describe(spec, info);
        int place = 0;
        for (CommandOption option : info.options()) {
            if (option.isParameter()) {
                spec.addPositional(parameter(option, place));
                place++;
            } else {
                spec.addOption(option(option));
            }
        }
        List<Command> actions = command.actions();
        if (!actions.isEmpty()) {
            spec.usageMessage().synopsisSubcommandLabel("COMMAND");
        }
        CommandLine line = new CommandLine(spec);
        for (Command action : actions) {
            line.addSubcommand(action.name(), made(top, action, path + " " + action.name()));
        }
        return line;
    }

    private static void describe(CommandSpec spec, CommandInfo info) {
        List<String> synopsis = new ArrayList<>();
        for (String call : info.usage()) {
            synopsis.add((synopsis.isEmpty() ? "reseat " : "       reseat ") + call);
        }
        List<String> footer = new ArrayList<>();
        if (!info.examples().isEmpty()) {
            footer.add("");
            footer.add(info.examples().size() == 1 ? "Example:" : "Examples:");
            info.examples().forEach(example -> footer.add("  " + example));
        }
        if (!info.notes().isEmpty()) {
            footer.add("");
            footer.addAll(info.notes());
        }
        spec.usageMessage()
                .description(plain(info.description()))
                .customSynopsis(plain(synopsis))
                .footer(plain(footer))
                .sortOptions(false);
    }

    private static OptionSpec option(CommandOption option) {
        OptionSpec.Builder builder =
                OptionSpec.builder(option.name())
                        .type(type(option))
                        .auxiliaryTypes(valueType(option))
                        .arity(option.kind() == Kind.FLAG ? "0" : "1")
                        .splitRegex(option.isListed() ? "," : "")
                        .required(option.required())
                        .description(plain(List.of(meaning(option))));
        if (option.kind() != Kind.FLAG) {
            builder.paramLabel(option.label());
        }
        if (!option.choices().isEmpty()) {
            builder.completionCandidates(option.choices());
        }
        option.usual().ifPresent(builder::defaultValue);
        return builder.build();
    }

    private static PositionalParamSpec parameter(CommandOption option, int place) {
        String least = option.required() ? "1" : "0";
        String most = option.repeatable() ? "*" : "1";
        PositionalParamSpec.Builder builder =
                PositionalParamSpec.builder()
                        .type(type(option))
                        .auxiliaryTypes(valueType(option))
                        .index(option.repeatable() ? place + "..*" : "" + place)
                        .arity(least.equals(most) ? most : least + ".." + most)
                        .splitRegex(option.isListed() ? "," : "")
                        .required(option.required())
                        .paramLabel(option.label())
                        .description(plain(List.of(meaning(option))));
        if (!option.choices().isEmpty()) {
            builder.completionCandidates(option.choices());
        }
        option.usual().ifPresent(builder::defaultValue);
        return builder.build();
    }

    private static Class<?> type(CommandOption option) {
        return option.repeatable() ? List.class : valueType(option);
    }

    private static Class<?> valueType(CommandOption option) {
        return switch (option.kind()) {
            case FLAG -> boolean.class;
            case WHOLE -> Long.class;
            case NUMBER -> Double.class;
            case FILE, FOLDER, DEVICE -> Path.class;
            default -> String.class;
        };
    }

    private static String meaning(CommandOption option) {
        String meaning = option.meaning();
        if (option.usual().isEmpty()) {
            return meaning;
        }
        boolean sentence = meaning.endsWith(".");
        return (sentence ? meaning.substring(0, meaning.length() - 1) : meaning)
                + " (default: "
                + option.usual().get()
                + (sentence ? ")." : ")");
    }

    /** The command line library treats texts as format strings with variables. */
    private static String[] plain(List<String> lines) {
        return lines.stream()
                .map(line -> line.replace("%", "%%").replace("${", "$${"))
                .toArray(String[]::new);
    }
}
