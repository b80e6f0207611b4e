package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.console.sheet.Terminal;

class CompletingTest {

    @TempDir static Path folder;
    private static Console console;

    @BeforeAll
    static void open() {
        console =
                new Console(
                        Path.of("../../samples"),
                        new Places(folder, folder),
                        Terminal.none(),
                        Tongue.JS,
                        OutputStream.nullOutputStream());
        console.session()
                .evaluate(Tongue.JS, "let q = device('quill/quill.yaml'); let o = {one: 1}")
                .join();
        console.session().evaluate(Tongue.JAVA, "1").join();
    }

    @AfterAll
    static void close() {
        console.close();
    }

    private static List<String> offered(Tongue tongue, String text) {
        return new Completing(console, tongue)
                .offers(text, text.length()).stream().map(Offer::text).toList();
    }

    @Test
    void membersOfLiveObjectsInBothLanguages() {
        assertEquals(List.of("parts()", "part("), sorted(offered(Tongue.JS, "q.part")));
        assertEquals(List.of("parts()", "part("), sorted(offered(Tongue.JAVA, "q.part")));
    }

    private static List<String> sorted(List<String> names) {
        return names.stream().sorted(java.util.Comparator.reverseOrder()).distinct().toList();
    }

    @Test
    void membersAlongAChainOfCalls() {
        assertTrue(offered(Tongue.JS, "q.joint('fan-plug').w").contains("ways()"));
        assertTrue(offered(Tongue.JS, "facts(q).screws()[0].len").contains("lengthMm()"));
        assertTrue(offered(Tongue.JS, "check(q).filter(f => f.severity()).fin").contains("find("));
        assertTrue(offered(Tongue.JS, "o.").contains("one"));
    }

    @Test
    void membersSayWhatTheyAre() {
        String text = "q.origin";
        Offer offer =
                new Completing(console, Tongue.JS)
                        .offers(text, text.length()).stream()
                                .filter(each -> each.text().equals("origin("))
                                .findFirst()
                                .orElseThrow();

        assertTrue(offer.says().startsWith("where a fact was read"), offer.says());
    }

    @Test
    void functionsVariablesAndWords() {
        assertTrue(offered(Tongue.JS, "dev").containsAll(List.of("device(", "devices(")));
        assertTrue(offered(Tongue.JAVA, "dev").containsAll(List.of("device(", "devices(")));
        assertTrue(offered(Tongue.JS, "le").contains("leave"));
    }

    @Test
    void idsOfPartsAndJointsInQuotes() {
        assertTrue(offered(Tongue.JS, "plan(q, \"fan").contains("fan"));
        assertTrue(offered(Tongue.JS, "plan(q, 'fan-lead-p").contains("fan-lead-plug"));
        assertTrue(offered(Tongue.JAVA, "q.joint(\"fan-lead-p").contains("fan-lead-plug"));
    }

    @Test
    void filesChecksAndTablesInQuotes() {
        assertTrue(offered(Tongue.JS, "device(\"qu").contains("quill/"));
        assertTrue(offered(Tongue.JS, "device(\"quill/quill.y").contains("quill/quill.yaml"));
        assertTrue(offered(Tongue.JS, "table('thr").contains("threads"));
        assertFalse(offered(Tongue.JS, "check(q, '").isEmpty());
        assertTrue(offered(Tongue.JS, "follow quill/q").contains("quill/quill.yaml"));
    }

    @Test
    void completionRunsNoCode() {
        console.session()
                .evaluate(Tongue.JS, "let ran = 0; function go() { ran++; return q }")
                .join();

        offered(Tongue.JS, "go().par");

        assertEquals(0, console.session().evaluate(Tongue.JS, "ran").join().outcome().value());
    }
}
