package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.given.TestDevice;
import reseat.internal.fasten.StripFormulas;

/** Stripping against worked examples (facts 5 and 10). */
class StripFormulasTest {

    private final FastenerTables tables = TestDevice.tables();

    /**
     * Bickford and Nassar: M10 10.9 into 310 aluminium, both with the printed Ds 9.968 and the true
     * least 9.732.
     */
    @Test
    void reproducesBothStrippingExamples() {
        double load = 1200 * 58.0;
        assertEquals(24.84, StripFormulas.holeShearAreaMm2(1.5, 1, 9.968, 9.206), 0.005);
        assertEquals(
                21.6,
                StripFormulas.engagementForLoadMm(load, 130, 1.5, 9.968, 9.206),
                0.005 * 21.6);
        assertEquals(
                24.9,
                StripFormulas.engagementForLoadMm(load, 130, 1.5, 9.732, 9.206),
                0.005 * 24.9);
    }

    /** Facts 5: M2 8.8 into AZ91 needs 2.15 mm by shear alone, with nominal diameters. */
    @Test
    void reproducesTheMagnesiumExample() {
        assertEquals(5.50, StripFormulas.holeShearAreaMm2(0.4, 1, 2.0, 1.74), 0.01);
        assertEquals(2.15, StripFormulas.engagementForLoadMm(1656, 140, 0.4, 2.0, 1.74), 0.01);
    }

    /**
     * FED-STD-H28/2B as engineersedge.com prints it: twice the area over the shear area of the
     * screw per length.
     */
    @Test
    void givesTheEngagementOfEqualStrength() {
        ScrewThread thread = tables.thread("M6");
        double kn = thread.hole().orElseThrow().minorMaxMm();
        double es = thread.limits().orElseThrow().pitchMinMm();
        double le = StripFormulas.equalStrengthEngagementMm(20.1, 1, kn, es);
        assertEquals(2 * 20.1, StripFormulas.screwShearAreaMm2(1, le, kn, es), 1e-9);
        assertEquals(4.65, le, 0.005);
        assertEquals(le, 2 * 20.1 / (Math.PI * kn * (0.5 + 0.57735 / 1 * (es - kn))), 1e-12);
    }

    /** NASA-origin pull-out, taylorfrancis.com 9781482273786 ch. 117. */
    @Test
    void givesTheCautiousPullOut() {
        assertEquals(Math.PI * 1.74 * 140 * 3 / 3, StripFormulas.pullOutN(1.74, 140, 3), 1e-9);
    }

    @Test
    void tellsHowMuchStrongerTheScrewIs() {
        assertEquals(2.0, StripFormulas.strengthRatio(10, 800, 20, 200), 1e-12);
    }

    /** Engagement found by trial, mastik.pt page677, is longer than shear alone asks for. */
    @ParameterizedTest
    @CsvSource({
        "S235 / C15, 8.8, 1.0",
        "S235 / C15, 10.9, 1.25",
        "S235 / C15, 12.9, 1.4",
        "E295 / S355 / C35, 8.8, 0.9",
        "E295 / S355 / C35, 10.9, 1.0",
        "E295 / S355 / C35, 12.9, 1.2",
        "C45 / 42CrMo4 heat-treated, 8.8, 0.8",
        "C45 / 42CrMo4 heat-treated, 10.9, 0.9",
        "C45 / 42CrMo4 heat-treated, 12.9, 1.0",
        "GJL-250, 8.8, 1.0",
        "GJL-250, 10.9, 1.25",
        "GJL-250, 12.9, 1.4",
        "Al 99.5, 8.8, 2.0",
        "Al 99.5, 10.9, 2.5"
    })
    void holdsTheTrials(String material, String strength, double diameters) {
        assertEquals(
                diameters,
                tables.rows(FastenerTable.ENGAGEMENT_TRIALS).stream()
                        .filter(
                                r ->
                                        r.text("material").equals(material)
                                                && r.text("class").equals(strength))
                        .mapToDouble(r -> r.required("diameters"))
                        .findFirst()
                        .orElseThrow());
    }
}
