package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.fasten.StackUp.Outcome;
import reseat.given.Bench;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.ScrewType;

/** Which two screws a person takes for each other, and how bad that would be. */
class LookAlikesTest {

    private final FastenerTables tables = Bench.tables();
    private final LookAlikes.Eye eye = LookAlikes.Eye.of(tables);

    private static ScrewType screw(
            String thread, double length, String head, double headMm, String drive, String finish) {
        return new ScrewType(
                "s",
                thread,
                length,
                OptionalDouble.empty(),
                head,
                headMm > 0 ? OptionalDouble.of(headMm) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                drive,
                Optional.empty(),
                finish,
                false,
                Optional.empty());
    }

    private static final ScrewType PLAIN = screw("M2", 4, "pan", 3.5, "PH1", "black");

    private List<String> seen(ScrewType other) {
        List<String> seen = LookAlikes.visible(tables, PLAIN, other, eye);
        assertEquals(
                seen.size(),
                LookAlikes.visible(tables, other, PLAIN, eye).size(),
                "one sees the same the other way round");
        return seen;
    }

    /** Rules length-seen-mm (1.0) and head-seen-mm (0.5): only more than that is seen. */
    @Test
    void aPersonSeesOneMillimetreOfLengthAndHalfAMillimetreOfHead() {
        assertEquals(List.of(), seen(screw("M2", 5, "pan", 3.5, "PH1", "black")));
        assertEquals(
                List.of("length 4 / 5.01 mm"), seen(screw("M2", 5.01, "pan", 3.5, "PH1", "black")));
        assertEquals(List.of(), seen(screw("M2", 4, "pan", 4, "PH1", "black")));
        assertEquals(
                List.of("head diameter 3.5 / 4.01 mm"),
                seen(screw("M2", 4, "pan", 4.01, "PH1", "black")));
        assertEquals(List.of(), seen(screw("M2", 4, "pan", 0, "PH1", "black")), "not measured");
    }

    /** 0.3 mm of diameter is seen, though 2.5 - 2.2 is a little less in binary numbers. */
    @ParameterizedTest
    @CsvSource({
        "M2.2, M2.5, true",
        "M1.4, M1.7, true",
        "M1.4, M1.6, false",
        "M2, M2.2, false",
        "M2, ST2, true",
        "ST2, M2, true",
        "M2, M2x0.25, false"
    })
    void threadsDifferToTheEyeByDiameterOrByAMuchCoarserPitch(
            String one, String other, boolean visible) {
        ScrewType a = screw(one, 4, "pan", 3.5, "PH1", "black");
        ScrewType b = screw(other, 4, "pan", 3.5, "PH1", "black");
        List<String> seen = visible ? List.of("thread " + one + " / " + other) : List.of();
        assertEquals(seen, LookAlikes.visible(tables, a, b, eye));
    }

    @Test
    void headsDifferToTheEyeByTheirBearing() {
        assertEquals(
                List.of("head pan / countersunk"),
                seen(screw("M2", 4, "countersunk", 3.5, "PH1", "black")));
        assertEquals(List.of(), seen(screw("M2", 4, "cheese", 3.5, "PH1", "black")));
    }

    /** One sees the size of a recess and its form, but not which cross it is. */
    @ParameterizedTest
    @CsvSource({"PH1, PH0, true", "PH1, JIS1, false", "PH1, H1, true", "T8, TR8, true"})
    void drivesDifferToTheEyeBySizeAndForm(String one, String other, boolean visible) {
        ScrewType a = screw("M2", 4, "pan", 3.5, one, "black");
        ScrewType b = screw("M2", 4, "pan", 3.5, other, "black");
        assertEquals(
                visible ? List.of("drive " + one + " / " + other) : List.of(),
                LookAlikes.visible(tables, a, b, eye));
        assertEquals(visible, !LookAlikes.visible(tables, b, a, eye).isEmpty());
    }

    @Test
    void aFinishIsSeenWhereBothAreTold() {
        assertEquals(
                List.of("finish black / zinc"), seen(screw("M2", 4, "pan", 3.5, "PH1", "zinc")));
        assertEquals(List.of(), seen(screw("M2", 4, "pan", 3.5, "PH1", "Black")));
        assertEquals(List.of(), seen(screw("M2", 4, "pan", 3.5, "PH1", "")));
    }

