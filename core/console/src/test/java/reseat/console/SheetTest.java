package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
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
}
