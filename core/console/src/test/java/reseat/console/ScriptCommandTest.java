package reseat.console;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reseat script} as a person uses it. */
class ScriptCommandTest {

    private static final String SCRIPTS = "../../scripts";
    private static final String TANSY = "../../samples/tansy/tansy.yaml";

    @TempDir Path shop;

    private Ran script(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "script";
        System.arraycopy(words, 0, all, 1, words.length);
        all[words.length + 1] = "--shop";
        all[words.length + 2] = shop.toString();
        return Ran.reseat(all);
    }

    @Test
    void listsHashAndOrigin() {
        Ran ran = script("list", SCRIPTS);

        assertEquals("", ran.err());
        assertEquals(0, ran.code());
        assertTrue(ran.out().contains("long-screw-near-cell  Screw near a cell\n"), ran.out());
        assertTrue(ran.out().contains("JavaScript, sandboxed; from Quay Lane Bench"), ran.out());
        assertTrue(ran.out().contains("Java, not approved; from Quay Lane Bench"), ran.out());
        assertTrue(ran.out().endsWith("10 scripts\n"), ran.out());
        List<?> scripts =
                (List<?>) PlainJson.object(script("list", SCRIPTS, "--json").out()).get("scripts");
        assertEquals(10, scripts.size());
        assertEquals(64, String.valueOf(((Map<?, ?>) scripts.get(0)).get("sha256")).length());
    }

    @Test
    void javaIsApprovedByItsHashAlone() {
        String file = SCRIPTS + "/untested-parts/untested-parts.java";
        Ran refused = script("run", file, TANSY);
        assertEquals(1, refused.code());
        assertTrue(refused.out().contains("it is not approved here"), refused.out());

        Ran other = script("approve", file, "--hash", "00");
        assertEquals(2, other.code());
        assertTrue(other.err().contains("it is not the file that was reviewed"), other.err());

        List<?> listed =
                (List<?>) PlainJson.object(script("list", file, "--json").out()).get("scripts");
        String hash = String.valueOf(((Map<?, ?>) listed.get(0)).get("sha256"));
        Ran approved = script("approve", file, "--hash", hash, "--by", "Ana");
        assertEquals(0, approved.code());
        assertTrue(approved.out().contains("from     Quay Lane Bench"), approved.out());
        assertTrue(approved.out().contains("Approved by Ana"), approved.out());

        Ran ran = script("run", file, TANSY);
        assertEquals("", ran.err());
        assertEquals(0, ran.code(), ran.out());
        assertTrue(ran.out().contains("1 of 1 scripts ran"), ran.out());
    }

    @Test
    void aScriptThatCannotBeReadIsToldByLine() throws Exception {
        Path file = shop.resolve("odd.js");
        Files.writeString(
                file,
                "/* reseat-script\nid: odd\ntitel: T\nfinds: F.\nmatters: M.\nneeds: [plam]\n*/\n",
                UTF_8);
        Ran ran = script("list", file.toString());
        assertEquals(2, ran.code());
        assertTrue(
                ran.err()
                        .contains(
                                "odd.js:3:1: error: a script has no key \"titel\". Did you mean \"title\"?"),
                ran.err());
        assertTrue(
                ran.err()
                        .contains(
                                "odd.js:6:9: error: needs: found \"plam\". Did you mean \"plan\"?"),
                ran.err());
    }

    @Test
    void testsAScriptOnItsFixtures() throws Exception {
        Ran fine = script("test", SCRIPTS + "/many-flips");
        assertEquals(0, fine.code(), fine.out() + fine.err());
        assertTrue(fine.out().endsWith("2 of 2 fixtures passed\n"), fine.out());

        Path own = Files.createDirectories(shop.resolve("mine/fixtures"));
        Files.writeString(
                own.resolveSibling("mine.js"),
                "/* reseat-script\nid: mine\ntitle: T\nfinds: F.\nmatters: M.\n*/\n"
                        + "function run(input) { return [input.finding('/parts/cup').says('seen', 'Look')]; }\n",
                UTF_8);
        Files.writeString(
                own.resolve("a.yaml"),
                """
                format: reseat-device/1
                id: lamp
                base: cup
                parts:
                  cup: {kind: housing}
                  lid: {kind: cover} # FINDING: seen
                joints:
                  clip: {kind: clip, holds: [lid, cup]}
                """,
                UTF_8);
        Ran amiss = script("test", shop.resolve("mine").toString());
        assertEquals(1, amiss.code());
        assertTrue(amiss.out().contains("a.yaml:6: not found: seen"), amiss.out());
        assertTrue(amiss.out().contains("a.yaml:5:3: found, but not marked: seen"), amiss.out());
        assertTrue(amiss.out().contains("no fixture shows a near miss"), amiss.out());
    }
}
