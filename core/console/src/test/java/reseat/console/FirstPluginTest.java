package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tutorial shows the sample plugin as it is; what CI builds is what it tells. */
class FirstPluginTest {

    private static final Path PAGE = Path.of("../docs/first-plugin.md");
    private static final Path PROJECT = Path.of("../../samples/depth-sounders");

    /** A line with a file name alone, then a fenced block. */
    private static final Pattern SHOWN =
            Pattern.compile("(?m)^`([^`\\n]+)`\\n\\n```[a-z]+\\n(.*?)^```$", Pattern.DOTALL);

    @Test
    void everyBlockIsAPieceOfItsFile() throws IOException {
        Matcher shown = SHOWN.matcher(Files.readString(PAGE));
        int blocks = 0;
        while (shown.find()) {
            blocks++;
            String text = Files.readString(PROJECT.resolve(shown.group(1)));
            assertTrue(
                    ("\n" + text).contains("\n" + shown.group(2)),
                    shown.group(1) + " is not what the page shows:\n" + shown.group(2));
        }
        assertEquals(12, blocks);
    }

    @Test
    void theCommandsAreThoseOfCi() throws IOException {
        String ci = Files.readString(Path.of("../../.ci/run")).replaceAll("\\\\\\n\\s*", "");
        String publish =
                Files.readAllLines(PAGE).stream()
                        .filter(
                                line ->
                                        line.startsWith(
                                                "mvn -q -DskipTests -Dmaven.install.skip deploy"))
                        .collect(Collectors.joining());

        assertTrue(ci.contains(publish), publish);
    }

    @Test
    void theSampleKnowsNothingOfOurBuild() throws IOException {
        String pom = Files.readString(PROJECT.resolve("pom.xml"));

        for (String ours : List.of("<parent>", "reseat-parent", "reseat-console")) {
            assertEquals(-1, pom.indexOf(ours), ours);
        }
    }
}
