package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.fasten.ScrewThread.HoleLimits;
import reseat.fasten.ScrewThread.ScrewLimits;
import reseat.given.TestDevice;
import reseat.internal.fasten.ScrewFormulas;

/**
 * Rows of standards beyond those that the facts list. All are from memory, none was opened: what
 * they show is that formulas and tables agree with rows that nobody fitted them to.
 */
class PublishedRowsTest {

    private final FastenerTables tables = TestDevice.tables();

    /** ISO 898-7:1992, fine pitches, from memory; within two-figure rounding. */
    @ParameterizedTest
    @CsvSource({"M8x1, 38, 42, 46, 52", "M10x1, 84, 92, 102, 114", "M10x1.25, 75, 82, 91, 102"})
    void recomputesFineBreakingTorques(
            String name, double c88, double c98, double c109, double c129) {
        double[] table = {c88, c98, c109, c129};
        String[] classes = {"8.8", "9.8", "10.9", "12.9"};
        for (int i = 0; i < classes.length; i++) {
            double got =
                    ScrewFormulas.breakingTorqueNm(
                            tables.thread(name), tables.strengthClass(classes[i]));
            assertEquals(table[i], got, 0.02 * table[i], name + " " + classes[i]);
            String strength = classes[i];
            assertEquals(
                    table[i],
                    tables.rows(FastenerTable.BREAKING_TORQUES).stream()
                            .filter(r -> r.text("thread").equals(name))
                            .filter(r -> r.text("class").equals(strength))
                            .mapToDouble(r -> r.required("torqueNm"))
                            .findFirst()
                            .orElseThrow());
        }
    }

    /** ISO 965-2, screw 6g, from memory: d max, d min, d2 max, d2 min. */
    @ParameterizedTest
    @CsvSource({
        "M2.2, 2.180, 2.080, 1.888, 1.817",
        "M7, 6.974, 6.794, 6.324, 6.212",
        "M8, 7.972, 7.760, 7.160, 7.042",
        "M8x1, 7.974, 7.794, 7.324, 7.212",
        "M10, 9.968, 9.732, 8.994, 8.862",
        "M10x1.25, 9.972, 9.760, 9.160, 9.042",
        "M10x1, 9.974, 9.794, 9.324, 9.212"
    })
    void computesScrewLimits(String name, double dMax, double dMin, double d2Max, double d2Min) {
        assertEquals(
                new ScrewLimits(dMax, dMin, d2Max, d2Min),
                tables.thread(name).limits().orElseThrow());
    }

    /** ISO 965-2, hole 6H, from memory: D1 max, D2 max. */
    @ParameterizedTest
    @CsvSource({
        "M1.6, 1.321, 1.458",
        "M2, 1.679, 1.830",
        "M2.5, 2.138, 2.303",
        "M3, 2.599, 2.775",
        "M4, 3.422, 3.663",
        "M5, 4.334, 4.605",
        "M6, 5.153, 5.500",
        "M8, 6.912, 7.348",
        "M8x1, 7.153, 7.500",
        "M10, 8.676, 9.206",
        "M10x1.25, 8.912, 9.348"
    })
    void computesHoleLimits(String name, double minor, double pitch) {
        assertEquals(new HoleLimits(minor, pitch), tables.thread(name).hole().orElseThrow());
    }

    /** ISO 898-1, stress areas, from memory. */
    @ParameterizedTest
    @CsvSource({"M7, 28.9", "M8, 36.6", "M10, 58.0", "M8x1, 39.2", "M10x1.25, 61.2", "M10x1, 64.5"})
    void computesStressAreas(String name, double area) {
        assertEquals(area, tables.thread(name).stressAreaMm2(), 0.002 * area);
    }

