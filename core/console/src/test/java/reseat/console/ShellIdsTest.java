package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ids complete at the shell once the device file is on the line. */
class ShellIdsTest {

    @TempDir private Path folder;
    private String device = "";

    @BeforeEach
    void write() throws Exception {
        Path file = folder.resolve("tile.yaml");
        Files.writeString(
                file, FastenerCommandsTest.DEVICE + "variants: {dark: {name: Dark tile}}\n");
        device = file.toString();
    }

    private String ids(String option, String current) {
        Ran ran =
                Ran.reseat(
                        "completion",
                        "--ids=" + option,
                        "--current=" + current,
                        "--",
                        "plan",
                        device,
                        option,
                        current);
        assertEquals(0, ran.code(), ran.err());
        return ran.out();
    }

    @Test
    void partsJointsAndVariantsComplete() {
        assertEquals("frame\nlid\ncell\n", ids("--free", ""));
        assertEquals("lid\n", ids("--free", "l"));
        assertEquals("tape\n", ids("--reach", "t"));
        assertEquals("dark\n", ids("--variant", ""));
    }

    @Test
    void afterACommaTheNextIdCompletes() {
        assertEquals("lid,cell\n", ids("--free", "lid,c"));
    }

    @Test
    void withoutADeviceThereIsNothing() {
        assertEquals("", Ran.reseat("completion", "--ids=--free", "--", "plan").out());
    }

    @Test
    void kindsCompleteWithoutADevice() {
        assertEquals(
                "latched-connector\n",
                Ran.reseat("completion", "--ids=kinds", "--current=latched", "--", "kinds").out());
    }

    @Test
    void theScriptAsksForThem() {
        String script = Ran.reseat("completion").out();

        assertTrue(script.contains("complete -F _reseat_ids -o default reseat"), script);
    }
}
