package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.given.TestDevice;
import reseat.internal.fasten.ScrewFormulas;
import reseat.model.Device;
import reseat.model.ScrewType;

/** What estimates start from: which numbers are refused, and what a device file tells. */
class InputsTest {

    private final FastenerTables tables = TestDevice.tables();

    private static String refusal(Executable wrong) {
        return String.valueOf(assertThrows(FastenerInputException.class, wrong).getMessage());
    }

    @Test
    void lengthsAndLoadsAreAboveZero() {
        assertEquals(
                "The engagement must be above 0 mm; found 0.0 mm.",
                refusal(() -> TorqueRequest.builder().engagementMm(0).build()));
        assertEquals(
                "The hole under the head must be above 0 mm; found -1.0 mm.",
                refusal(() -> TorqueRequest.builder().holeMm(-1).build()));
        assertEquals(
                "The outer diameter of the boss must be above 0 mm; found NaN mm.",
                refusal(() -> TorqueRequest.builder().bossOuterMm(Double.NaN).build()));
        assertEquals(
                "The pull-out load must be above 0 N; found Infinity N.",
                refusal(() -> TorqueRequest.builder().pullOutN(1 / 0.0).build()));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.2", "-0.1, 0.2", "0.3, 0.2", "0.2, 1.01", "NaN, 0.2"})
    void frictionRisesFromAboveZeroToOne(double low, double high) {
        assertTrue(
                refusal(() -> new Friction("x", low, high, ""))
                        .endsWith("is impossible; expected 0 < low <= high <= 1."));
        assertEquals(1, new Friction("x", 1, 1, "").low());
    }

    @ParameterizedTest
    @CsvSource({"0, 0.2", "2, 0", "2, -0.4", "0.4, 0.4"})
    void aThreadIsWiderThanItsPitch(double diameter, double pitch) {
        assertThrows(IllegalArgumentException.class, () -> forming(diameter, pitch, 1));
    }

    private static ScrewThread forming(double diameter, double pitch, double root) {
        return new ScrewThread(
                "ST",
                ScrewThread.Series.FORMING,
                diameter,
                pitch,
                true,
                Optional.empty(),
                Optional.empty(),
                Math.PI / 4 * root * root,
                "made up");
    }

    /**
     * Diameter 2, root 1.2: the middle of the flank is at 1.6. With 15 degree flanks the arm is
     * 0.16 P + 0.5 / cos 15 d2 mu = 0.1456 + 0.0828.
     */
    @Test
    void aFormingScrewCountsFromItsRoot() {
        ScrewThread thread = forming(2, 0.91, 1.2);
        assertEquals(1.2, thread.rootDiameterMm(), 1e-12);
        assertEquals(1.2, thread.minorDiameterMm(), 1e-12);
        assertEquals(1.6, thread.pitchDiameterMm(), 1e-12);
        assertEquals(2, thread.turns(1.82), 1e-12);
        assertEquals(0.228422, ScrewFormulas.threadArmMm(thread, 0.1), 1e-6);
    }

    /** (6 + 3.4) / 4 * 0.1 = 0.235, over sin 45 degrees for a cone. */
    @Test
    void aConeWedgesAndASetScrewDoesNotBear() {
        assertEquals(0.235, ScrewFormulas.headArmMm(HeadSize.Bearing.FLAT, 6, 3.4, 0.1), 1e-12);
        assertEquals(0.332340, ScrewFormulas.headArmMm(HeadSize.Bearing.CONE, 6, 3.4, 0.1), 1e-6);
        assertEquals(0, ScrewFormulas.headArmMm(HeadSize.Bearing.NONE, 6, 3.4, 0.1));
    }

    /** Limits of a miniature thread belong to another profile: the root 0.8 - 1.28 P is taken. */
    @Test
    void aMiniatureScrewBreaksAtItsRoot() {
        ScrewThread thread =
                new ScrewThread(
                        "S0.8",
                        ScrewThread.Series.MINIATURE,
                        0.8,
                        0.2,
                        true,
                        Optional.of(new ScrewThread.ScrewLimits(0.8, 0.76, 0.67, 0.65)),
                        Optional.empty(),
                        0,
                        "made up");
        StrengthClass strength = tables.strengthClass("8.8");
        double ratio = strength.torsionRatio().orElseThrow();
        assertEquals(
                ratio * strength.rmMin() * Math.PI / 16 * 0.544 * 0.544 * 0.544 / 1000,
                ScrewFormulas.breakingTorqueNm(thread, strength),
                1e-12);
    }

    private static ScrewType bare(ScrewType t) {
        return new ScrewType(
                t.id(),
                t.thread(),
                t.lengthMm(),
                OptionalDouble.empty(),
                t.head(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                t.drive(),
                Optional.empty(),
                "",
                false,
                Optional.empty());
    }

    @Test
    void whatTheDeviceFileTellsOfASeatIsAsked() {
        Device device =
                new TestDevice()
                        .type("st", "ST2", 4, InputsTest::bare)
                        .type("m2", "M2", 4, InputsTest::bare)
                        .screw("a", TestDevice.seat("st").material("pc-abs").lengths(1, 4))
                        .screw("b", TestDevice.seat("m2").lengths(1, 4))
                        .build();
        TorqueAdvisor advisor = TorqueAdvisor.of(tables);
        TorqueRequest forming = advisor.request(device, "a", SeatConditions.unknown());
        assertEquals(
                Optional.of(tables.strengthClass("hardened")),
                forming.strength(),
                "forming screws are hardened");
        TorqueRequest metric = advisor.request(device, "b", SeatConditions.unknown());
        assertEquals(Optional.empty(), metric.strength(), "nothing is assumed of others");
        assertEquals(
                tables.headSize("pan", tables.thread("M2")), metric.head(), "by form and thread");
        assertEquals(Optional.of(tables.material("magnesium")), metric.material());
        assertTrue(metric.engagementMm().isPresent());
    }

    @Test
    void aTorqueIsToldWithItsUnit() {
        assertEquals("0.06 N·m", Torque.newtonMetres(0.06).toString());
        assertTrue(refusal(() -> Torque.newtonMetres(0)).contains("A torque must be above 0"));
    }

    @Test
    void anEmptyCellOfATableIsNoText() {
        TableRow hex = tables.rows(FastenerTable.HEADS).get(0);
        assertEquals(Optional.of("hex"), hex.some("head"));
        assertEquals(Optional.empty(), hex.some("heightMm"));
        assertTrue(
                refusal(() -> hex.required("heightMm"))
                        .contains("heads: hex ISO 4014/4017 M1.6 has no heightMm"));
    }

    /** The file's order of screws without positions, in the passes that the file tells. */
    @Test
    void screwsWithoutAPositionGoInTheOrderOfTheFile() {
        Device device =
                new TestDevice()
                        .type("m2", "M2", 4)
                        .screw("a", TestDevice.seat("m2"))
                        .screw("b", TestDevice.seat("m2").at(1, 1))
                        .screw("c", TestDevice.seat("m2").at(9, 9))
                        .build();
        SeatOrder order =
                SeatOrder.of(device, List.of("a", "b", "c"), TighteningPattern.Backing.HARD);
        assertEquals(List.of("a", "b", "c"), order.passes().get(0).joints());
        assertEquals(
                List.of(
                        "The order is that of the device file, because the position of"
                                + " a is not known;"
                                + " tighten opposite screws in turn."),
                order.notes());
        assertEquals(
                List.of(),
                SeatOrder.of(device, List.of("a"), TighteningPattern.Backing.HARD).notes(),
                "one screw has no order");
    }
}
