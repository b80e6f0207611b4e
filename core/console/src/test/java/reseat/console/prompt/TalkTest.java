package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.console.sheet.Terminal;

/** What comes through a pipe, from the first line to the exit code. */
class TalkTest {

    @TempDir Path folder;

    private record Said(int code, String out, String err) {}

    private Said say(String... lines) throws IOException {
        return say(false, lines);
    }

    private Said say(boolean startUp, String... lines) throws IOException {
        return say(Path.of("../../samples"), startUp, lines);
    }

    private Said say(Path from, boolean startUp, String... lines) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        try (Console console =
                new Console(
                        from,
                        new Places(folder, folder.resolve("state")),
                        Terminal.none(),
                        Tongue.JS,
                        OutputStream.nullOutputStream())) {
            Piped piped = new Piped(console, Tongue.JS, new PrintWriter(out), new PrintWriter(err));
            if (startUp) {
                console.startUp(piped.talk());
            }
            int code =
                    piped.takeAll(
                            "input",
                            new BufferedReader(new StringReader(String.join("\n", lines))));
            return new Said(code, out.toString(), err.toString());
        }
    }

    @Test
    void showsAListOfRecordsAsATableWithUnits() throws IOException {
        Said said = say("facts(device('tansy/tansy.yaml')).screws().slice(0, 2)");

        assertEquals("", said.err());
        List<String> lines = said.out().lines().toList();
        assertTrue(lines.get(0).matches("r1 · 2 × ScrewRow"), said.out());
        assertTrue(lines.get(1).contains("length mm"), said.out());
        assertTrue(lines.get(2).startsWith("───"), said.out());
        assertEquals(0, said.code());
    }

    @Test
    void aWordSwitchesTheLanguage() throws IOException {
        Said said = say("let n = 20", "java", "n + 1", "js", "n + 2");

        assertEquals("n = 20\nr1 = 21\nr2 = 22\n", said.out().replace("\r\n", "\n"));
    }

    @Test
    void aStockOfAPluginIsThereInBothLanguages() throws IOException {
        Said said =
                say(
                        "let s = stock('csv', {file: 'stock/voorraad.csv',"
                                + " mapping: 'stock/voorraad-columns.yaml'})",
                        "s.items().length",
                        "java",
                        "s.items().size()");

        assertEquals("", said.err());
        List<String> lines = said.out().lines().toList();
        assertEquals(lines.get(1).substring(5), lines.get(2).substring(5));
    }

    @Test
    void aNameOfTheUserWinsOverAWord() throws IOException {
        Said said = say("let names = 5", "names");

        assertEquals("names = 5\nnames = 5\n", said.out().replace("\r\n", "\n"));
    }

    @Test
    void theFirstErrorEndsItWithItsPlaceInTheWholeInput() throws IOException {
        Said said = say("1", "", "let a = {", "  b: 2 c: 3", "}", "4");

        assertEquals(2, said.code());
        assertTrue(said.err().startsWith("input:4:8: "), said.err());
        assertTrue(said.err().contains("\n    b: 2 c: 3\n         ^"), said.err());
        assertTrue(!said.out().contains("4"), said.out());
    }

    @Test
    void codeThatEndsTooSoonIsAnError() throws IOException {
        Said said = say("[1, 2");

        assertEquals(2, said.code());
        assertEquals("input: the code ends before it is complete.\n", said.err().replace("\r", ""));
    }

    @Test
    void startUpFilesRunAndTheirErrorsStopNothing() throws IOException {
        Files.writeString(folder.resolve("console.js"), "let shop = 'Aldermoor'\nnonsense(\n");
        Files.writeString(folder.resolve("console.java"), "int benches = 3;");

        Said said = say(true, "benches + 1");

        assertTrue(said.out().contains("console.js"), said.out());
        assertTrue(said.out().endsWith("r1 = 4\n"), said.out());
        assertEquals(0, said.code());
    }

    @Test
    void helpKnowsFunctionsTypesMembersAndChecks() throws IOException {
        Said said =
                say(
                        "help plan",
                        "help Joint",
                        "help Device.part",
                        "help screw-bottoms",
                        "help teardwn",
                        "let t = device('tansy/tansy.yaml')",
                        "help t.joint");

        assertTrue(said.out().contains("Plan plan(Device device, String... targets)"), said.out());
        assertTrue(said.out().contains("Joint  record reseat.model.Joint"), said.out());
        assertTrue(said.out().contains("Part part(String partId)  of Device"), said.out());
        assertTrue(said.out().contains("Nothing here is called \"teardwn\""), said.out());
        assertTrue(said.out().contains("Joint joint(String jointId)  of Device"), said.out());
    }

    @Test
    void typedShowsWhatWasTypedAndAgainRunsIt() throws IOException {
        Said said = say("40 + 2", "typed", "again 1");

        assertTrue(said.out().contains("   1  js    40 + 2\n"), said.out());
        assertTrue(said.out().endsWith("40 + 2\nr2 = 42\n"), said.out());
    }

    @Test
    void freshForgets() throws IOException {
        Said said = say("let a = 1", "fresh", "a");

        assertEquals(2, said.code());
        assertTrue(said.err().contains("a is not defined"), said.err());
    }

    @Test
    void callsShowsTheWayToTheError() throws IOException {
        Path file = folder.resolve("broken.js");
        Files.writeString(file, "function inner() { return null.x }\ninner()");

        Said said = say("follow " + file, "calls");

        assertEquals(2, said.code());
    }

    @Test
    void theTalkInTheManualGoesAsTold() throws IOException {
        List<String> typed = new ArrayList<>();
        List<String> shown = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("../docs/console.md"))) {
            int bar = line.indexOf("┆ ");
            if (line.startsWith("    ") && bar >= 0) {
                typed.add(line.substring(bar + 2));
            } else if (line.startsWith("    ")) {
                shown.add(line.strip());
            }
        }

        Said said = say(Path.of("../.."), false, typed.toArray(String[]::new));

        assertEquals("", said.err());
        assertEquals(shown, said.out().lines().toList());
    }

    @Test
    void theCallsInTheGuideForScriptAuthorsAllWork() throws IOException {
        String guide = Files.readString(Path.of("../docs/script-guide.md"));
        String calls = guide.substring(guide.indexOf("```js\n") + 6);
        List<String> typed = calls.substring(0, calls.indexOf("```")).lines().toList();

        Said said = say(Path.of("../.."), false, typed.toArray(String[]::new));

        assertEquals("", said.err());
        assertTrue(said.out().contains("\nr10 · "), "ten calls: " + said.out());
        assertFalse(said.out().contains("nothing in it"), "each finds something: " + said.out());
    }
}
