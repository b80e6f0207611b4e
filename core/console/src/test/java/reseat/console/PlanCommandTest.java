package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanCommandTest {

    static final String DEVICE = "src/test/resources/reseat/console/bonded.yaml";

    @TempDir private Path folder;

    @Test
    void printsASheetWithProofTallyAndSafetyFrame() {
        Ran ran = plan("--free", "board", "--permit-ruin", "label");

        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("Proof         Proved: no valid way costs less"), ran.out());
        assertTrue(
                ran.out().contains("The maker's service document and local codes take precedence"));
        assertTrue(ran.out().contains("All trays are empty."));
    }

    @Test
    void fitsTheWidthAndUsesAsciiWhenAsked() {
        Ran ran = plan("--free", "cell", "--ascii", "--width", "72");

        for (String line : ran.out().split("\n", -1)) {
            assertTrue(line.length() <= 72, line);
            assertTrue(line.chars().allMatch(c -> c < 128), line);
        }
    }

    @Test
    void tellsHazardsBeforeTheActInWhateverPartIsPrinted() {
        for (String part : List.of("--teardown-only", "--rebuild-only")) {
            Ran ran = plan("--free", "cell", part);

            int hazard = ran.out().indexOf("Lithium cell with stored energy.");
            int act = ran.out().indexOf("Cell plug", ran.out().indexOf("[ ]"));
            assertTrue(hazard > 0 && hazard < act, part + "\n" + ran.out());
        }
    }

    @Test
    void printsJsonWhoseCostAddsUp() {
        Ran ran = plan("--free", "cell", "--json");

        Matcher acts =
                Pattern.compile("\"ms\": (\\d+),\\s+\"restoreMs\": (\\d+),\\s+\"setupMs\": (\\d+)")
                        .matcher(ran.out());
        long sum = 0;
        while (acts.find()) {
            sum +=
                    Long.parseLong(acts.group(1))
                            + Long.parseLong(acts.group(2))
                            + Long.parseLong(acts.group(3));
        }
        assertTrue(sum > 0);
        assertTrue(ran.out().contains("\"totalMs\": " + sum + ","), ran.out());
    }

    @Test
    void givesTheSameBytesTwice() {
        assertEquals(
                plan("--all", "--permit-ruin", "label", "--effort", "500").out(),
                plan("--all", "--permit-ruin", "label", "--effort", "500").out());
    }

    @Test
    void startsFromAHalfOpenUnit() throws IOException {
        Path whole = save("plan.json", plan("--free", "cell", "--json").out());

        Ran after = plan("--free", "cell", "--after", whole + ":3");
        Ran done =
                plan(
                        "--free",
                        "cell",
                        "--done",
                        "prepare:shut-down,release:display-bond/usual,move:display");
        Path state =
                save(
                        "state.json",
                        "{\"released\": [\"display-bond\"], \"places\": [[\"display\"]],"
                                + " \"prepared\": [\"shut-down\"]}");
        Ran started = plan("--free", "cell", "--start", state.toString());

        assertEquals(0, after.code(), after.err());
        assertEquals(after.out(), done.out());
        assertEquals(done.out(), started.out());
        assertTrue(done.out().contains("arrives with 1 joint open"), done.out());
        assertFalse(done.out().contains("Shut it down."), done.out());
        int closed = done.out().indexOf("Close like a book: Display");
        assertTrue(closed > 0, done.out());
        assertTrue(done.out().indexOf("Press home: Display bond") > closed, done.out());
    }

    @Test
    void preparesAHalfOpenUnitThatIsNotPreparedYet() {
        Ran ran = plan("--free", "cell", "--done", "release:display-bond/usual,move:display");

        assertEquals(0, ran.code(), ran.err());
        int prepared = ran.out().indexOf("Shut it down.");
        assertTrue(prepared > 0, ran.out());
        assertTrue(ran.out().indexOf("Pull out straight by the housing") > prepared, ran.out());
    }

    @Test
    void writesAnOutputIntoAFolderAndOverwritesNothingOfOthers() throws IOException {
        Path into = folder.resolve("sheets");
        Path page = into.resolve("sheet.html");
        String[] command = {"--free", "cell", "--output", "html-sheet", "--into", into.toString()};

        Ran first = plan(command);
        String written = Files.readString(page);
        Ran again = plan(command);
        Files.writeString(page, "a page with notes");
        Ran changed = plan(command);

        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().startsWith("Wrote " + page + ": work sheet to print"), first.out());
        assertEquals(0, again.code(), again.err());
        assertEquals(2, changed.code(), changed.out());
        assertTrue(changed.err().contains("has sheet.html, which Reseat did not write"));
        assertEquals("a page with notes", Files.readString(page));
        assertEquals(0, plan(concat(command, "--force")).code());
        assertEquals(written, Files.readString(page));
    }

    private static String[] concat(String[] words, String last) {
        String[] all = Arrays.copyOf(words, words.length + 1);
        all[words.length] = last;
        return all;
    }

    @Test
    void printsTheSheetForPrograms() {
        Ran ran = plan("--free", "cell", "--output", "sheet-json");

        assertEquals(0, ran.code(), ran.err());
        assertEquals("reseat-sheet/1", PlainJson.object(ran.out()).get("format"));
    }

    @Test
    void refusesAFolderWithoutAnOutputAndAFolderBesideAFile() {
        Ran bare = plan("--free", "cell", "--into", "x");
        Ran both = plan("--free", "cell", "--output", "needs-csv:x.csv", "--into", "x");

        assertEquals(
                "reseat: --into needs --output, which says what to write.", bare.err().strip());
        assertEquals("reseat: give --output ID:FILE or --into, not both.", both.err().strip());
        assertEquals(2, bare.code());
        assertEquals(2, both.code());
    }

    @Test
    void namesOtherWays() {
        Ran ran = plan("--free", "cell", "--other", "2");

        assertEquals(0, ran.code());
        assertTrue(
                ran.out().contains("No alternative: every part that comes off has to."), ran.out());
    }

    @Test
    void saysNothingIsToDoWhereTheGoalHolds() {
        Ran ran = plan("--reach", "display-bond");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Nothing to do"), ran.out());
        assertFalse(ran.out().contains("Put back"), ran.out());
    }

    @Test
    void closesAHalfOpenUnitWhereTheGoalHolds() {
        Ran ran =
                plan(
                        "--free",
                        "label",
                        "--done",
                        "release:display-bond/usual,move:display,release:cell-plug/usual,"
                                + "release:label-glue/peel,move:label");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("Nothing to take apart"), ran.out());
        assertTrue(ran.out().contains("Tools         Plastic-tipped tweezers"), ran.out());
        assertFalse(ran.out().contains("══ Take apart"), ran.out());
        for (String closing :
                List.of(
                        "Set in place: Label",
                        "Push home: Cell plug",
                        "Close like a book: Display",
                        "Press home: Display bond")) {
            assertTrue(ran.out().contains(closing), closing + " in " + ran.out());
        }
    }

    @Test
    void refusesWhatMakesNoSenseWithTheNearestName() {
        refused(plan("--free", "bord"), "reseat: bonded has no part \"bord\"");
        refused(plan(), "say what to achieve: --free");
        refused(plan("--free", "cell", "--all"), "give one goal only");
        refused(plan("--free", "frame"), "frame is the base");
        refused(plan("--free", "cell", "--time", "soon"), "--time: found \"soon\"");
        refused(plan("--free", "cell", "--effort", "0"), "expected 1 or more");
        refused(
                plan("--free", "cell", "--effort", "x"),
                "--effort: found \"x\", expected a whole number");
        refused(plan("--free", "cell", "--done", "open:lid"), "expected the id of an act");
        refused(plan("--free", "cell", "--done", "move:cell"), "cannot have been done");
        refused(plan("--free", "cell", "--after", "plan.json"), "expected a plan file, a colon");
        refused(plan("--free", "cell", "--after", "none.json:2"), "none.json");
        refused(plan("--free", "board"), "there is no way to do it");
    }

    @Test
    void locatesWhatIsWrongInFiles() throws IOException {
        Path state = save("state.json", "{\"released\": [\"display-bond\"],\n \"place\": []}");
        Path broken = save("broken.yaml", "format: reseat-device/1\nid: [\n");

        refused(plan("--free", "cell", "--start", state.toString()), "state.json:2:2: error: ");
        refused(Ran.reseat("plan", broken.toString(), "--all"), "broken.yaml:");
    }

    private static void refused(Ran ran, String message) {
        assertEquals(2, ran.code(), ran.out() + ran.err());
        assertTrue(ran.err().contains(message), ran.err());
        assertFalse(ran.err().contains("\tat "), ran.err());
        assertEquals("", ran.out());
    }

    private static Ran plan(String... words) {
        String[] all = new String[words.length + 2];
        all[0] = "plan";
        all[1] = DEVICE;
        System.arraycopy(words, 0, all, 2, words.length);
        return Ran.reseat(all);
    }

    private Path save(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
