package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Does what core/docs/first-script.md says, in its order, as a new user would. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "runs the launcher for POSIX shells")
class FirstScriptIT {

    private static final Path PAGE = Path.of("../docs/first-script.md");

    /** A fenced block: its language, the file it is to be saved as, its text. */
    private static final Pattern BLOCK =
            Pattern.compile(
                    "^```([a-z]+)(?: (\\S+))?\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    @TempDir Path folder;

    @BeforeEach
    void copyTheSamples() throws IOException {
        Path samples = Path.of("../../samples");
        try (Stream<Path> files = Files.walk(samples.resolve("quill"))) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Path to = folder.resolve("samples").resolve(samples.relativize(file).toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    @Test
    void leadsFromAnIdeaToASharedCheck() throws Exception {
        List<MatchResult> blocks = BLOCK.matcher(Files.readString(PAGE)).results().toList();
        int asked = 0;
        int answered = 0;
        String said = "";
        for (MatchResult block : blocks) {
            if (block.group(2) != null) {
                Path file = folder.resolve(block.group(2));
                Files.createDirectories(file.getParent());
                Files.writeString(file, block.group(3));
            } else if (block.group(1).equals("sh")) {
                said = run(block.group(3));
                asked++;
            } else {
                Pattern expected =
                        Pattern.compile(
                                Pattern.quote(block.group(3))
                                        .replace("HASH", "\\E[0-9a-f]{64}\\Q"));
                assertTrue(
                        expected.matcher(said).find(),
                        "expected:\n" + block.group(3) + "found:\n" + said);
                answered++;
            }
        }
        assertEquals(5, asked, "commands on the page");
        assertEquals(5, answered, "answers on the page");
    }

    private String run(String command) throws IOException, InterruptedException {
        Path bin = Path.of("target/reseat/bin").toAbsolutePath();
        List<String> words = new ArrayList<>(List.of("sh", "-c", command));
        ProcessBuilder builder = new ProcessBuilder(words);
        builder.directory(folder.toFile());
        Map<String, String> env = builder.environment();
        env.put("PATH", bin + ":" + env.get("PATH"));
        env.put("JAVA_HOME", System.getProperty("java.home"));
        env.put("RESEAT_HOME", folder.resolve("home").toString());
        env.put("COLUMNS", "100");
        builder.redirectErrorStream(true);
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        process.waitFor();
        return out;
    }
}
