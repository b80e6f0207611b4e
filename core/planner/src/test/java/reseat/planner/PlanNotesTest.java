package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import reseat.model.Act;
import reseat.model.Signal;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;

class PlanNotesTest {

    private final Plan plan = Given.boardOut();
    private final PlanNotes notes = PlanNotes.of(plan, plan.rebuild());

    @Test
    void givesGraverAdviceFirst() {
        for (List<Advice> each : both()) {
            List<Signal> signals = each.stream().map(Advice::signal).toList();
            assertEquals(signals.stream().sorted().toList(), signals);
        }
    }

    @Test
    void marksAHazardAsNewOnceAlone() {
        List<Advice> cell =
                both().stream()
                        .flatMap(List::stream)
                        .filter(advice -> advice.subject().equals("lithium-cell"))
                        .toList();

        assertTrue(cell.size() > 1);
        assertFalse(cell.get(0).again());
        assertTrue(cell.stream().skip(1).allMatch(Advice::again));
    }

    @Test
    void warnsOfHazardsOfPrepareActs() {
        assertTrue(
                notes.teardown().get(0).stream()
                        .anyMatch(advice -> advice.subject().equals("swollen-cell")));
    }

    @Test
    void warnsOfMagnetsWhileTheyAreInPlace() {
        boolean speakerIn = true;
        for (int at = 0; at < plan.acts().size(); at++) {
            Act act = plan.acts().get(at).act();
            boolean screw = act.id().startsWith("release:board-screw");
            boolean warned = has(notes.teardown().get(at), Advice.Kind.MAGNET);
            assertEquals(screw && speakerIn, warned && screw, act.id());
            if (act instanceof Act.MoveParts move && move.parts().contains("speaker")) {
                speakerIn = false;
            }
        }
    }

    @Test
    void saysUntilWhichActALatchIsHeld() {
        for (int at = 0; at < plan.acts().size(); at++) {
            if (plan.acts().get(at).act().id().startsWith("release:latch-fit")) {
                Advice hold =
                        notes.teardown().get(at).stream()
                                .filter(advice -> advice.kind() == Advice.Kind.KEEP_HOLD)
                                .findFirst()
                                .orElseThrow();
                int until = hold.until().orElseThrow();
                assertEquals("move:latch", plan.acts().get(until).act().id());
                assertEquals("Keep holding Latch fit until Latch is moved", hold.text());
                return;
            }
        }
        throw new AssertionError("the plan leaves the latch alone");
    }

    @Test
    void warnsBeforeAClosingWithoutReturn() {
        Rebuild rebuild = plan.rebuild();
        for (int at = 0; at < rebuild.acts().size(); at++) {
            assertEquals(
                    rebuild.acts().get(at).irreversible(),
                    has(notes.rebuild().get(at), Advice.Kind.NO_WAY_BACK));
        }
    }

    /** Screw a is out before the speaker leaves, screw b after; back, the speaker comes first. */
    @Test
    void aMagnetThatIsOutDrawsNoScrew() {
        Plan speaker =
                Given.acts(
                        Given.bonded(),
                        new Act.Prepared("shut-down"),
                        Given.release("display-bond"),
                        Given.move("display"),
                        Given.release("cell-plug"),
                        Given.release("board-screw.a"),
                        Given.release("speaker-plug"),
                        Given.release("speaker-pad"),
                        Given.move("speaker"),
                        Given.release("board-screw.b"));
        PlanNotes both = PlanNotes.of(speaker, speaker.rebuild());
        assertEquals(List.of(4), magnets(both.teardown()));
        assertEquals(List.of(4, 5), magnets(both.rebuild()), "the speaker is back by then");
        assertEquals(
                "Magnet in place (Speaker): guide each screw with the fingers until it is in its tray"
                        + " or thread",
                both.teardown().get(4).stream()
                        .filter(advice -> advice.kind() == Advice.Kind.MAGNET)
                        .findFirst()
                        .orElseThrow()
                        .text());
    }

    private static List<Integer> magnets(List<List<Advice>> advice) {
        return IntStream.range(0, advice.size())
                .filter(at -> has(advice.get(at), Advice.Kind.MAGNET))
                .boxed()
                .toList();
    }

    private List<List<Advice>> both() {
        return Stream.concat(notes.teardown().stream(), notes.rebuild().stream()).toList();
    }

    private static boolean has(List<Advice> advice, Advice.Kind kind) {
        return advice.stream().anyMatch(each -> each.kind() == kind);
    }
}
