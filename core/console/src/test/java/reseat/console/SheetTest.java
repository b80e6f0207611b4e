package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.testkit.KeptText;

/** The whole sheet of one small repair, kept as it should look. */
class SheetTest {

    @Test
    void looksAsKept() {
        Ran ran =
                Ran.reseat(
                        "plan",
                        PlanCommandTest.DEVICE,
                        "--free",
                        "board",
                        "--permit-ruin",
                        "label",
                        "--effort",
                        "100000");

        assertEquals(0, ran.code(), ran.err());
        KeptText.matches(Path.of("src/test/resources/reseat/console/sheet/board.txt"), ran.out());
    }

    @Test
    void keepsToTheWidthInAsciiToo() {
        Ran ran =
                Ran.reseat(
                        "plan",
                        "../../samples/bramble/bramble.yaml",
                        "--free",
                        "grip-plate,trigger",
                        "--ascii",
                        "--width",
                        "60",
                        "--effort",
                        "100000");

        assertEquals(0, ran.code(), ran.err());
        assertEquals(List.of(), ran.out().lines().filter(line -> line.length() > 60).toList());
        assertTrue(ran.out().contains("turn: Face up -> "), ran.out());
    }
}
