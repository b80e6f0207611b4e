package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.testkit.KeptText;

/** What check does beyond finding things; CheckSamplesTest has what it finds. */
class CheckCommandTest {

    private static final String SORREL = "../../samples/sorrel/sorrel.yaml";
    private static final String TANSY = "../../samples/tansy/tansy.yaml";
    private static final String DAY = "2026-11-25";

    @TempDir private Path folder;

    @Test
    void checksAllVariantsAndNamesThoseThatAFindingIsIn() {
        Ran ran = Ran.reseat("check", SORREL);

        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("[drive-mismatch] in misfit\n"), ran.out());
        assertTrue(
                ran.out().endsWith("\nsorrel (base, lte, misfit): 6 errors, 3 warnings\n"),
                ran.out());
    }

    @Test
    void saysWhatAnOptionTakesInWordsOfTheBench() {
        assertEquals(
                "reseat: --today: found \"tomorrow\", expected a date such as 2026-03-02\nTry 'reseat check --help'.\n",
                Ran.reseat("check", TANSY, "--today", "tomorrow").err());
        assertEquals(
                "reseat: --from: found \"loud\", expected one of ERROR, WARNING, NOTE\nTry 'reseat check --help'.\n",
                Ran.reseat("check", TANSY, "--from", "loud").err());
        assertEquals(
                "reseat: --length: found \"short\", expected a number\nTry 'reseat trays --help'.\n",
                Ran.reseat("trays", TANSY, "--length", "short").err());
    }

    @Test
    void checksAFolderTree() throws Exception {
        Path shop = Files.createDirectories(folder.resolve("shop/slates"));
        Files.copy(Path.of(SORREL), shop.resolve("sorrel.yaml"));
        Files.copy(Path.of(TANSY), shop.resolve("tansy.yaml"));
        Files.writeString(shop.resolve("notes.yaml"), "call: again");
        Ran ran = Ran.reseat("check", folder.resolve("shop").toString());

        assertEquals(1, ran.code(), ran.err());
        assertTrue(ran.out().contains("\n2 devices, 4 with their variants: "), ran.out());
    }

    @Test
    void filesThatLackAVariantArePassedOverInAFolder() {
        Ran ran =
                Ran.reseat(
                        "check", "../../samples/sorrel", "../../samples/tansy", "--variant", "lte");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().endsWith("sorrel (lte): nothing found\n"), ran.out());
        Ran named = Ran.reseat("check", TANSY, "--variant", "lte");
        assertEquals(2, named.code());
        assertTrue(named.out().contains("there is no variant \"lte\""), named.out());
    }

    @Test
    void aFileWithErrorsIsToldAndTheOthersAreChecked() throws Exception {
        Path bad = copy("bad.yaml", "kind: screw", "kind: skrew");
        Ran ran = Ran.reseat("check", bad.toString(), SORREL);

        assertEquals(2, ran.code(), ran.err());
        assertTrue(ran.out().contains("bad.yaml:"), ran.out());
        assertTrue(ran.out().contains("skrew"), ran.out());
        assertTrue(ran.out().contains("[drive-mismatch]"), ran.out());
        assertTrue(ran.out().endsWith(", 1 file with errors\n"), ran.out());
        Ran json = Ran.reseat("check", bad.toString(), "--as", "json");
        assertTrue(json.err().contains("skrew"), "who reads the exit code sees why");
    }

    @Test
    void theThresholdDecides() {
        assertEquals(1, check(SORREL, "--only", "torque-disagrees", "--from", "warning").code());
        assertEquals(0, check(SORREL, "--only", "torque-disagrees").code());
    }

    @ParameterizedTest
    @CsvSource({
        "--only,bonds,'given-cut-depth-unsafe'",
        "--only,drive-mismatch,'drive-mismatch'",
        "--without,'screws,safety',''"
    })
    void checksAreChosenByIdAndTag(String option, String words, String told) {
        Ran ran = check(SORREL, option, words, "--from", "note");

        List<String> checks = new ArrayList<>();
        ran.out()
                .lines()
                .filter(line -> line.startsWith(SORREL) && line.contains(" ["))
                .forEach(l -> checks.add(l.replaceAll(".* \\[([a-z-]+)\\].*", "$1")));
        assertEquals(told.isEmpty() ? List.of() : List.of(told), checks, ran.out());
    }

    @Test
    void aParameterIsSet() {
        List<String> alike = List.of("--only", "torque-disagrees", "--from", "warning");
        assertEquals(1, check(SORREL, plus(alike)).code());
        assertEquals(
                0, check(SORREL, plus(alike, "--set", "torque-disagrees.sharePercent=90")).code());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--set protrusion-into-hazard=3 | expected CHECK.NAME=VALUE",
                "--set protrusion.nearMm=3 | there is no check \"protrusion\"",
                "--set protrusion-into-hazard.near=3 | there is no parameter of protrusion-into-hazard \"near\". Known: nearMm.",
                "--set protrusion-into-hazard.nearMm=wide | protrusion-into-hazard.nearMm must be a number, not \"wide\"",
                "--only skrews | there is no check or tag \"skrews\"",
                "--threads 0 | --threads: found 0",
                "--accept Known. | --accept and --until go together",
                "--accept Known. --until 2999-01-01 | --known FILE",
                "--until 2999-01-01 | go together",
                "--accept Known. --until 2026-11-24 --known x.yaml | --until: 2026-11-24 is in the past",
                "--known nowhere.yaml | nowhere.yaml: error: there is no such file",
                "--plan a.json --free cell | not both",
                "--free nothing | nothing",
                "--job nowhere.yaml | nowhere.yaml: error: there is no such file",
                "--today soon | soon"
            })
    void badUsageIsTold(String words, String message) {
        Ran ran =
                check(
                        TANSY,
                        Stream.of(words.split(" "))
                                .map(w -> w.equals("Known.") ? "We know." : w)
                                .toArray(String[]::new));

        assertEquals(2, ran.code(), ran.out());
        assertTrue(ran.err().contains(message), ran.err());
        assertEquals("", ran.out());
    }

    @Test
    void saysWhereThereIsNothingToCheck() {
        Ran ran = Ran.reseat("check", folder.toString());
        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("there is no device file in "), ran.err());
        assertEquals(2, Ran.reseat("check", folder.resolve("no.yaml").toString()).code());
        assertEquals(2, Ran.reseat("check").code());
        assertEquals(2, Ran.reseat("check", TANSY, SORREL, "--free", "cell").code());
    }

    @Test
    void aPlanLimitsWhatIsLookedAt() throws Exception {
        assertEquals(1, check(SORREL, "--variant", "misfit").code());
        Ran free = check(SORREL, "--variant", "misfit", "--free", "sim-tray", "--from", "note");
        Ran plan = Ran.reseat("plan", SORREL, "--variant", "misfit", "--free", "cell", "--json");
        assertEquals(0, plan.code(), plan.err());
        Path file = Files.writeString(folder.resolve("plan.json"), plan.out());
        Ran byFile = check(SORREL, "--plan", file.toString());
        Ran byGoal = check(SORREL, "--variant", "misfit", "--free", "cell");

        assertEquals(2, free.code(), "sorrel has no such part");
        assertEquals(byGoal.out(), byFile.out());
        assertEquals(2, check(TANSY, "--plan", file.toString()).code());
    }

    @Test
    void aPlanThatDoesNotHoldIsRefused() throws Exception {
        Path file =
                Files.writeString(
                        folder.resolve("plan.json"),
                        "{\"goal\": {\"kind\": \"free\", \"parts\": [\"cell\"]}, \"acts\": []}");
        Ran ran = check(TANSY, "--plan", file.toString());

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("the plan is not valid"), ran.err());
    }

    @Test
    void aJobTellsHowOftenItsJointsWereMade() throws Exception {
        Path device = Files.writeString(folder.resolve("tub.yaml"), TUB);
        Path job =
                Files.writeString(
                        folder.resolve("j-1.yaml"),
                        "format: reseat-job/1\nunit: 7\ndevice: tub\ncycles: {a: 40}\n");

        assertEquals(0, check(device.toString(), "--from", "warning").code());
        Ran worn = check(device.toString(), "--job", job.toString(), "--from", "warning");
        assertEquals(1, worn.code(), worn.out() + worn.err());
        assertTrue(worn.out().contains("has been formed into 40 times"), worn.out());
        Ran other = check(TANSY, "--job", job.toString());
        assertEquals(2, other.code());
        assertTrue(other.err().contains("j-1.yaml:3:9: error: device: "), other.err());
    }

    private static final String TUB =
            """
            format: reseat-device/1
            id: tub
            base: frame
            screwTypes:
              st: {thread: ST2.2, length: 6 mm, head: pan, drive: PH1}
            parts:
              frame: {kind: frame}
              lid: {kind: cover}
            joints:
              a: {kind: screw, holds: [lid, frame], screw: st, seat: {form: formed, material: abs, clamped: 1 mm, threaded: 6 mm, depth: 7 mm, torque: 0.1 N·m}}
            """;

    @Test
    void whatIsFoundCanBeAccepted() throws Exception {
        Path known = folder.resolve("known.yaml");
        List<String> with = List.of("--known", known.toString(), "--today", DAY);
        Ran accept = check(SORREL, plus(with, "--accept", "Seen.", "--until", "2027-03-01"));

        assertEquals(0, accept.code(), accept.out() + accept.err());
        assertTrue(accept.out().contains("known.yaml: 9 entries added, until 2027-03-01\n"));
        String file = Files.readString(known);
        KeptText.matches(Path.of("src/test/resources/reseat/console/check/known.yaml"), file);
        Ran again = check(SORREL, plus(with));
        assertEquals(0, again.code(), again.out());
        assertTrue(again.out().endsWith(": nothing found, 9 accepted\n"), again.out());
        Ran more = check(SORREL, plus(with, "--accept", "Seen.", "--until", "2027-03-01"));
        assertTrue(more.out().contains("0 entries added"), more.out());
        assertEquals(file, Files.readString(known));
    }

    @Test
    void entriesThatExpiredOrStandForNothingAreTold() throws Exception {
        Path known =
                Files.writeString(
                        folder.resolve("known.yaml"),
                        """
                        format: reseat-known/1
                        known:
                          - {check: drive-mismatch, device: sorrel, subject: /joints/plate-screw-long.a, reason: Old., until: 2026-11-24}
                          - {check: drive-mismatch, device: sorrel, subject: /joints/none, reason: Gone., until: 2026-12-24}
                          - {check: drive-mismatch, device: quill, subject: /joints/none, reason: Other., until: 2026-12-24}
                        """);
        Ran ran = check(SORREL, "--known", known.toString(), "--today", DAY);

        assertEquals(1, ran.code(), ran.err());
        assertTrue(
                ran.out()
                        .contains(
                                "known.yaml:3:5: warning: this was accepted until 2026-11-24: drive-mismatch, sorrel /joints/plate-screw-long.a\n"),
                ran.out());
        assertTrue(
                ran.out()
                        .contains(
                                "known.yaml:4:5: warning: this known finding no longer occurs:"
                                        + " drive-mismatch, sorrel /joints/none\n"),
                ran.out());
        assertTrue(
                ran.out()
                        .contains(
                                "\n1 known finding of checks or devices that this run did not"
                                        + " cover\n"),
                ran.out());
    }

    @Test
    void threadsChangeNothing() {
        for (String form : List.of("text", "json", "sarif", "junit")) {
            Ran one = check("../../samples", "--as", form, "--threads", "1", "--today", DAY);
            Ran three = check("../../samples", "--as", form, "--threads", "3", "--today", DAY);
            assertEquals(one, three);
        }
    }

    @Test
    void writesToAFileAndPrintsTheSummary() throws Exception {
        Path file = folder.resolve("found.json");
        Ran ran = check(SORREL, "--as", "json", "--out", file.toString(), "--today", DAY);

        assertEquals("sorrel (base, lte, misfit): 6 errors, 3 warnings\n", ran.out());
        assertEquals(
                Ran.reseat("check", SORREL, "--as", "json", "--today", DAY).out(),
                Files.readString(file).replace("\r\n", "\n"));
    }

    @Test
    void aFileNamedTwiceIsCheckedOnce() {
        Ran ran = check(TANSY, "../../samples/tansy", "../../samples/../samples/tansy/tansy.yaml");

        assertTrue(ran.out().endsWith("\ntansy: nothing found\n"), ran.out());
        assertFalse(ran.out().contains("2 devices"));
    }

    private static String[] plus(List<String> words, String... more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(Arrays.asList(more));
        return all.toArray(String[]::new);
    }

    private static Ran check(String path, String... words) {
        List<String> all = new ArrayList<>(List.of("check", path));
        all.addAll(Arrays.asList(words));
        return Ran.reseat(all.toArray(String[]::new));
    }

    private Path copy(String name, String found, String put) throws Exception {
        String text = Files.readString(Path.of(TANSY));
        assertTrue(text.contains(found));
        return Files.writeString(folder.resolve(name), text.replaceFirst(found, put));
    }
}
