package reseat.console.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.check.Finding;
import reseat.console.check.Found;
import reseat.model.Origin;
import reseat.model.Severity;

class CausesTest {

    @Test
    void theSameOfTwentyJointsIsOneEntryThatNamesThemAll() {
        List<Found> findings = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            findings.add(found("s." + i, i, "No torque is given for s." + i + ".", "base"));
        }
        List<List<Found>> causes = Causes.of(findings);
        assertEquals(1, causes.size());
        String names = Causes.names(causes.get(0));
        assertEquals("20 alike: s.1 (line 1), s.2 (line 2), s.3", names.substring(0, 41));
    }

    @Test
    void anIdWithinAnotherIsNotTakenForIt() {
        // "s" is in "s.2" and in "s-long", but neither is the joint s
        assertEquals(
                2,
                Causes.of(
                                List.of(
                                        found("s", 1, "s meets s.2 and s-long.", "base"),
                                        found("t", 1, "t meets t.2 and t-long.", "base")))
                        .size());
    }

    @Test
    void otherNumbersAndOtherVariantsAreOtherCauses() {
        assertEquals(
                3,
                Causes.of(
                                List.of(
                                        found("a", 1, "a is 1 mm short.", "base"),
                                        found("b", 1, "b is 2 mm short.", "base"),
                                        found("c", 1, "c is 1 mm short.", "lte")))
                        .size());
    }

    @Test
    void aFactOfAJointIsNamedByItsJoint() {
        assertEquals(
                "2 alike: a, b",
                Causes.names(
                        List.of(
                                found("a/ways/usual", 4, "x", "base"),
                                found("b/ways/usual", 4, "x", "base"))));
    }

    private static Found found(String joint, int line, String message, String variant) {
        return new Found(
                "tin",
                new Finding(
                        "odd",
                        Severity.NOTE,
                        new Origin("tin.yaml", line, 1),
                        "/joints/" + joint,
                        "Odd",
                        message,
                        List.of(),
                        "Look."),
                List.of(variant),
                true);
    }
}