    /**
     * VDI 2230 table A1 and A2, from memory; hexagon heads, forces in kN within 1.3 %, torques in
     * N.m within 2.6 %, which is the rounding of the two-figure cells.
     */
    @ParameterizedTest
    @CsvSource({
        "M4, 8.8, 0.16, 4.2, 3.6",
        "M4, 8.8, 0.20, 3.9, 4.1",
        "M4, 12.9, 0.08, 8.0, 3.9",
        "M4, 12.9, 0.10, 7.8, 4.5",
        "M4, 12.9, 0.12, 7.6, 5.1",
        "M4, 12.9, 0.14, 7.4, 5.6",
        "M5, 8.8, 0.16, 6.8, 7.1",
        "M5, 8.8, 0.20, 6.4, 8.1",
        "M5, 10.9, 0.08, 11.1, 6.5",
        "M5, 12.9, 0.08, 13.0, 7.6",
        "M5, 12.9, 0.10, 12.7, 8.9",
        "M5, 12.9, 0.12, 12.4, 10.0",
        "M5, 12.9, 0.14, 12.0, 11.2",
        "M6, 8.8, 0.16, 9.6, 12.3",
        "M6, 8.8, 0.20, 9.0, 14.1",
        "M6, 10.9, 0.08, 15.7, 11.3",
        "M6, 12.9, 0.08, 18.4, 13.2",
        "M6, 12.9, 0.10, 17.9, 15.4",
        "M6, 12.9, 0.12, 17.5, 17.4",
        "M6, 12.9, 0.14, 17.0, 19.3",
        "M8, 8.8, 0.08, 19.5, 18.5",
        "M8, 8.8, 0.10, 19.1, 21.6",
        "M8, 8.8, 0.12, 18.6, 24.6",
        "M8, 8.8, 0.14, 18.1, 27.3",
        "M8, 8.8, 0.16, 17.6, 29.8",
        "M8, 8.8, 0.20, 16.5, 34.3",
        "M8, 10.9, 0.08, 28.7, 27.2",
        "M8, 10.9, 0.10, 28.0, 31.8",
        "M8, 10.9, 0.12, 27.3, 36.1",
        "M8, 10.9, 0.14, 26.6, 40.1",
        "M8, 12.9, 0.08, 33.6, 31.8",
        "M8, 12.9, 0.10, 32.8, 37.2",
        "M8, 12.9, 0.12, 32.0, 42.2",
        "M8, 12.9, 0.14, 31.1, 46.9",
        "M10, 8.8, 0.08, 31.0, 36",
        "M10, 8.8, 0.10, 30.3, 43",
        "M10, 8.8, 0.12, 29.6, 48",
        "M10, 8.8, 0.14, 28.8, 54",
        "M10, 10.9, 0.08, 45.6, 53",
        "M10, 10.9, 0.10, 44.5, 63",
        "M10, 10.9, 0.12, 43.4, 71",
        "M10, 10.9, 0.14, 42.2, 79",
        "M10, 12.9, 0.08, 53.3, 62",
        "M10, 12.9, 0.10, 52.1, 73",
        "M10, 12.9, 0.12, 50.8, 83",
        "M10, 12.9, 0.14, 49.4, 93",
        "M8x1, 8.8, 0.08, 21.2, 19.3",
        "M8x1, 8.8, 0.16, 19.2, 32.0",
        "M8x1, 8.8, 0.20, 18.1, 37.0",
        "M10x1.25, 8.8, 0.12, 31.6, 51",
        "M10x1.25, 8.8, 0.14, 30.8, 57"
    })
    void agreesWithTableA1(String name, String strength, double mu, double kn, double nm) {
        ScrewThread thread = tables.thread(name);
        double force =
                ScrewFormulas.assemblyPreloadN(
                        thread, tables.strengthClass(strength).yieldMin(), 0.9, mu);
        double torque =
                ScrewFormulas.tighteningTorqueNm(
                        thread,
                        force,
                        mu,
                        tables.headSize("hex", thread).orElseThrow().bearingMm(),
                        tables.clearanceHoleMm(thread.diameterMm()).orElseThrow());
        assertEquals(kn, force / 1000, 0.013 * kn, "kN");
        assertEquals(nm, torque, 0.026 * nm, "N.m");
    }

    /** ISO 273, medium, from memory, and ISO 4014 dw min, from memory; NaN: no such row. */
    @ParameterizedTest
    @CsvSource({
        "M1, 1.2, NaN",
        "M1.2, 1.4, NaN",
        "M1.4, 1.6, NaN",
        "M1.6, 1.8, 2.27",
        "M1.8, 2.1, NaN",
        "M2, 2.4, 3.07",
        "M2.5, 2.9, 4.07",
        "M3, 3.4, 4.57",
        "M3.5, 3.9, 5.07",
        "M4, 4.5, 5.88",
        "M4.5, 5, NaN",
        "M5, 5.5, 6.88",
        "M6, 6.6, 8.88",
        "M7, 7.6, NaN",
        "M8, 9, 11.63",
        "M10, 11, 14.63"
    })
    void holdsHolesAndHexagons(String name, double hole, double bearing) {
        ScrewThread thread = tables.thread(name);
        assertEquals(hole, tables.clearanceHoleMm(thread.diameterMm()).orElseThrow());
        assertEquals(
                bearing,
                tables.headSize("hex", thread).map(HeadSize::bearingMm).orElse(Double.NaN));
    }

    /**
     * What is computed for stainless screws in torsion stays on the safe side of every cell of ISO
     * 3506-1 that is remembered.
     */
    @Test
    void staysBelowTheStainlessTable() {
        long seen =
                tables.rows(FastenerTable.BREAKING_TORQUES).stream()
                        .filter(r -> r.text("standard").equals("ISO 3506-1"))
                        .peek(
                                r ->
                                        assertTrue(
                                                ScrewFormulas.breakingTorqueNm(
                                                                tables.thread(r.text("thread")),
                                                                tables.strengthClass(
                                                                        "A2-" + r.text("class")))
                                                        <= r.required("torqueNm"),
                                                r.key()))
                        .count();
        assertEquals(27, seen);
    }
}
