package reseat.script.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsEngineTest {

    @TempDir Path home;

    @Test
    void aProcessGetsThePathOfOneThatHasTheEngine() {
        assertEquals("/a:/b", JsEngine.pathWith("/a:/b", true, home.toString(), ":"));
    }

    @Test
    void aProcessGetsTheEngineThatLiesApart() throws Exception {
        Path apart = Files.createDirectories(home.resolve("lib/js"));

        assertEquals("/a:" + apart, JsEngine.pathWith("/a", false, home.toString(), ":"));
    }

    @Test
    void saysWhereTheEngineBelongs() {
        JsEngine.Missing missing =
                assertThrows(
                        JsEngine.Missing.class,
                        () -> JsEngine.pathWith("/a", false, home.toString(), ":"));

        assertEquals(
                "reseat: JavaScript cannot run: the engine is missing from "
                        + home.resolve("lib/js")
                        + "; reinstall Reseat",
                missing.getMessage());
    }

    @Test
    void saysHowToStartWithTheEngine() {
        JsEngine.Missing missing =
                assertThrows(
                        JsEngine.Missing.class, () -> JsEngine.pathWith("/a", false, null, ":"));

        assertTrue(String.valueOf(missing.getMessage()).contains("start with bin/reseat"));
    }

    @Test
    void theEngineIsHereInTests() {
        assertTrue(JsEngine.isHere());
    }
}
