package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.console.sheet.Terminal;
import reseat.files.ScriptFile;
import reseat.script.host.Approvals;
import reseat.script.host.Fixture;
import reseat.script.host.ScriptHost;
import reseat.script.host.ScriptLimits;

/** What is kept works where it is taken to. */
class KeepTest {

    private static final Path TANSY = Path.of("../../samples/tansy/tansy.yaml").toAbsolutePath();

    @TempDir Path folder;

    private String say(String... lines) throws IOException {
        StringWriter out = new StringWriter();
        try (Console console =
                new Console(
                        folder,
                        new Places(folder, folder.resolve("state")),
                        Terminal.none(),
                        Tongue.JS,
                        OutputStream.nullOutputStream())) {
            PrintWriter to = new PrintWriter(out);
            new Piped(console, Tongue.JS, to, to)
                    .takeAll(
                            "input",
                            new BufferedReader(new StringReader(String.join("\n", lines))));
        }
        return out.toString();
    }

    @Test
    void aKeptCheckFindsOnItsFixtureWhatWasFoundInTheSession() throws Exception {
        String said =
                say(
                        "let t = device('" + TANSY + "')",
                        "let nothing = 'to do with it'",
                        "let limit = 3",
                        "facts(t).screws().filter(s => s.lengthMm() > limit)",
                        "keep check tall-screws");

        assertTrue(said.contains("Written: "), said);
        ScriptFile script = ScriptFile.read(folder.resolve("tall-screws/tall-screws.js"));
        assertTrue(!script.text().contains("nothing"), script.text());
        Fixture fixture = Fixture.of(script, List.of()).get(0);
        assertTrue(fixture.hasFinding());
        ScriptHost.Ran ran =
                new ScriptHost(ScriptLimits.USUAL, Approvals.none())
                        .run(List.of(script), fixture.input());
        assertEquals(List.of(), fixture.complaints(ran.outcomes().get(0)));
    }

    @Test
    void aKeptCheckInJavaIsAScript() throws Exception {
        say(
                "java",
                "var t = device(\"" + TANSY + "\");",
                "t.joints().values().stream().filter(j -> j.slack()).toList()",
                "keep check slack-joints");

        ScriptFile script = ScriptFile.read(folder.resolve("slack-joints/slack-joints.java"));
        assertTrue(script.text().contains("var t = input.device();"), script.text());
        assertTrue(script.text().contains("input.finding(\"/joints/\" + each.id())"));
    }

    @Test
    void aKeptSessionRunsAgain() throws Exception {
        say("let a = 20", "let wrong = nothing.here");
        String said =
                say("let a = 20", "let b = a + 1", "keep mine.js", "fresh", "follow mine.js", "b");

        assertTrue(said.endsWith("b = 21\n"), said);
    }

    @Test
    void nothingIsWrittenOver() throws Exception {
        Files.writeString(folder.resolve("mine.js"), "mine");
        String said = say("1 + 1", "keep mine.js");

        assertTrue(said.contains("already exists; nothing was overwritten"), said);
        assertEquals("mine", Files.readString(folder.resolve("mine.js")));
    }

    @Test
    void saysWhatCannotBecomeACheck() throws Exception {
        assertTrue(say("1 + 1", "keep check sum").contains("The last value must be a list"));
        assertTrue(say("keep check Not_An_Id").contains("lower case with hyphens"));
    }
}
