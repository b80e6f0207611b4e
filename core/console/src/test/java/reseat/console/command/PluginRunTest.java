package reseat.console.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import reseat.console.load.PluginFailed;
import reseat.model.BadInputException;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandException;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;

/** How a command of a plugin is run, whatever it does. */
class PluginRunTest {

    /** What a command does. */
    private interface Deed {
        int run(CommandCall call) throws IOException, BadInputException;
    }

    private record It(CommandInfo info, Deed deed) implements Command {
        @Override
        public String name() {
            return "it";
        }

        @Override
        public int run(CommandCall call) throws IOException, BadInputException {
            return deed.run(call);
        }
    }

    private static final CommandInfo INFO =
            CommandInfo.of("Does 100 % of it.")
                    .taking(
                            CommandOption.parameter("FILE", Kind.FILE, "A file."),
                            CommandOption.parameter("MORE", Kind.TEXT, "More.")
                                    .asOptional()
                                    .asRepeatable(),
                            CommandOption.flag("--loud", "Say ${it} loud."),
                            CommandOption.option("--parts", Kind.PART, "PART", "Parts.")
                                    .asRepeatable(),
                            CommandOption.option("--texts", Kind.TEXT, "TEXT", "Texts.")
                                    .asRepeatable(),
                            CommandOption.option("--near", Kind.NUMBER, "MM", "How near.")
                                    .orElse("0.5"),
                            CommandOption.choice("--as", "SHAPE", "Shape.", List.of("a", "b")))
                    .withExamples("reseat it x");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private CommandLine line(Command command) {
        CommandLine line = new CommandLine(new ReseatCommand());
        line.addSubcommand(command.name(), PluginCommands.described(command));
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        line.setExecutionExceptionHandler(
                (e, command1, parsed) -> {
                    throw e;
                });
        return line;
    }

    private int run(Deed deed, String... words) {
        return line(new It(INFO, deed)).execute(words);
    }

    private static Exception thrown(Deed deed) {
        CommandLine line =
                new CommandLine(PluginCommands.described(new It(INFO, deed)).getCommandSpec());
        line.parseArgs("x");
        PluginRun run = line.getCommand();
        return assertThrows(Exception.class, run::call);
    }

    @Test
    void handsOverWhatWasGiven() {
        int code =
                run(
                        call -> {
                            assertEquals(List.of("x"), call.values("FILE"));
                            assertEquals(List.of("y", "z,z"), call.values("MORE"));
                            assertTrue(call.has("--loud"));
                            assertEquals(List.of("p", "q", "r"), call.values("--parts"));
                            assertEquals(List.of("s,t"), call.values("--texts"));
                            assertEquals(2.25, call.number("--near").orElseThrow());
                            assertEquals(Optional.of("b"), call.value("--as"));
                            call.line("done");
                            return Command.FINDINGS;
                        },
                        "it",
                        "x",
                        "y",
                        "z,z",
                        "--loud",
                        "--parts",
                        "p,q",
                        "--parts=r",
                        "--texts",
                        "s,t",
                        "--near",
                        "2.25",
                        "--as",
                        "b");

        assertEquals(1, code, err::toString);
        assertEquals("done\n", out.toString().replace("\r\n", "\n"));
    }

    @Test
    void whatWasNotGivenIsEmptyOrUsual() {
        int code =
                run(
                        call -> {
                            for (String name : List.of("MORE", "--loud", "--parts", "--as")) {
                                assertEquals(List.of(), call.values(name), name);
                            }
                            assertEquals(0.5, call.number("--near").orElseThrow());
                            assertThrows(
                                    IllegalArgumentException.class, () -> call.values("--none"));
                            return Command.FINE;
                        },
                        "it",
                        "x");

        assertEquals(0, code, err::toString);
    }

    @Test
    void itsHelpIsMadeOfItsData() {
        assertEquals(0, run(call -> 3, "it", "--help"));

        String help = out.toString().replaceAll("\\s+", " ");
        for (String part :
                List.of(
                        "Does 100 % of it.",
                        "--loud Say ${it} loud.",
                        "[MORE...] More.",
                        "--near=MM How near (default: 0.5).",
                        "--parts=PART[,PART...]",
                        "Example: reseat it x",
                        "-V, --version")) {
            assertTrue(help.contains(part), part + " is not in " + help);
        }
    }

    @Test
    void refusesAChoiceThatThereIsNot() {
        assertEquals(2, run(call -> 0, "it", "x", "--as", "c"));
        assertTrue(
                err.toString().startsWith("--as: found \"c\", expected one of a, b"),
                err.toString());
    }

    @Test
    void whatIsWrongWithTheInputIsPassedOn() {
        CommandException own = new CommandException("reseat: no.");
        assertEquals(
                own,
                thrown(
                        call -> {
                            throw own;
                        }));
        NoSuchFileException missing = new NoSuchFileException("x");
        assertEquals(
                missing,
                thrown(
                        call -> {
                            throw missing;
                        }));
        UncheckedIOException unchecked = new UncheckedIOException(missing);
        assertEquals(
                unchecked,
                thrown(
                        call -> {
                            throw unchecked;
                        }));
    }

    @Test
    void whatElseItThrowsIsItsOwnFailure() {
        for (Deed deed :
                List.<Deed>of(
                        call -> {
                            throw new IllegalStateException("torn");
                        },
                        call -> {
                            throw new IOException("torn");
                        },
                        call -> {
                            throw new NoClassDefFoundError("torn");
                        })) {
            Exception failed = thrown(deed);
            assertEquals(PluginFailed.class, failed.getClass());
            assertTrue(
                    String.valueOf(failed.getMessage()).startsWith("reseat: the command it of"),
                    failed::toString);
        }
        assertTrue(thrown(call -> 7).toString().contains("7, which is not an exit code"));
    }

    @Test
    void oneThatSaysNothingOfItselfFails() {
        Command silent =
                new Command() {
                    @Override
                    public String name() {
                        return "it";
                    }

                    @Override
                    public CommandInfo info() {
                        throw new IllegalStateException("speechless");
                    }

                    @Override
                    public int run(CommandCall call) {
                        return FINE;
                    }
                };

        PluginFailed failed =
                assertThrows(PluginFailed.class, () -> PluginCommands.described(silent));
        assertTrue(String.valueOf(failed.getMessage()).contains("speechless"), failed::toString);
    }

    @Test
    void cancelsNothingByItself() {
        assertEquals(
                0,
                run(
                        call -> {
                            call.progress("half");
                            return call.cancelled() ? Command.FAILED : Command.FINE;
                        },
                        "it",
                        "x"));
        assertEquals("", err.toString());
    }
}
