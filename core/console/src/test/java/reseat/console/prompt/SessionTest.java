package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import reseat.fasten.FastenerTables;
import reseat.files.PluginFiles;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.script.Bench;
import reseat.script.Screen;

@Timeout(value = 2, unit = TimeUnit.MINUTES)
class SessionTest {

    private static final Bench BENCH =
            new Bench(
                    Path.of("../../samples"),
                    PluginFiles.bundled(),
                    FastenerTables.standard(),
                    Screen.NONE);
    private static Session session;

    @BeforeAll
    static void open() {
        PrintStream nowhere =
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        session =
                new Session(
                        List.of(
                                names -> new JsLanguage(() -> BENCH, names, nowhere),
                                names -> new JavaLanguage(() -> BENCH, names, nowhere)));
    }

    @AfterAll
    static void close() {
        session.close();
    }

    private static Evaluation js(String text) {
        return session.evaluate(Tongue.JS, text).join();
    }

    private static Evaluation java(String text) {
        return session.evaluate(Tongue.JAVA, text).join();
    }

    private static Object value(Evaluation evaluation) {
        assertEquals(List.of(), evaluation.outcome().troubles());
        return evaluation.outcome().value();
    }

    @Test
    void anObjectMadeInOneLanguageIsTheSameInTheOther() {
        Device device =
                assertInstanceOf(
                        Device.class, value(js("let tansy = device('tansy/tansy.yaml'); tansy")));

        assertSame(device, value(java("tansy")));
        assertEquals("tansy", value(java("tansy.id()")));
        java("var cell = plan(tansy, \"cell\");");
        assertSame(value(java("cell")), value(js("cell")));
        assertInstanceOf(Plan.class, value(js("cell")));
    }

    @Test
    void aValueWithoutANameGetsOneThatBothLanguagesKnow() {
        Evaluation made = java("device(\"quill/quill.yaml\").joints().values().stream().toList()");
        String name = made.outcome().name();

        assertTrue(name.matches("r[0-9]+"), name);
        assertEquals(116, value(js(name + ".length")));
        assertEquals("[1, 2]", String.valueOf(value(java(js("[1, 2]").outcome().name()))));
    }

    @Test
    void theTypeThatCrossesIsTheOneThatIsThere() {
        js("let screws = facts(device('tansy/tansy.yaml')).screws()");

        assertEquals(value(js("screws[0].joint()")), value(java("screws.get(0).joint()")));
    }

    @Test
    void aNameMayBeDeclaredAnewInJavaScript() {
        js("let twice = 1");

        assertEquals(2, value(js("const twice = 2; twice")));
        assertEquals(6, value(js("let sum = 0; for (let i = 0; i < 4; i++) { sum += i } sum")));
    }

    @Test
    void anErrorOfJavaScriptPointsAtTheWrongName() {
        js("let t = device('tansy/tansy.yaml')");
        String text = "let a = 1\nlet b = t.nme()";

        Trouble trouble = js(text).outcome().troubles().get(0);

        assertEquals("nme", text.substring(trouble.start(), trouble.end()));
        assertEquals("Device has no member \"nme\" (did you mean \"name\"?)", trouble.message());
    }

    @Test
    void anErrorOfJavaPointsAtTheWrongNameInTheSecondStatement() {
        java("var d = device(\"tansy/tansy.yaml\");");
        String text = "int a = 1;\nString b = d.nme();";

        Trouble trouble = java(text).outcome().troubles().get(0);

        assertEquals("nme", text.substring(trouble.start(), trouble.end()));
        assertEquals(
                "there is no method nme() in Device (did you mean \"name\"?)", trouble.message());
    }

    @Test
    void whatTheBenchCannotDoIsToldAtTheCall() {
        for (Evaluation failed :
                List.of(js("1 + 1; device('tansy.yml')"), java("device(\"tansy.yml\")"))) {
            Trouble trouble = failed.outcome().troubles().get(0);
            assertEquals(Outcome.Status.FAILED, failed.status());
            assertEquals("There is no file \"tansy.yml\".", trouble.message());
            assertTrue(failed.text().substring(trouble.start()).startsWith("device("));
        }
    }

    @Test
    void textThatIsNotCompleteIsKnown() {
        js("1");
        java("1");

        assertFalse(session.isComplete(Tongue.JS, "if (true) {"));
        assertFalse(session.isComplete(Tongue.JS, "device('a',"));
        assertTrue(session.isComplete(Tongue.JS, "let a = }"));
        assertFalse(session.isComplete(Tongue.JAVA, "for (int i = 0; i < 3; i++) {"));
        assertTrue(session.isComplete(Tongue.JAVA, "int i = 3; i + 1"));
        assertEquals(Outcome.Status.INCOMPLETE, js("[1,").status());
    }

    @Test
    void whatRunsCanBeStoppedAndTheSessionGoesOn() throws InterruptedException {
        js("let before = 41");
        for (Tongue tongue : Tongue.values()) {
            CompletableFuture<Evaluation> running = session.evaluate(tongue, "while (true) { }");
            while (!running.isDone()) {
                session.stop();
                Thread.sleep(300);
            }
            assertEquals(Outcome.Status.STOPPED, running.join().status());
        }

        assertEquals(42, value(js("before + 1")));
        assertEquals(42, value(java("before + 1")));
    }

    @Test
    void aPlannerThatThinksCanBeStopped() throws InterruptedException {
        java(
                "var big = new PlanRequest(device(\"quill/quill.yaml\"), new Goal.Teardown(),"
                        + " State.closed(), Rules.none(),"
                        + " Effort.ofTime(java.time.Duration.ofMinutes(10)));");
        CompletableFuture<Evaluation> running = session.evaluate(Tongue.JAVA, "plan(big)");
        while (!running.isDone()) {
            session.stop();
            Thread.sleep(300);
        }

        assertEquals(Outcome.Status.STOPPED, running.join().status());
        assertEquals(2, value(java("1 + 1")));
    }

    @Test
    void javaSeesNothingThatIsNotExported() {
        Evaluation wrong = java("reseat.internal.fasten.Names.items(\"a\")");

        assertEquals(Outcome.Status.FAILED, wrong.status());
    }

    @Test
    void historyKeepsWhatWasTyped() {
        Evaluation one = js("7");

        assertEquals(one, session.history().get(one.input() - 1));
    }
}
