package reseat.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.check.CheckInfo;

/** Problems of files and findings of checks are weighed alike. */
class ProblemTest {

    private static final Origin AT = new Origin("slate.yaml", 3, 5);

    @Test
    void itsSeverityIsOfTheKindThatChecksUse() {
        CheckInfo check =
                new CheckInfo("a", "A", "Finds.", "Matters.", Severity.ERROR, List.of(), List.of());

        assertEquals(check.severity(), Problem.error(AT, "it is torn").severity());
    }

    @Test
    void saysItsPlaceAndItsSeverity() {
        assertEquals("slate.yaml:3:5: error: torn", Problem.error(AT, "torn").toString());
        assertEquals("slate.yaml:3:5: warning: thin", Problem.warning(AT, "thin").toString());
        assertEquals(
                "slate.yaml:3:5: note: fair", new Problem(Severity.NOTE, AT, "fair").toString());
    }
}
