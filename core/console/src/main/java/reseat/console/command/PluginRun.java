package reseat.console.command;

import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import reseat.console.load.OurPlugins;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;

/** Runs a command of a plugin for the command line. */
final class PluginRun implements Callable<Integer> {

    private final Command top;
    private final Command command;
    private final String path;
    private final CommandInfo info;
    private @Nullable CommandSpec spec;

    /**
     * Creates an instance.
     *
     * @param top the command of the plugin that it belongs to
     * @param command the command to run
     * @param path its whole name, such as {@code stock list}
     * @param info its options and parameters
     */
    PluginRun(Command top, Command command, String path, CommandInfo info) {
        this.top = top;
        this.command = command;
        this.path = path;
        this.info = info;
    }

    /** Tells it its place in the command line. */
    void isKnownBy(CommandSpec known) {
        spec = known;
    }

    @Override
    public Integer call() throws Exception {
        CommandSpec known = Objects.requireNonNull(spec);
        if (!known.subcommands().isEmpty()) {
            throw new ParameterException(known.commandLine(), "Name a command.");
        }
        try (PluginCall call = new PluginCall(known, info)) {
            for (CommandOption option : info.options()) {
                choose(known, option, call);
            }
            return OurPlugins.ran(top, path, () -> ended(call));
        }
    }

    private static void choose(CommandSpec known, CommandOption option, PluginCall call) {
        for (String value : call.values(option.name())) {
            if (!option.choices().isEmpty() && !option.choices().contains(value)) {
                throw new ParameterException(
                        known.commandLine(),
                        option.name()
                                + ": found \""
                                + value
                                + "\", expected one of "
                                + String.join(", ", option.choices()));
            }
        }
    }

    private int ended(PluginCall call) throws IOException, BadInputException {
        int code = command.run(call);
        if (code < Command.FINE || code > Command.FAILED) {
            throw new IllegalStateException("it returned " + code + ", which is not an exit code");
        }
        return code;
    }
}