    @Test
    void aThresholdOfTheEyeIsZeroOrMore() {
        assertEquals(0, new LookAlikes.Eye(0, 0).lengthMm());
        assertThrows(FastenerInputException.class, () -> new LookAlikes.Eye(-0.1, 0));
        assertThrows(FastenerInputException.class, () -> new LookAlikes.Eye(0, -0.1));
    }

    @ParameterizedTest
    @CsvSource({
        "NO_ENTRY, 0, 0",
        "FITS, 0, 0",
        "UNKNOWN, 1, 1",
        "LOOSE, 2, 2",
        "STRIPS, 3, 3",
        "BOTTOMS, 3, 3",
        "TOUCHES, 4, 5",
        "PIERCES, 5, 6"
    })
    void aSwapWeighsMoreTheWorseItEndsAndMostAtACell(Outcome outcome, int board, int cell) {
        assertEquals(board, LookAlikes.weight(swap(outcome, Kind.Role.BOARD, 0)));
        assertEquals(cell, LookAlikes.weight(swap(outcome, Kind.Role.CELL, 0)));
        assertEquals(
                board,
                LookAlikes.weight(swap(outcome, Kind.Role.CELL, 0.01)),
                "a cell that is not reached");
    }

    private static StackUp swap(Outcome outcome, Kind.Role role, double clearanceMm) {
        StackUp.Behind behind =
                new StackUp.Behind("part", "the part", Optional.of(role), clearanceMm);
        return new StackUp(
                "joint",
                "s",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(behind),
                outcome,
                "",
                List.of());
    }

    @Test
    void aPairIsDangerousFromAScrewThatDoesNotHold() {
        assertFalse(pair("a", "b", 1).dangerous());
        assertTrue(pair("a", "b", 2).dangerous());
    }

    private static LookAlikes.Pair pair(String one, String other, int weight) {
        return new LookAlikes.Pair(one, other, List.of(), weight, Optional.empty());
    }

    @Test
    void allDifferencesOfAPairAreNamed() {
        Device device =
                new Bench()
                        .type("one", "M2", 4, t -> Bench.drive(t, "PH1"))
                        .type(
                                "other",
                                "M2x0.25",
                                4.5,
                                t -> Bench.strength(Bench.patched(Bench.drive(t, "JIS1")), ""))
                        .screw("a", Bench.seat("one"))
                        .screw("b", Bench.seat("other"))
                        .build();
        assertEquals(
                List.of(
                        "thread M2 / M2x0.25",
                        "length 4 mm / 4.5 mm",
                        "drive PH1 / JIS1",
                        "class 8.8 / not stated",
                        "patch no / yes"),
                LookAlikes.of(tables, device).pairs().get(0).differences());
    }

    /** The pair that pierces the cell is told before the one that pierces the board. */
    @Test
    void theGravestPairComesFirst() {
        Device device =
                new Bench()
                        .type("long", "M2", 5.5)
                        .type("middle", "M2", 4.8)
                        .type("short", "M2", 4)
                        .screw("a", Bench.seat("short").lengths(1, 3).behind("cell", 0.2))
                        .screw("b", Bench.seat("middle").lengths(1.8, 3).behind("board", 0.2))
                        .build();
        LookAlikes onlyTwo = LookAlikes.of(tables, device);
        assertEquals(1, onlyTwo.pairs().size(), "the long one sits nowhere");
        Device all =
                new Bench()
                        .type("long", "M2", 5.5)
                        .type("middle", "M2", 4.8)
                        .type("short", "M2", 4)
                        .screw("a", Bench.seat("short").lengths(1, 3).behind("cell", 0.2))
                        .screw("b", Bench.seat("middle").lengths(1.8, 3).behind("board", 0.2))
                        .screw("c", Bench.seat("long").lengths(2.5, 3).behind("board", 0.2))
                        .build();
        assertEquals(
                List.of("middle short 6", "long middle 5"),
                LookAlikes.of(tables, all).pairs().stream()
                        .map(p -> p.one() + " " + p.other() + " " + p.weight())
                        .toList());
    }
}
