package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Severity;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.spi.Question;

/** The contract notices what is broken. */
class PluginContractTest {

    private record Family(String id, String title, String data, List<DeviceTemplate> templates)
            implements DeviceFamily {
        @Override
        public InputStream openDefaults() {
            return new ByteArrayInputStream(data.getBytes(StandardCharsets.UTF_8));
        }
    }

    private record Template(String id, String title, String text) implements DeviceTemplate {
        @Override
        public List<Question> questions() {
            return List.of(Question.choice("held", "How?", "wire-plug", "wire-plg"));
        }

        @Override
        public String write(Map<String, String> answers) {
            return text.replace("HELD", String.valueOf(answers.get("held")));
        }
    }

    /** Finds something new each time, in the name of another. */
    private static final class Restless implements Check {

        private int runs;

        @Override
        public CheckInfo info() {
            return info("restless");
        }

        private static CheckInfo info(String id) {
            return new CheckInfo(
                    id, "T", "Finds.", "Matters.", Severity.NOTE, List.of(), List.of());
        }

        @Override
        public List<Finding> run(CheckInput input) {
            runs++;
            return List.of(
                    input.forCheck(info("other")).finding("parts").says("Run " + runs, "Nothing"));
        }
    }

    private record It(List<DeviceFamily> families, List<Check> checks) implements Plugin {
        @Override
        public PluginInfo info() {
            return new PluginInfo("it", "1", "It");
        }
    }

    private static String breaches(Plugin plugin) {
        return String.valueOf(
                assertThrows(AssertionError.class, () -> PluginContract.verify(plugin))
                        .getMessage());
    }

    private static void assertSays(String said, String... parts) {
        for (String part : parts) {
            assertTrue(said.contains(part), part + " is not in\n" + said);
        }
    }

    @Test
    void noticesThatItsFileIsMissing() {
        assertSays(
                breaches(new It(List.of(), List.of())),
                "info() failed",
                "META-INF/reseat-plugin.properties");
    }

    @Test
    void noticesFaultsInAFamily() {
        Template template =
                new Template(
                        "one",
                        "",
                        """
                        format: reseat-device/1
                        id: it
                        family: faulty
                        base: a
                        parts: {a: {kind: frame}, b: {kind: cover}}
                        joints: {j: {kind: HELD, holds: [b, a]}}
                        """);
        Family family =
                new Family("faulty", "t", "kinds: {parts: {cover: {tiem: 3}}}", List.of(template));

        assertSays(
                breaches(new It(List.of(family, family), List.of())),
                "duplicate id: family faulty",
                "the template one has no title",
                "unknown key \"tiem\". Did you mean \"time\"?",
                "there is no kind of joint \"wire-plg\"");
    }

    @Test
    void noticesARestlessCheck() {
        assertSays(
                breaches(new It(List.of(), List.of(new Restless()))),
                "check restless on generated-7 returns different findings when run again",
                "reports a finding of the check other",
                "\"parts\" is not a JSON Pointer");
    }
}
