package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import reseat.testkit.KeptText;

class ChecksCommandTest {

    @Test
    void thePageOfTheChecksIsFresh() {
        Ran ran = Ran.reseat("checks", "--page");

        assertEquals(0, ran.code(), ran.err());
        KeptText.matches(Path.of("../docs/checks.md"), ran.out());
    }

    @Test
    void listsAllChecks() {
        Ran ran = Ran.reseat("checks");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().lines().count() >= 16, ran.out());
        assertTrue(
                ran.out()
                        .contains(
                                "\nprotrusion-into-hazard  error    Screw reaches what lies behind\n"),
                ran.out());
    }

    @Test
    void tellsAllAboutOne() {
        Ran ran = Ran.reseat("checks", "driver-not-in-shop");
        assertTrue(ran.out().contains("  Needs: the drives of the shop (--drives)\n"), ran.out());
        Ran set = Ran.reseat("checks", "protrusion-into-hazard");
        assertTrue(
                set.out()
                        .contains(
                                "  --set protrusion-into-hazard.nearMm=0.2: clearance to a cell, board, display or cable below which one warns (mm)\n"),
                set.out());
    }

    @Test
    void saysWhichChecksThereAre() {
        Ran ran = Ran.reseat("checks", "protrusion");

        assertEquals(2, ran.code());
        assertTrue(
                ran.err()
                        .contains(
                                "there is no check \"protrusion\". Did you mean \"protrusion-into-hazard\"? Known: "),
                ran.err());
    }
}
