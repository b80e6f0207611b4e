package reseat.script.host;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.check.CheckInput;
import reseat.files.DeviceFiles;
import reseat.files.ScriptFile;
import reseat.model.BadInputException;
import reseat.script.host.ScriptOutcome.Status;

/** Scripts in Java: they run by consent, and what they do to their process stays there. */
class JavaScriptsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static final ScriptLimits TIGHT = new ScriptLimits(1000, 3, 128, 16 * 1024, 100);

    private static final String GOOD =
            """
            List<Finding> run(CheckInput input) {
                return input.facts().screws().stream()
                        .filter(screw -> screw.lengthMm() > 5)
                        .map(screw -> input.finding(screw.pointer()).says(screw.joint() + " is long", "Look"))
                        .toList();
            }
            """;

    @TempDir Path folder;

    private ScriptFile script(String id, String text) throws Exception {
        Path file = folder.resolve(id + ".java");
        Files.writeString(
                file,
                "/* reseat-script\nid: "
                        + id
                        + "\ntitle: T\nfinds: F.\nmatters: M.\nfrom: a test\n*/\n"
                        + text,
                UTF_8);
        return ScriptFile.read(file);
    }

    private static CheckInput tansy() throws BadInputException {
        return CheckInput.of(
                DeviceFiles.read(
                                Path.of("../../samples/tansy/tansy.yaml"),
                                Optional.empty(),
                                List.of())
                        .orThrow());
    }

    @Test
    void approvalIsOfExactlyOneContent() throws Exception {
        Path shop = folder.resolve("shop");
        ScriptFile first = script("long", GOOD);
        Approvals none = Approvals.in(shop);
        assertTrue(none.refusal(first).orElseThrow().contains("it is not approved here"));

        none.approve(first, "Ana\tB", DAY);
        Approvals kept = Approvals.in(shop);
        assertEquals(Optional.empty(), kept.refusal(first));
        assertEquals("Ana B", kept.of(first).orElseThrow().by());
        assertEquals("a test", kept.of(first).orElseThrow().from());

        ScriptFile changed = script("long", GOOD + " ");
        String refusal = kept.refusal(changed).orElseThrow();
        assertTrue(refusal.startsWith("it changed since Ana B approved it on 2026-03-02"), refusal);
        assertTrue(refusal.contains("reseat script approve"), refusal);
        ScriptHost.Ran ran = new ScriptHost(TIGHT, kept).run(List.of(changed), tansy());
        assertEquals(Status.NOT_APPROVED, ran.outcomes().get(0).status());
        assertEquals(Map.of(), ran.startMicros());
    }

    @Test
    void whatOneDoesToItsProcessHarmsNoOther() throws Exception {
        record Case(String body, String told) {}
        List<Case> cases =
                List.of(
                        new Case("System.exit(0); return List.of();", "ended its own process"),
                        new Case("Runtime.getRuntime().halt(9); return null;", "exit code 9"),
                        new Case("while (true) {}", "stopped after 3 s"),
                        new Case(
                                "List<long[]> all = new ArrayList<>(); for (;;) all.add(new long[1000000]);",
                                "memory"),
                        new Case("throw new IllegalStateException(\"no\");", "it threw"),
                        new Case("return run(input);", "endless recursion"),
                        new Case("return null;", "no list of findings"),
                        new Case("return (List) List.of(1);", "not a finding"),
                        new Case("int x = \"text\"; return List.of();", "line 9: "),
                        new Case(
                                "for (int i = 0; i < 100000; i++) System.out.println(i); return List.of();",
                                "printed more than 16 KiB"),
                        new Case(
                                "return List.of(input.finding(\"/parts/none\").says(\"m\", \"r\"));",
                                "which the device does not have"));
        Approvals approvals = Approvals.in(folder.resolve("shop"));
        List<ScriptFile> scripts = new ArrayList<>();
        for (Case each : cases) {
            String id = "bad-" + scripts.size();
            scripts.add(
                    script(id, "List<Finding> run(CheckInput input) {\n" + each.body + "\n}\n"));
            scripts.add(script("good-" + scripts.size(), GOOD));
        }
        scripts.add(script("none", "int x = 1;\n"));
        for (ScriptFile script : scripts) {
            approvals = approvals.approve(script, "test", DAY);
        }

        ScriptHost.Ran ran = new ScriptHost(TIGHT, approvals).run(scripts, tansy());

        for (int i = 0; i < cases.size(); i++) {
            ScriptOutcome bad = ran.outcomes().get(2 * i);
            ScriptOutcome good = ran.outcomes().get(2 * i + 1);
            assertEquals(Status.FAILED, bad.status(), cases.get(i).body);
            assertTrue(bad.problem().contains(cases.get(i).told), bad.problem());
            assertEquals(Status.RAN, good.status(), good.problem());
            assertEquals(3, good.findings().size());
        }
        ScriptOutcome last = ran.outcomes().get(scripts.size() - 1);
        assertTrue(last.problem().contains("defines no method"), last.problem());
    }

    @Test
    void anInputOfTheSameFactsIsLoadedOnce() throws Exception {
        ScriptFile script =
                script(
                        "same",
                        """
                        List<Finding> run(CheckInput input) {
                            System.out.println(System.identityHashCode(input.device()));
                            return List.of();
                        }
                        """);
        Approvals approvals = Approvals.in(folder.resolve("shop")).approve(script, "test", DAY);
        CheckInput input = tansy();

        ScriptHost.Ran ran =
                new ScriptHost(TIGHT, approvals)
                        .run(
                                List.of(
                                        new ScriptHost.Task(script, input),
                                        new ScriptHost.Task(script, input.forCheck(script.info())),
                                        new ScriptHost.Task(script, tansy())));

        assertEquals(List.of(), ran.problems());
        String loaded = ran.outcomes().get(0).printed();
        assertEquals(loaded, ran.outcomes().get(1).printed());
        assertNotEquals(loaded, ran.outcomes().get(2).printed());
    }
}
