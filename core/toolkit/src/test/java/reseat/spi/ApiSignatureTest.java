package reseat.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The exported interface is what {@code api.txt} says: changing it is a decision. After one, run
 * with {@code -Dreseat.api=update} and say in the commit message why.
 */
class ApiSignatureTest {

    private static final Path FILE = Path.of("src/test/resources/reseat/spi/api.txt");

    @Test
    void isWhatWasDecided() throws IOException {
        String now = ApiText.of(Plugin.class.getModule(), Path.of("target/classes"));
        if ("update".equals(System.getProperty("reseat.api"))) {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, now, StandardCharsets.UTF_8);
        }

        assertEquals(
                Files.readString(FILE, StandardCharsets.UTF_8),
                now,
                "The exported interface changed. If that is meant: mvn -o test -pl core/toolkit -am"
                        + " -Dtest=ApiSignatureTest -Dreseat.api=update"
                        + " -Dsurefire.failIfNoSpecifiedTests=false, and say why in the commit"
                        + " message.");
    }
}
