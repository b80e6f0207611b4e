package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** judge, why, compare, facts, proofread and schema. */
class JudgingCommandsTest {

    private static final String DEVICE = PlanCommandTest.DEVICE;

    @TempDir private Path folder;

    @Test
    void judgesThePlanThatPlanPrints() throws IOException {
        Path plan = save("plan.json", Ran.reseat("plan", DEVICE, "--free", "cell", "--json").out());

        Ran ran = Ran.reseat("judge", DEVICE, plan.toString());

        assertEquals(0, ran.code(), ran.out() + ran.err());
        assertTrue(ran.out().startsWith("valid: "), ran.out());
    }

    @Test
    void judgesItOnTheResolvedFactsAlone() throws IOException {
        Path plan = save("plan.json", Ran.reseat("plan", DEVICE, "--free", "cell", "--json").out());
        Path facts = save("facts.json", Ran.reseat("facts", DEVICE, "--json").out());

        assertEquals(
                Ran.reseat("judge", DEVICE, plan.toString()),
                Ran.reseat("judge", facts.toString(), plan.toString()));
    }

    @Test
    void namesTheFirstActThatDoesNotHold() throws IOException {
        Path acts =
                save(
                        "acts.yaml",
                        "- prepare:shut-down\n- release:display-bond/usual\n- move:cell\n");

        Ran ran = Ran.reseat("judge", DEVICE, acts.toString());

        assertEquals(1, ran.code());
        assertTrue(ran.out().startsWith("wrong: Act 3, move:cell: "), ran.out());
    }

    @Test
    void whatIsMissingAfterAWrongActIsNoFaultOfItsOwn() throws IOException {
        Path acts = save("acts.yaml", "- prepare:shut-down\n- move:cell\n");

        Ran ran = Ran.reseat("judge", DEVICE, acts.toString(), "--free", "cell");

        assertEquals(1, ran.code());
        assertEquals(1, ran.out().lines().filter(l -> l.startsWith("wrong: ")).count(), ran.out());
    }

    @Test
    void noticesACostThatIsNotTheSum() throws IOException {
        String json = Ran.reseat("plan", DEVICE, "--free", "cell", "--json").out();
        Path plan = save("plan.json", json.replaceFirst("\"totalMs\": \\d+", "\"totalMs\": 7"));

        Ran ran = Ran.reseat("judge", DEVICE, plan.toString());

        assertEquals(1, ran.code());
        assertTrue(ran.out().contains("The file states a cost of 7 ms"), ran.out());
    }

    @Test
    void locatesWhatIsNoPlan() throws IOException {
        Path wrong = save("plan.json", "{\"format\": \"reseat-plan/1\",\n\"acts\": [\"lid\"]}");

        Ran ran = Ran.reseat("judge", DEVICE, wrong.toString());

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("plan.json:2:10: error: found \"lid\""), ran.err());
    }

    @Test
    void tellsWhySomethingComesOff() {
        Ran ran = Ran.reseat("why", DEVICE, "display-bond", "--free", "cell");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out().contains(": release:display-bond/usual\n  display-bond holds "),
                ran.out());
        assertTrue(ran.out().contains("\nGoal: Free Cell\n"), ran.out());
        assertTrue(ran.out().endsWith("Every way to the goal needs it.\n"), ran.out());
    }

    @Test
    void tellsWhatNeedNotComeOff() {
        Ran ran = Ran.reseat("why", DEVICE, "speaker", "--free", "cell");

        assertEquals("It need not: the plan leaves speaker as it is.\n", ran.out());
        assertEquals(2, Ran.reseat("why", DEVICE, "speakr", "--free", "cell").code());
    }

    @Test
    void comparesActByAct() throws IOException {
        Path cell = save("cell.json", Ran.reseat("plan", DEVICE, "--free", "cell", "--json").out());
        Path latch =
                save("latch.json", Ran.reseat("plan", DEVICE, "--free", "latch", "--json").out());

        Ran ran = Ran.reseat("compare", DEVICE, cell.toString(), latch.toString());

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("  release:display-bond/usual\n"), ran.out());
        assertTrue(ran.out().contains("- release:cell-tape/usual"), ran.out());
        assertTrue(ran.out().contains("+ move:latch"), ran.out());
        assertTrue(
                Ran.reseat("compare", DEVICE, cell.toString(), cell.toString())
                        .out()
                        .endsWith("The same acts in the same order.\n"));
    }

    @Test
    void printsFactsForPeople() {
        Ran ran = Ran.reseat("facts", DEVICE);

        assertEquals(0, ran.code());
        assertTrue(ran.out().startsWith("Bonded slate (bonded): 7 parts, 13 joints"), ran.out());
    }

    @Test
    void proofreads() throws IOException {
        Ran good = Ran.reseat("proofread", DEVICE);
        Path bad =
                save(
                        "bad.yaml",
                        Files.readString(Path.of(DEVICE)).replace("move: book-open", "moves: x"));
        Ran wrong = Ran.reseat("proofread", bad.toString());

        assertEquals(DEVICE + ": no errors (base)\n", good.out());
        assertEquals(0, good.code());
        assertEquals(2, wrong.code());
        assertTrue(wrong.out().contains("bad.yaml:"), wrong.out());
        assertTrue(wrong.out().contains("1 error, 0 warnings"), wrong.out());
    }

    @Test
    void printsTheSchema() {
        assertTrue(Ran.reseat("schema").out().contains("2020-12"));
    }

    @Test
    void teachesByExample() {
        for (String command :
                new String[] {"plan", "why", "compare", "judge", "facts", "proofread", "schema"}) {
            Ran ran = Ran.reseat(command, "--help");
            assertEquals(0, ran.code());
            assertTrue(ran.out().contains("Example"), ran.out());
        }
    }

    private Path save(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
