package reseat.testkit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandException;
import reseat.spi.Plugin;
import reseat.spi.Plugins;

/**
 * Runs a command of a plugin without the {@code reseat} program and returns its output:
 *
 * <pre>{@code
 * CommandTrial.Ran ran = CommandTrial.of(new MyPlugin()).run("lengths", "mine.yaml", "--json");
 * assertEquals(0, ran.code(), ran.err());
 * }</pre>
 *
 * <p>Words are parsed as the program parses them, but error messages about them differ. Unexpected
 * exceptions of the command are thrown by {@link #run}.
 */
public final class CommandTrial {

    private final Plugins plugins;
    private final List<Command> commands;
    private final String input;
    private final boolean cancelled;

    private CommandTrial(Plugins plugins, List<Command> commands, String input, boolean cancelled) {
        this.plugins = plugins;
        this.commands = commands;
        this.input = input;
        this.cancelled = cancelled;
    }

    /**
     * The result of a call; line ends are {@code \n}.
     *
     * @param code the exit code
     * @param out the standard output
     * @param err the standard error
     */
    public record Ran(int code, String out, String err) {}

    /** Tries the commands of a plugin that works alone. */
    public static CommandTrial of(Plugin plugin) {
        return of(plugin, Plugins.of(List.of(plugin)));
    }

    /** Tries the commands of a plugin that works with others. */
    public static CommandTrial of(Plugin plugin, Plugins all) {
        return new CommandTrial(all, plugin.commands(), "", false);
    }

    /** Returns a copy with text piped into the command. */
    public CommandTrial withInput(String text) {
        return new CommandTrial(plugins, commands, text, cancelled);
    }

    /** Returns a copy in which the user has pressed Ctrl-C. */
    public CommandTrial cancelled() {
        return new CommandTrial(plugins, commands, input, true);
    }

    /**
     * Runs a command.
     *
     * @param words what a user types after {@code reseat}
     */
    public Ran run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        PrintWriter errors = new PrintWriter(err);
        int code;
        try {
            code = run(List.of(words), new PrintWriter(out), errors);
        } catch (CommandException | BadInputException | IOException e) {
            errors.println(e.getMessage());
            code = Command.BAD_INPUT;
        }
        return new Ran(code, unixLines(out), unixLines(err));
    }

    private int run(List<String> words, PrintWriter out, PrintWriter err)
            throws IOException, BadInputException {
        List<Command> among = commands;
        Optional<Command> named = Optional.empty();
        int at = 0;
        while (at < words.size() && !among.isEmpty()) {
            String word = words.get(at);
            Optional<Command> next =
                    among.stream().filter(each -> each.name().equals(word)).findFirst();
            if (next.isEmpty()) {
                break;
            }
            named = next;
            among = next.get().actions();
            at++;
        }
        List<String> rest = words.subList(at, words.size());
        if (named.isEmpty()) {
            throw new CommandException("reseat: there is no command " + String.join(" ", words));
        }
        if (rest.equals(List.of("--help"))) {
            TrialWords.help(named.get()).forEach(out::println);
            return Command.FINE;
        }
        if (!among.isEmpty()) {
            throw new CommandException("reseat: name a command of " + named.get().name());
        }
        Map<String, List<String>> values = TrialWords.of(named.get().info().options(), rest);
        return named.get()
                .run(
                        new TrialCall(
                                values,
                                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                                out,
                                err,
                                plugins,
                                cancelled));
    }

    private static String unixLines(StringWriter text) {
        return text.toString().replace(System.lineSeparator(), "\n");
    }
}
