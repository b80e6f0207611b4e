package reseat.console.house;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The exported interface of each module is what its file says: changing it is a decision. After
 * one, run with {@code -Dreseat.api=update} and say in the commit message why.
 */
class ApiSignatureTest {

    private static final Path FOLDER = Path.of("src/test/resources/reseat/console/house/api");

    @ParameterizedTest
    @ValueSource(strings = {"toolkit", "files", "planner", "scripts"})
    void isWhatWasDecided(String folder) throws IOException {
        Module module = ModuleLayer.boot().findModule("reseat." + folder).orElseThrow();
        Path file = FOLDER.resolve(module.getName() + ".txt");
        String now = ApiText.of(module, Path.of("..", folder, "target", "classes"));
        if ("update".equals(System.getProperty("reseat.api"))) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, now, StandardCharsets.UTF_8);
        }

        assertEquals(
                Files.readString(file, StandardCharsets.UTF_8),
                now,
                "The exported interface changed. If that is meant: mvn -o test -pl core/console -am"
                        + " -Dtest=ApiSignatureTest -Dreseat.api=update"
                        + " -Dsurefire.failIfNoSpecifiedTests=false, and say why in the commit"
                        + " message.");
    }
}
