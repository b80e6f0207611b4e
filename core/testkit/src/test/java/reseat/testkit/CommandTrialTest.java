package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.files.ResolvedJson;
import reseat.model.BadInputException;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;
import reseat.plan.Effort;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.spi.Command;
import reseat.spi.CommandCall;
import reseat.spi.CommandInfo;
import reseat.spi.CommandOption;
import reseat.spi.CommandOption.Kind;
import reseat.spi.PlanOptions;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** A command of a plugin can be tried without the program, and the contract sees what it lacks. */
class CommandTrialTest {

    /** What a command does. */
    private interface Deed {
        int run(CommandCall call) throws IOException, BadInputException;
    }

    private record It(String name, CommandInfo info, List<Command> actions, Deed deed)
            implements Command {
        @Override
        public int run(CommandCall call) throws IOException, BadInputException {
            return deed.run(call);
        }
    }

    private record Its(List<Command> commands) implements Plugin {
        @Override
        public PluginInfo info() {
            return new PluginInfo("its", "1", "Its");
        }
    }

    private static final CommandInfo INFO =
            CommandInfo.of("Does it.")
                    .taking(
                            CommandOption.parameter("DEVICE", Kind.DEVICE, "A device."),
                            CommandOption.option("--n", Kind.WHOLE, "N", "How many.").orElse("3"))
                    .taking(PlanOptions.forGoal())
                    .taking(PlanOptions.forRules())
                    .taking(PlanOptions.forEffort())
                    .withExamples("reseat it device.yaml --free part");

    @TempDir Path folder;

    private static CommandTrial trial(Deed deed) {
        return CommandTrial.of(new Its(List.of(new It("it", INFO, List.of(), deed))));
    }

    private String device() throws IOException {
        return Files.writeString(
                        folder.resolve("device.json"),
                        ResolvedJson.write(
                                GeneratedDevice.of(DeviceShape.NOTEBOOK.sized(12, 30), 7)))
                .toString();
    }

    @Test
    void printsWhatItPrints() {
        CommandTrial.Ran ran =
                trial(
                                call -> {
                                    call.line(call.value("--n").orElseThrow());
                                    call.out()
                                            .println(
                                                    new String(
                                                            call.in().readAllBytes(),
                                                            StandardCharsets.UTF_8));
                                    call.err().println("warned");
                                    return call.cancelled() ? Command.FAILED : Command.FINDINGS;
                                })
                        .withInput("piped")
                        .run("it", "x");

        assertEquals(new CommandTrial.Ran(1, "3\npiped\n", "warned\n"), ran);
    }

    @Test
    void readsADeviceAndPlansForIt() throws IOException {
        String file = device();
        Deed deed =
                call -> {
                    PlanRequest request =
                            new PlanRequest(
                                    call.device(
                                            call.path("DEVICE"),
                                            Optional.empty(),
                                            Optional.empty()),
                                    PlanOptions.goal(call).orElseThrow(),
                                    State.closed(),
                                    PlanOptions.rules(call),
                                    PlanOptions.effort(call));
                    PlanResult result = call.plans().plan(request, call.watch());
                    call.line(result.getClass().getSimpleName());
                    return Command.FINE;
                };
        String part =
                GeneratedDevice.of(DeviceShape.NOTEBOOK.sized(12, 30), 7).parts().keySet().stream()
                        .skip(1)
                        .findFirst()
                        .orElseThrow();

        assertEquals("Found\n", trial(deed).run("it", file, "--free", part, "--effort=5000").out());
        assertEquals("Refused\n", trial(deed).run("it", file, "--free", "no-such-part").out());
        CommandTrial.Ran missing = trial(deed).run("it", file + "x", "--all");
        assertEquals(2, missing.code());
        assertTrue(missing.err().contains("device.jsonx"), missing.err());
    }

    @Test
    void understandsTheOptionsOfPlans() {
        trial(
                        call -> {
                            assertEquals(
                                    Optional.of(new Goal.Free(List.of("a", "b"))),
                                    PlanOptions.goal(call));
                            assertEquals(
                                    Rules.none()
                                            .forbidParts(List.of("c"))
                                            .permitRuin(List.of("d", "e")),
                                    PlanOptions.rules(call));
                            assertEquals(
                                    new Effort(
                                            Optional.of(Duration.ofMillis(1500)),
                                            OptionalLong.of(7)),
                                    PlanOptions.effort(call));
                            return Command.FINE;
                        })
                .run(
                        "it",
                        "x",
                        "--free",
                        "a,b,a",
                        "--forbid-part",
                        "c",
                        "--permit-ruin=d,e",
                        "--time",
                        "1.5 s",
                        "--effort",
                        "7");
        trial(
                        call -> {
                            assertEquals(Optional.empty(), PlanOptions.goal(call));
                            assertEquals(Effort.DEFAULT, PlanOptions.effort(call));
                            return Command.FINE;
                        })
                .run("it", "x");
    }

    @ParameterizedTest
    @CsvSource({
        "--all --reach j, give one goal only",
        "--time soon, expected a time such as 20 s",
        "--effort 0, expected 1 or more",
        "--n x, expected a whole number",
        "--nope, unknown option",
        "--n, missing value",
        "y, unmatched argument",
        "--n 1 --n 2, given twice"
    })
    void refusesWhatDoesNotFit(String words, String said) {
        String[] all = ("it x " + words).split(" ");
        CommandTrial.Ran ran =
                trial(
                                call -> {
                                    PlanOptions.goal(call);
                                    PlanOptions.effort(call);
                                    return Command.FINE;
                                })
                        .run(all);

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains(said), ran.err());
    }

    private static String breaches(Command... commands) {
        return String.valueOf(
                assertThrows(
                                AssertionError.class,
                                () -> PluginContract.verify(new Its(List.of(commands))))
                        .getMessage());
    }

    @Test
    void theContractFindsWhatIsMissing() {
        CommandInfo poor =
                CommandInfo.of("does")
                        .taking(
                                CommandOption.flag("--json", "Json"),
                                CommandOption.flag("--help", "Help."),
                                CommandOption.parameter("A", Kind.TEXT, "A.").asRepeatable(),
                                CommandOption.parameter("B", Kind.TEXT, "B."));
        String said =
                breaches(
                        new It("Poor", poor, List.of(), call -> 0),
                        new It("two", INFO, List.of(), call -> 9),
                        new It(
                                "thrower",
                                INFO,
                                List.of(),
                                call -> {
                                    throw new IllegalStateException("torn");
                                }));

        for (String part :
                List.of(
                        "the name \"Poor\" of a command is not valid",
                        "command Poor has no example",
                        "command Poor: \"does\" is not a sentence",
                        "command Poor: the description of --json is not a sentence",
                        "command Poor has two options --help",
                        "command Poor: B follows an optional one",
                        "command two: the example",
                        "command two ended with 9, which is not an exit code",
                        "command thrower failed: java.lang.IllegalStateException: torn")) {
            assertTrue(said.contains(part), part + " is not in\n" + said);
        }
    }

    @Test
    void theContractLooksIntoActions() {
        Command wrong = new It("act", CommandInfo.of("Acts."), List.of(), call -> Command.FINE + 5);
        String said = breaches(new It("it", INFO, List.of(wrong, wrong), call -> Command.FINE));

        assertTrue(
                said.contains("command it has actions, so it must not have options of its own"),
                said);
        assertTrue(said.contains("command it has two actions act"), said);
        assertTrue(said.contains("command it act ended with 5"), said);
    }
}
