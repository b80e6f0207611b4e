package reseat.euindex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static reseat.euindex.Operation.End.CLEANED;
import static reseat.euindex.Operation.End.HEATED;
import static reseat.euindex.Operation.End.REMOVED;
import static reseat.euindex.Operation.End.TOOL_CHANGED;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The worked tablet of {@code shared/facts/eu-index.md} section 10, case 1: an invented device. */
class StepCountTest {

    private static final List<Operation> OPERATIONS =
            List.of(
                    by(HEATED, "mat"),
                    by(REMOVED, "pick"),
                    by(REMOVED, "driver"),
                    by(REMOVED, "spudger"),
                    by(CLEANED, "tweezers"),
                    by(REMOVED, "driver"),
                    by(TOOL_CHANGED, "spudger"),
                    by(REMOVED, "lever"),
                    by(REMOVED, "driver"),
                    by(REMOVED, "spudger"),
                    by(REMOVED, "spudger"),
                    by(REMOVED, "driver"),
                    by(REMOVED, "driver"),
                    by(TOOL_CHANGED, "driver"),
                    by(REMOVED, "spudger"),
                    by(TOOL_CHANGED, "spudger"),
                    by(REMOVED, "driver"),
                    by(REMOVED, "tweezers"),
                    by(REMOVED, "tweezers"),
                    by(REMOVED, "tweezers"),
                    by(REMOVED));

    private static Operation by(Operation.End end, String... tools) {
        return new Operation(List.of(tools), end);
    }

    private static List<Operation> path(String numbers) {
        List<Operation> path = new ArrayList<>();
        for (String each : numbers.split(" ")) {
            path.add(OPERATIONS.get(Integer.parseInt(each) - 1));
        }
        return path;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "battery, 1 2 3 4 5 6 7 8, 0, 8, 12",
        "display with one authorisation, 1 2 3 4, 1, 9, 11",
        "back cover, 1 2 3 4 9 10 12 5 6 11 7 8 13 14 15 16 17 18 19 20 21, 0, 21, 30",
        "front camera, 1 2 3 4 9 10, 0, 6, 10",
        "rear camera, 1 2 3 4 5 6 11, 0, 7, 11",
        "port, 1 2 3 4 5 6 7 8 14 15, 0, 10, 15",
        "button, 1 2 3 4 5 6 7 8 16 17 18 19, 0, 12, 18",
        "second microphone, 1 2 3 4 5 6 7 8 16 17 20, 0, 11, 17",
        "left speaker, 1 2 3 4 12, 0, 5, 8",
        "right speaker, 1 2 3 4 5 6 7 8 13, 0, 9, 14"
    })
    void countsTheWorkedTablet(String part, String numbers, int serial, int merged, int strict) {
        assertEquals(merged, StepCount.count(path(numbers), serial, StepCount.Reading.MERGED));
        assertEquals(strict, StepCount.count(path(numbers), serial, StepCount.Reading.STRICT));
    }

    @Test
    void countsEachToolNeededAtTheSameTime() {
        assertEquals(
                2,
                StepCount.count(
                        List.of(by(REMOVED, "driver", "key")), 0, StepCount.Reading.MERGED));
    }

    @ParameterizedTest
    @CsvSource({"0, 5", "2, 5", "3, 4", "5, 4", "6, 3", "10, 3", "11, 2", "15, 2", "16, 1"})
    void givesPointsByTheTable(int steps, int points) {
        assertEquals(points, StepCount.points(steps));
    }
}
