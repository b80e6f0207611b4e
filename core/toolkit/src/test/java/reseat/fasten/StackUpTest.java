package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.fasten.StackUp.Outcome;
import reseat.given.TestDevice;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.Seat;

class StackUpTest {

    private final FastenerTables tables = TestDevice.tables();

    @Test
    void addsUpAThroughSeat() {
        Device device =
                bench(6).screw("s", TestDevice.seat("right").lengths(1.2, 4.2).behind("cell", 1.0))
                        .build();
        StackUp lies = StackUp.of(tables, device, "s");
        assertEquals(4.8, lies.reachMm().orElseThrow(), 1e-9);
        assertEquals(4.2, lies.engagementMm().orElseThrow(), 1e-9);
        assertTrue(lies.bottomClearanceMm().isEmpty());
        assertEquals(0.6, lies.protrusionMm().orElseThrow(), 1e-9);
        assertEquals(0.4, lies.behind().get(0).clearanceMm(), 1e-9);
        assertEquals(Kind.Role.CELL, lies.behind().get(0).role().orElseThrow());
        assertEquals(Outcome.FITS, lies.outcome());
    }

    /** Right screw M2x6: reach 5. What becomes of a screw of another length, in several seats. */
    @ParameterizedTest
    @CsvSource({
        "6.0, FITS",
        "5.2, FITS",
        "5.0, FITS",
        "4.0, STRIPS",
        "1.0, NO_ENTRY",
        "6.5, TOUCHES",
        "6.6, TOUCHES",
        "6.9, PIERCES"
    })
    void judgesLengthsInAThroughSeat(double length, Outcome outcome) {
        Device device =
                bench(6).type("other", "M2", length)
                        .screw("s", TestDevice.seat("right").lengths(1, 4.5).behind("cell", 1.0))
                        .build();
        assertEquals(outcome, swap(device).outcome());
    }

    @ParameterizedTest
    @CsvSource({"6, FITS", "6.4, FITS", "6.6, BOTTOMS", "8, BOTTOMS", "4, STRIPS"})
    void judgesLengthsInABlindHole(double length, Outcome outcome) {
        Device device =
                bench(6).type("other", "M2", length)
                        .screw(
                                "s",
                                TestDevice.seat("right")
                                        .lengths(1, 5)
                                        .depth(5.5)
                                        .behind("board", 0.5))
                        .build();
        assertEquals(outcome, swap(device).outcome());
    }

    @Test
    void findsAShankThatStopsTheScrew() {
        Device device =
                new TestDevice()
                        .type("right", "M2", 8, t -> TestDevice.threaded(t, 5))
                        .screw("s", TestDevice.seat("right").lengths(2.5, 6))
                        .build();
        StackUp lies = StackUp.of(tables, device, "s");
        assertEquals(Outcome.BOTTOMS, lies.outcome());
        assertTrue(lies.told().contains("its own shank, 0.5 mm"), lies.told());
    }

    @ParameterizedTest
    @CsvSource({
        "M2, FITS",
        "M1.6, LOOSE",
        "M1.4, LOOSE",
        "M1.8, LOOSE",
        "M2.5, NO_ENTRY",
        "M2x0.25, STRIPS",
        "M2.2, NO_ENTRY",
        "ST2, STRIPS"
    })
    void judgesOtherThreads(String thread, Outcome outcome) {
        Device device =
                bench(6).type("other", thread, 6)
                        .screw("s", TestDevice.seat("right").lengths(1, 6))
                        .build();
        StackUp judged = StackUp.of(tables, device, "s", device.screwTypes().get("other"));
        assertEquals(outcome, judged.outcome(), judged.told());
    }

    @Test
    void letsAThinScrewThatDropsThroughHitWhatLiesBehind() {
        Device device =
                bench(6).type("other", "M1.6", 9)
                        .screw("s", TestDevice.seat("right").lengths(1, 6).behind("cell", 0.5))
                        .build();
        assertEquals(Outcome.PIERCES, swap(device).outcome());
        assertTrue(swap(device).told().contains("the cell"), swap(device).told());
    }

    @Test
    void listsSwapsWorstFirstAndLeavesOutWhatDoesNotStart() {
        Device device =
                bench(6).type("longer", "M2", 8)
                        .type("shorter", "M2", 4)
                        .type("fat", "M3", 6)
                        .screw("s", TestDevice.seat("right").lengths(1, 5).behind("display", 1))
                        .build();
        List<StackUp> swaps = StackUp.swaps(tables, device, "s");
        assertEquals(List.of("longer", "shorter"), swaps.stream().map(StackUp::screw).toList());
        assertEquals(Outcome.PIERCES, swaps.get(0).outcome());
        assertEquals(Outcome.STRIPS, swaps.get(1).outcome());
    }

    /** The other screw in a through seat 4.5 mm deep, the cell 1 mm on; magnesium asks for 2 d. */
    @ParameterizedTest
    @CsvSource({
        "6.0, other in s engages 4.5 mm.",
        "1.0, other in s is too short to reach the thread.",
        "4.0, other in s engages 3 mm (7.5 turns); 4 mm is the least for this seat.",
        "6.5, other in s touches the cell.",
        "6.6, other in s goes 0.1 mm into the cell.",
        "6.9, other in s goes 0.4 mm into the cell."
    })
    void tellsWhatALengthDoes(double length, String told) {
        Device device =
                bench(6).type("other", "M2", length)
                        .screw("s", TestDevice.seat("right").lengths(1, 4.5).behind("cell", 1.0))
                        .build();
        assertEquals(told, swap(device).told());
    }

