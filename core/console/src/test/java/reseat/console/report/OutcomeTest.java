package reseat.console.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.console.check.CheckFailure;
import reseat.console.check.CheckReport;
import reseat.console.check.Checked;
import reseat.console.check.Sifted;
import reseat.console.sheet.Terminal;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.model.Severity;

class OutcomeTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Problem TORN = Problem.error(new Origin("b.yaml", 3, 1), "it is torn");

    @Test
    void whatFailedWeighsMoreThanWhatIsFound() {
        assertEquals(0, outcome(false, checked("a.yaml", List.of(), List.of())).code());
        assertEquals(2, outcome(false, checked("b.yaml", List.of(), List.of(TORN))).code());
        assertEquals(
                3, outcome(false, checked("b.yaml", failures("b.yaml"), List.of(TORN))).code());
    }

    @Test
    void aCheckThatFailsInTheSameWayOnManyDevicesIsOneLine() {
        Outcome outcome =
                outcome(
                        false,
                        checked("a.yaml", failures("a.yaml"), List.of()),
                        checked("b.yaml", failures("b.yaml"), List.of()),
                        checked("c.yaml", failures("c.yaml"), List.of()));

        assertEquals(
                List.of(
                        "reseat: a.yaml: the check bad failed on tin: It threw. (It failed this"
                                + " way 2 more times.)"),
                outcome.hindrances());
        String text = TextReport.write(outcome, Terminal.none());
        assertTrue(text.contains(": nothing found, 1 check failed"), text);
    }

    @Test
    void aRunThatWasEndedSaysSo() {
        Outcome outcome = outcome(true, checked("a.yaml", List.of(), List.of()));

        assertTrue(TextReport.summary(outcome).endsWith("stopped before it finished"));
    }

    private static List<CheckFailure> failures(String source) {
        return List.of(new CheckFailure("bad", source, "tin", "It threw."));
    }

    private static Checked checked(
            String source, List<CheckFailure> failures, List<Problem> problems) {
        return new Checked(source, "tin", List.of("base"), List.of(), failures, problems);
    }

    private static Outcome outcome(boolean cancelled, Checked... checked) {
        CheckReport report =
                new CheckReport(List.of(), List.of(), List.of(checked), List.of(), cancelled);
        return new Outcome(report, Sifted.of(report, List.of(), DAY), Severity.ERROR, DAY);
    }
}
