package reseat.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How times, numbers and lists are written for people. */
class TextTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0 s",
        "1, 0.001 s",
        "8640, 8.64 s",
        "59500, 59.5 s",
        "59999, 59.999 s",
        "60000, 1 min",
        "60499, 1 min",
        "60500, 1 min 1 s",
        "3599000, 59 min 59 s",
        "3599499, 59 min 59 s",
        "3599500, 1 h",
        "3600000, 1 h",
        "3629000, 1 h",
        "3630000, 1 h 1 min",
        "7199000, 2 h",
        "7200000, 2 h",
        "86400000, 24 h",
        "-59500, -59.5 s",
        "-7199000, -2 h",
    })
    void timesAreRoundedToTheirSmallestUnit(long ms, String words) {
        assertEquals(words, TimeText.of(ms));
        assertEquals(words.replace(' ', '\u00a0'), TimeText.unbroken(ms));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 min",
        "1, 0.5 min",
        "44999, 0.5 min",
        "45000, 1 min",
        "210000, 3.5 min",
        "3584999, 59.5 min",
        "3585000, 1 h",
        "3900000, 1 h 5 min",
    })
    void estimatesAreRoundedToHalfMinutesUpToAnHour(long ms, String words) {
        assertEquals(words.replace(' ', '\u00a0'), TimeText.estimate(ms));
    }

    @ParameterizedTest
    @CsvSource({
        "180000, 390000, 3 to 6.5 min",
        "180000, 181000, 3 min",
        "1800000, 7200000, 30 min to 2 h",
        "3600000, 7200000, 1 h to 2 h",
    })
    void rangesNameTheirUnitOnceWhereItIsTheSame(long least, long most, String words) {
        assertEquals(words, TimeText.range(least, most).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @CsvSource({"0, 0 s", "4440, 5 s", "60000, 1 min", "1150000, 20 min", "86340000, 24 h"})
    void waitsAreRoundedUp(long ms, String words) {
        assertEquals(words.replace(' ', '\u00a0'), TimeText.atLeast(ms));
    }

    @ParameterizedTest
    @CsvSource({
        "0, the same time",
        "1500, 1.5 s more",
        "-1500, 1.5 s less",
        "7199000, 2 h more",
        "-7199000, 2 h less",
        "-3599000, 59 min 59 s less",
    })
    void differencesSayWhichWayTheyGo(long ms, String words) {
        assertEquals(words, TimeText.difference(ms));
    }

    @ParameterizedTest
    @ValueSource(longs = {Long.MIN_VALUE, Long.MAX_VALUE})
    void extremesDoNotOverflow(long ms) {
        assertEquals((ms < 0 ? "-" : "") + "2562047788015 h 13 min", TimeText.of(ms));
    }

    @Test
    void noTimeReadsSixtyOfAUnit() {
        for (long ms = 0; ms < 8_000_000; ms += 499) {
            String words = " " + TimeText.of(ms);
            assertEquals(-1, words.indexOf(" 60 "), words + " for " + ms);
        }
    }

    @Test
    void numbersHaveNoTrailingZeros() {
        assertEquals("0.15", NumberText.of(0.15));
        assertEquals("100", NumberText.of(100.0));
        assertEquals("0.333", NumberText.of(1 / 3.0));
        assertEquals("300", NumberText.of(new BigDecimal("3.0E2")));
        assertEquals("1 part", NumberText.count(1, "part", "parts"));
        assertEquals("0 parts", NumberText.count(0, "part", "parts"));
    }

    @Test
    void listsEndWithAnd() {
        assertEquals("", ListText.and(List.of()));
        assertEquals("a", ListText.and(List.of("a")));
        assertEquals("a and b", ListText.and(List.of("a", "b")));
        assertEquals("a, b and c", ListText.and(List.of("a", "b", "c")));
    }

    @Test
    void listsAreCutShort() {
        assertEquals("none", ListText.first(List.of(), 2));
        assertEquals("a, b", ListText.first(List.of("a", "b"), 2));
        assertEquals("a, b and 2 more", ListText.first(List.of("a", "b", "c", "d"), 2));
    }

    @Test
    void quotedTextCannotDriveATerminal() {
        assertEquals("\"a b\"", QuoteText.of("a b"));
        assertEquals("\"\\u001b[31m\\u202e\"", QuoteText.of("\u001b[31m\u202e"));
        assertEquals("\"" + "x".repeat(60) + "…\"", QuoteText.of("x".repeat(61)));
    }
}