    /** Tapped 5 mm deep, and two incomplete turns, 0.8 mm, beyond; but the hole ends at 5.5 mm. */
    @Test
    void tellsHowFarAScrewBottoms() {
        Device device =
                bench(6).type("other", "M2", 7)
                        .screw("s", TestDevice.seat("right").lengths(1, 5).depth(5.5))
                        .screw("deep", TestDevice.seat("right").lengths(1, 5).depth(9))
                        .build();
        assertEquals(
                "other in s bottoms 0.5 mm before the head clamps: its tip touches the ground of"
                        + " the hole.",
                swap(device).told());
        StackUp deep = StackUp.of(tables, device, "deep", device.screwTypes().get("other"));
        assertEquals(
                "other in deep bottoms 0.2 mm before the head clamps: its tip touches the ground of"
                        + " the hole.",
                deep.told());
        StackUp right = StackUp.of(tables, device, "deep");
        assertEquals(0.8, right.bottomClearanceMm().orElseThrow(), 1e-9);
    }

    @Test
    void namesAllThatATipReaches() {
        Device device =
                bench(6).type("other", "M2", 7)
                        .screw(
                                "s",
                                TestDevice.seat("right")
                                        .lengths(1, 5)
                                        .behind("cell", 0.7)
                                        .behind("display", 5)
                                        .behind("board", 1))
                        .build();
        assertEquals(
                "other in s goes 0.3 mm into the cell and touches the board.", swap(device).told());
    }

    /** D1 of M2 is 1.567: M1.4 drops through, M1.6 catches on half of the rest. */
    @ParameterizedTest
    @CsvSource({
        "M2.5, is too thick to start.",
        "M1.4, drops through the thread without catching.",
        "M1.6, catches on 0.02 mm of flank and pulls out.",
        "M2x0.25, '(M2x0.25 in M2), cuts its own and strips.'"
    })
    void tellsWhatAnotherThreadDoes(String thread, String told) {
        Device device =
                bench(6).type("other", thread, 6)
                        .screw("s", TestDevice.seat("right").lengths(1, 6))
                        .build();
        StackUp judged = swap(device);
        assertTrue(judged.told().endsWith(told), judged.told());
        assertEquals(0, judged.engagementMm().orElseThrow(), "it holds on no thread");
    }

    @Test
    void aForeignThreadThatDoesNotReachDoesNotStart() {
        Device device =
                bench(6).type("other", "M2x0.25", 1)
                        .screw("s", TestDevice.seat("right").lengths(1, 6))
                        .build();
        assertEquals(Outcome.NO_ENTRY, swap(device).outcome());
    }

    /** A seat that is short by design is no worse for a screw that engages as much. */
    @Test
    void aShortSeatIsJudgedByItsOwnScrew() {
        Device device =
                bench(3.2)
                        .type("other", "M2", 3.2)
                        .type("shorter", "M2", 3.1)
                        .screw("s", TestDevice.seat("right").lengths(1.2, 4))
                        .build();
        assertEquals(Outcome.FITS, StackUp.of(tables, device, "s").outcome());
        assertEquals(
                "right in s engages 2 mm; 4 mm is good practice in this seat.",
                StackUp.of(tables, device, "s").told());
        assertEquals(Outcome.FITS, swap(device).outcome());
        assertEquals(
                Outcome.STRIPS,
                StackUp.of(tables, device, "s", device.screwTypes().get("shorter")).outcome());
    }

    @Test
    void saysWhichFactsAreMissing() {
        Device device = bench(6).screw("s", TestDevice.seat("right").unmeasured()).build();
        StackUp lies = StackUp.of(tables, device, "s");
        assertEquals(Outcome.UNKNOWN, lies.outcome());
        assertEquals(List.of("clamped thickness", "depth of thread"), lies.missing());
        assertTrue(lies.told().contains("are not known"), lies.told());
    }

    @Test
    void asksNutsForThreeTurnsOnly() {
        Device device =
                bench(3).screw("s", TestDevice.seat("right").form(Seat.Form.NUT).lengths(1.7, 1.6))
                        .build();
        assertEquals(Outcome.FITS, StackUp.of(tables, device, "s").outcome());
    }

    @Test
    void ordersOutcomesFromHarmlessToWorst() {
        assertEquals(
                List.of(
                        "NO_ENTRY",
                        "FITS",
                        "UNKNOWN",
                        "LOOSE",
                        "STRIPS",
                        "BOTTOMS",
                        "TOUCHES",
                        "PIERCES"),
                Stream.of(Outcome.values()).map(Outcome::name).toList());
    }

    private StackUp swap(Device device) {
        return StackUp.of(tables, device, "s", device.screwTypes().get("other"));
    }

    private static TestDevice bench(double length) {
        return new TestDevice().type("right", "M2", length);
    }
}
