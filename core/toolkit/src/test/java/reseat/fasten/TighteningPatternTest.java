package reseat.fasten;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.fasten.TighteningPattern.Backing;
import reseat.fasten.TighteningPattern.Shape;
import reseat.fasten.TighteningPattern.Stage;
import reseat.model.Point;

class TighteningPatternTest {

    /** Orders in use (facts 9, from memory; 4, 8 and 16 recomputed there as bit reversal). */
    @ParameterizedTest
    @CsvSource({
        "4, 1-3-2-4",
        "6, 1-4-2-5-3-6",
        "8, 1-5-3-7-2-6-4-8",
        "12, 1-7-4-10-2-8-5-11-3-9-6-12",
        "16, 1-9-5-13-3-11-7-15-2-10-6-14-4-12-8-16",
        "5, 1-3-5-2-4"
    })
    void visitsRingsInTheOrdersInUse(int n, String order) {
        List<Integer> places =
                Arrays.stream(order.split("-")).map(s -> Integer.parseInt(s) - 1).toList();
        assertEquals(places, TighteningPattern.crissCross(n));
        assertEquals(places, TighteningPattern.of(ring(n)).passes().get(1).order());
    }

    @ParameterizedTest
    @ValueSource(
            ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 24, 31, 32, 100})
    void visitsEveryPlaceOnce(int n) {
        assertEquals(n, TighteningPattern.crissCross(n).stream().distinct().count());
        assertEquals(0, TighteningPattern.crissCross(n).get(0));
        for (TighteningPattern.Pass pass :
                TighteningPattern.of(ring(n), Backing.YIELDING).passes()) {
            assertEquals(n, pass.order().stream().distinct().count());
        }
    }

    @Test
    void startsByHandThenTightensHardJointsInTwoPasses() {
        TighteningPattern pattern = TighteningPattern.of(ring(4));
        assertEquals(Shape.RING, pattern.shape());
        assertEquals(
                List.of(Stage.START_BY_HAND, Stage.TIGHTEN, Stage.TIGHTEN),
                pattern.passes().stream().map(TighteningPattern.Pass::stage).toList());
        assertEquals(
                List.of(0.0, 0.5, 1.0),
                pattern.passes().stream().map(TighteningPattern.Pass::torqueShare).toList());
        assertEquals(List.of(3, 1, 2, 0), pattern.loosening());
    }

    @Test
    void goesRoundOnceMoreWhereSomethingGivesWay() {
        TighteningPattern pattern = TighteningPattern.of(ring(6), Backing.YIELDING);
        assertEquals(
                List.of(0.0, 0.3, 0.6, 1.0, 1.0),
                pattern.passes().stream().map(TighteningPattern.Pass::torqueShare).toList());
        assertEquals(Stage.GO_ROUND, pattern.passes().get(4).stage());
        assertEquals(List.of(0, 1, 2, 3, 4, 5), pattern.passes().get(4).order());
    }

    @Test
    void tightensOneScrewAtOnce() {
        TighteningPattern pattern =
                TighteningPattern.of(List.of(new Point(3, 3)), Backing.YIELDING);
        assertEquals(Shape.SINGLE, pattern.shape());
        assertEquals(2, pattern.passes().size());
    }

    @Test
    void numbersARingRoundItWhateverTheOrderOfTheList() {
        List<Point> seats =
                List.of(new Point(0, 0), new Point(100, 60), new Point(0, 60), new Point(100, 0));
        assertEquals(List.of(0, 1, 3, 2), TighteningPattern.of(seats).passes().get(1).order());
    }

    @Test
    void tightensARowFromItsMiddle() {
        List<Point> seats = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            seats.add(new Point(10 * i, 0.1 * (i % 2)));
        }
        TighteningPattern pattern = TighteningPattern.of(seats);
        assertEquals(Shape.ROW, pattern.shape());
        assertEquals(List.of(2, 3, 1, 4, 0), pattern.passes().get(1).order());
    }

    @Test
    void tightensARowAsItLiesNotAsItIsListed() {
        List<Point> seats =
                List.of(
                        new Point(20, 40),
                        new Point(0, 0),
                        new Point(40, 80),
                        new Point(10, 20),
                        new Point(30, 60));
        TighteningPattern pattern = TighteningPattern.of(seats, Backing.YIELDING);
        assertEquals(List.of(0, 4, 3, 2, 1), pattern.passes().get(1).order());
        assertEquals(List.of(1, 3, 0, 4, 2), pattern.passes().get(4).order(), "end to end");
    }

    /** A square on its corner, 0 to 3, with a seat in the middle of each side, 4 to 7. */
    @Test
    void numbersSeatsOnSlantedSidesRoundTheRing() {
        List<Point> seats =
                List.of(
                        new Point(50, 0),
                        new Point(100, 50),
                        new Point(50, 100),
                        new Point(0, 50),
                        new Point(75, 25),
                        new Point(75, 75),
                        new Point(25, 75),
                        new Point(25, 25));
        TighteningPattern pattern = TighteningPattern.of(seats, Backing.YIELDING);
        assertEquals(Shape.RING, pattern.shape());
        assertEquals(List.of(0, 4, 1, 5, 2, 6, 3, 7), pattern.passes().get(4).order());
        assertEquals(List.of(0, 2, 1, 3, 4, 6, 5, 7), pattern.passes().get(1).order());
    }

    /** Three seats inside are a ring of their own and go crosswise, not from a middle outwards. */
    @Test
    void tightensThreeInsideAsARing() {
        List<Point> seats =
                List.of(
                        new Point(0, 0),
                        new Point(100, 0),
                        new Point(100, 80),
                        new Point(0, 80),
                        new Point(40, 30),
                        new Point(60, 30),
                        new Point(50, 50));
        assertEquals(
                List.of(4, 5, 6, 0, 2, 1, 3), TighteningPattern.of(seats).passes().get(1).order());
    }

    @Test
    void tightensAFieldFromTheInnermostRingOutwards() {
        List<Point> seats =
                List.of(
                        new Point(0, 0),
                        new Point(50, 0),
                        new Point(100, 0),
                        new Point(100, 80),
                        new Point(50, 80),
                        new Point(0, 80),
                        new Point(40, 40),
                        new Point(60, 40));
        TighteningPattern pattern = TighteningPattern.of(seats);
        assertEquals(Shape.FIELD, pattern.shape());
        assertEquals(List.of(6, 7, 0, 3, 1, 4, 2, 5), pattern.passes().get(1).order());
    }

    @Test
    void refusesNoSeatsAndSharesThatDoNotRiseToOne() {
        assertThrows(IllegalArgumentException.class, () -> TighteningPattern.of(List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> TighteningPattern.of(ring(4), List.of(0.5, 0.4, 1.0), false));
        assertThrows(
                IllegalArgumentException.class,
                () -> TighteningPattern.of(ring(4), List.of(0.5), false));
        assertThrows(IllegalArgumentException.class, () -> TighteningPattern.crissCross(0));
    }

    private static List<Point> ring(int n) {
        List<Point> seats = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            seats.add(new Point(50 + 40 * Math.cos(angle), 50 + 40 * Math.sin(angle)));
        }
        return seats;
    }
}
