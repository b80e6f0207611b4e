package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The console that was built, at a pseudo-terminal and through a pipe. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "needs a pseudo-terminal")
class ConsoleIT {

    private static final Path LAUNCHER = Path.of("target/reseat/bin/reseat").toAbsolutePath();
    private static final Path SAMPLES = Path.of("../../samples").toAbsolutePath().normalize();
    private static boolean terminals;

    @TempDir Path home;

    @BeforeAll
    static void look() {
        terminals = Pty.isThere();
    }

    private Map<String, String> env() {
        return new HashMap<>(
                Map.of(
                        "JAVA_HOME",
                        System.getProperty("java.home"),
                        "RESEAT_HOME",
                        home.toString(),
                        "HOME",
                        home.toString(),
                        "RESEAT_CACHE",
                        ""));
    }

    private Pty console() throws IOException {
        assumeTrue(terminals, "no pseudo-terminal: /usr/bin/script is missing or cannot make one");
        return Pty.start(SAMPLES, env(), LAUNCHER + " console");
    }

    @Test
    void completesEvaluatesAndLeaves() throws Exception {
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.type("let t = device('tansy/tan\t");
            pty.await("tansy.yaml");
            pty.type("')\r");
            pty.await("t · Device · tansy");
            pty.await("js   ┆");
            pty.type("t.usualP\t");
            pty.await("osture()");
            pty.type("\r");
            pty.await("r1 = \"");
            pty.type("java\r");
            pty.await("java ┆");
            pty.type("t.name()\r");
            pty.await("r2 = \"Tansy\"");
            pty.type("leave\r");

            assertEquals(0, pty.exitCode());
        }
    }

    @Test
    void showsItsPromptAtATerminalThatWasNotToldItsSize() throws Exception {
        assumeTrue(terminals, "no pseudo-terminal: /usr/bin/script is missing or cannot make one");
        String unsized = "sh -c 'stty cols 0 rows 0; exec \"" + LAUNCHER + "\" console'";
        try (Pty pty = Pty.start(SAMPLES, env(), unsized)) {
            pty.await("js   ┆");
            pty.type("1 + 1\r");
            pty.await("r1 = 2");
            pty.type("leave\r");

            assertEquals(0, pty.exitCode());
        }
    }

    @Test
    void goesOnInTheNextLineWhereCodeIsNotComplete() throws Exception {
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.type("[1, 2, 3]\r");
            pty.await("r1 · 3");
            pty.type("[4,\r");
            pty.await("     ┆");
            pty.type("5].length\r");
            pty.await("r2 = 2");
        }
    }

    @Test
    void ctrlCStopsWhatRunsInBothLanguages() throws Exception {
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.type("let kept = 41\r");
            pty.await("kept = 41");
            for (String word : List.of("js", "java")) {
                pty.type(word + "\r");
                pty.await((word + "   ").substring(0, 5) + "┆");
                pty.type("while (true) { }\r");
                pty.await("while (true) { }");
                TimeUnit.SECONDS.sleep(3);
                pty.press(Pty.CTRL_C);
                pty.await("Stopped.");
                pty.type("kept + 1\r");
                pty.await(" = 42");
            }
            pty.await("java ┆");
            pty.press(Pty.CTRL_D);
            assertEquals(0, pty.exitCode());
        }
    }

    @Test
    void whatDoesNotListenCanBeGivenUpAndTheConsoleGoesOn() throws Exception {
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.type("java\r");
            pty.await("java ┆");
            pty.type("1 + 1\r");
            pty.await("r1 = 2");
            // Java code that looks at nothing while it works; 17 can kill it, later Javas cannot
            pty.type("java.util.stream.Stream.generate(() -> 1).allMatch(i -> i > 0)\r");
            pty.await("i > 0)");
            TimeUnit.SECONDS.sleep(2);
            pty.press(Pty.CTRL_C);
            TimeUnit.SECONDS.sleep(5);
            if (pty.raw().contains("Abandon this session?")) {
                pty.type("y");
                pty.await("A new one has started");
            } else {
                pty.await("Stopped.");
            }
            pty.type("20 + 2\r");
            pty.await(" = 22");
        }
    }

    @Test
    void historyIsThereInTheNextSessionAndCanBeSearched() throws Exception {
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.type("6 * 7 // the answer\r");
            pty.await("r1 = 42");
            pty.type("1 + 1\r");
            pty.await("r2 = 2");
            pty.type("leave\r");
            assertEquals(0, pty.exitCode());
        }
        try (Pty pty = console()) {
            pty.await("js   ┆");
            pty.press(Pty.CTRL_R);
            pty.type("answer");
            pty.await("6 * 7 // the ");
            pty.type("\r");
            pty.await("r1 = 42");
        }
        assertTrue(Files.readString(home.resolve("state/history-js"), UTF_8).contains("6 * 7"));
    }

    @Test
    void noColourWhereNoneIsWanted() throws Exception {
        assumeTrue(terminals, "no pseudo-terminal: /usr/bin/script is missing or cannot make one");
        Map<String, String> env = env();
        env.put("NO_COLOR", "1");
        try (Pty pty = Pty.start(SAMPLES, env, LAUNCHER + " console")) {
            pty.await("js   ┆");
            pty.type("nothing.here\r");
            pty.await("is not defined");
            pty.type("leave\r");
            pty.exitCode();

            assertFalse(pty.raw().matches("(?s).*\u001b\\[[0-9;]*[1-9][0-9]*m.*"), pty.raw());
        }
    }

    @Test
    void aStartUpFileThatIsWrongDoesNotBlockThePrompt() throws Exception {
        Files.writeString(home.resolve("console.js"), "let shop = 'Aldermoor'\nlet = 3\n", UTF_8);
        try (Pty pty = console()) {
            pty.await("console.js");
            pty.await("js   ┆");
            pty.type("2 + 3\r");
            pty.await(" = 5");
        }
    }

    @Test
    void runsWhatComesThroughAPipe() throws Exception {
        Ran ran = piped("let t = device('tansy/tansy.yaml')\nt.parts().size\n", "console");

        assertEquals("", ran.err());
        assertTrue(ran.out().startsWith("t · Device · tansy\nr1 = "), ran.out());
        assertFalse(ran.out().contains("\u001b"), ran.out());
        assertEquals(0, ran.code());
    }

    @Test
    void anErrorInWhatIsGivenEndsWithTwo() throws Exception {
        Ran ran = piped("", "console", "-e", "device('none.yaml')");

        assertEquals(2, ran.code());
        assertEquals(
                "-e:1:1: There is no file \"none.yaml\".\n  device('none.yaml')\n  ^^^^^^^^^^^^^^^^^^^\n",
                ran.err());
    }

    private Ran piped(String input, String... args) throws Exception {
        Path in = Files.writeString(home.resolve("in"), input, UTF_8);
        Path out = home.resolve("out");
        Path err = home.resolve("err");
        java.util.List<String> words = new java.util.ArrayList<>(List.of(LAUNCHER.toString()));
        words.addAll(List.of(args));
        ProcessBuilder builder =
                new ProcessBuilder(words)
                        .directory(SAMPLES.toFile())
                        .redirectInput(in.toFile())
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile());
        builder.environment().putAll(env());
        Process process = builder.start();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), "did not end");
        return new Ran(
                process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
    }
}
