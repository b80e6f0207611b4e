package reseat.console.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** Where things of a person are kept. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "paths that are absolute there look otherwise")
class PersonalFoldersTest {

    private static final Map<String, String> HOME = Map.of("HOME", "/home/ana");

    private static PersonalFolders folders(String settings, String state, String data) {
        return new PersonalFolders(Path.of(settings), Path.of(state), Path.of(data));
    }

    private static Map<String, String> more(Map<String, String> more) {
        Map<String, String> env = new HashMap<>(HOME);
        env.putAll(more);
        return env;
    }

    @Test
    void inTheHomeThatTheEnvironmentNames() {
        assertEquals(
                folders(
                        "/home/ana/.config/reseat",
                        "/home/ana/.local/state/reseat",
                        "/home/ana/.local/share/reseat"),
                PersonalFolders.of(HOME, "/root"));
    }

    @Test
    void inTheHomeThatJavaKnowsWhereTheEnvironmentNamesNone() {
        assertEquals(
                folders(
                        "/root/.config/reseat",
                        "/root/.local/state/reseat",
                        "/root/.local/share/reseat"),
                PersonalFolders.of(Map.of("HOME", ""), "/root"));
    }

    @Test
    void whereTheFoldersOfThePersonAre() {
        assertEquals(
                folders("/c/reseat", "/s/reseat", "/d/reseat"),
                PersonalFolders.of(
                        more(
                                Map.of(
                                        "XDG_CONFIG_HOME", "/c",
                                        "XDG_STATE_HOME", "/s",
                                        "XDG_DATA_HOME", "/d")),
                        "/root"));
    }

    @Test
    void aPathThatIsNotAbsoluteCountsAsMissing() {
        assertEquals(
                PersonalFolders.of(HOME, "/root"),
                PersonalFolders.of(
                        more(Map.of("XDG_CONFIG_HOME", "c", "XDG_STATE_HOME", "./s")), "/root"));
    }

    @Test
    void theSettingsOfAShopAreWhereItSays() {
        assertEquals(
                folders("/shop", "/shop/state", "/home/ana/.local/share/reseat"),
                PersonalFolders.of(
                        more(Map.of("RESEAT_HOME", "/shop", "XDG_CONFIG_HOME", "/c")), "/root"));
    }
}
