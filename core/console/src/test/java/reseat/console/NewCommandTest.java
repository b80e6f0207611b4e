package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reseat new} and {@code reseat plugins}. */
class NewCommandTest {

    @TempDir Path folder;

    private Path file(String name) {
        return folder.resolve(name);
    }

    @Test
    void makesAFileThatReadsAndPlans() {
        for (String family : new String[] {"slate", "clamshell", "handheld"}) {
            String file = file(family + ".yaml").toString();

            assertEquals(0, Ran.reseat("new", file, "--family", family, "--usual").code());
            assertEquals(file + ": no errors (base)\n", Ran.reseat("proofread", file).out());
            Ran plan = Ran.reseat("plan", file, "--free", "cell");
            assertEquals(0, plan.code(), plan.err());
        }
    }

    @Test
    void takesAnswersAndNames() throws IOException {
        Path file = file("Nut Hatch.yaml");

        Ran ran =
                Ran.reseat(
                        "new",
                        file.toString(),
                        "--family",
                        "clamshell",
                        "--name",
                        "Nut: \"Hatch\"",
                        "--maker",
                        "Yes",
                        "--answers",
                        "fan=no,cover-screws=3");

        assertEquals(0, ran.code(), ran.err() + ran.out());
        String text = Files.readString(file);
        assertTrue(
                text.contains("id: nut-hatch\nname: \"Nut: \\\"Hatch\\\"\"\nmaker: \"Yes\"\n"),
                text);
        assertTrue(text.contains("c: {x: "), text);
        assertTrue(!text.contains("fan-plug"), text);
    }

    @Test
    void saysWhatIsWrong() throws IOException {
        String file = file("a.yaml").toString();

        assertEquals(
                "reseat: there is no device family \"slat\". Did you mean \"slate\"? Known: clamshell, handheld, slate.\n",
                Ran.reseat("new", file, "--family", "slat").err());
        assertEquals(
                "reseat: cover-screws: found \"many\", expected a whole number from 2 to 26.\n",
                Ran.reseat("new", file, "--family", "slate", "--answers", "cover-screws=many")
                        .err());
        assertTrue(
                Ran.reseat("new", file, "--family", "slate", "--answers", "colour=red")
                        .err()
                        .startsWith("reseat: there is no question \"colour\". Known: width,"));
        assertTrue(
                Ran.reseat("new", file, "--family", "slate", "--template", "x")
                        .err()
                        .startsWith("reseat: there is no template \"x\""));
        Files.writeString(file("a.yaml"), "mine");
        Ran again = Ran.reseat("new", file, "--family", "slate");
        assertEquals(2, again.code());
        assertTrue(again.err().endsWith("already exists; it was left unchanged.\n"), again.err());
        assertEquals("mine", Files.readString(file("a.yaml")));
    }

    @Test
    void pluginsAreListedWithWhatTheyContribute() {
        Ran ran = Ran.reseat("plugins", "slate");

        assertEquals(0, ran.code());
        assertTrue(
                ran.out()
                        .startsWith(
                                """
                                slate 0.1  Slates
                                    device families: slate
                                    templates for new devices: slate (slate)
                                """),
                ran.out());
        assertTrue(Ran.reseat("plugins").out().contains("\nhandheld 0.1  "));
        assertEquals(2, Ran.reseat("plugins", "nobody").code());
        assertTrue(
                Ran.reseat("plugins", "slate", "--json")
                        .out()
                        .contains("\"format\": \"reseat-plugins/1\""));
    }
}
