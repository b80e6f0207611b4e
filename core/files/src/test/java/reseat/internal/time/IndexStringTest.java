package reseat.internal.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.model.Duration;

class IndexStringTest {

    /** A worked string, what it adds up to, and where it is printed. */
    record Worked(String text, SequenceModel model, long sum, long ms, String source) {}

    static Stream<Worked> workedStrings() {
        return Stream.of(
                new Worked(
                        "A6 B6 G1 A1 B0 P3 A0",
                        SequenceModel.GENERAL_MOVE,
                        17,
                        6_120,
                        "3DEXPERIENCE help, stm-r-ui-DialogBoxes-MOSTDatacard (says about 6 s)"),
                new Worked(
                        "A1 B0 G3 (A1 B0 P1) A0 (6)",
                        SequenceModel.GENERAL_MOVE,
                        16,
                        5_760,
                        "coursehero.com/file/6445234/MOST: washers on six bolts"),
                new Worked(
                        "A16 B6 G1 A6 B0 P1 A24",
                        SequenceModel.GENERAL_MOVE,
                        54,
                        19_440,
                        "joshitm-plasiv/modapts-v2-demo, tests/test_most.py"),
                new Worked(
                        "A6 B0 G1 M1 X6 I0",
                        SequenceModel.CONTROLLED_MOVE,
                        14,
                        5_040,
                        "joshitm-plasiv/modapts-v2-demo, tests/test_most.py"),
                new Worked(
                        "A1 B0 G1 A1 B0 P3 F10 A1 B0 P1 A0",
                        SequenceModel.TOOL_USE,
                        18,
                        6_480,
                        "joshitm-plasiv/modapts-v2-demo, tests/test_most.py"),
                new Worked(
                        "A1 B0 G1 M1 X10 I0 A0",
                        SequenceModel.CONTROLLED_MOVE,
                        13,
                        4_680,
                        "a public MOST program, index id 66023125376"));
    }

    @ParameterizedTest
    @MethodSource("workedStrings")
    void addsUpWorkedStrings(Worked worked) {
        IndexString string = IndexString.parse(worked.text);
        assertEquals(worked.model, string.model(), worked.source);
        assertEquals(worked.sum, string.sum(), worked.source);
        assertEquals(worked.sum * 10, string.tmu(), worked.source);
        assertEquals(worked.ms, string.ms(), worked.source);
    }

    /** coursehero.com/file/6445234/MOST: the washers of the second worked string, done twice. */
    @Test
    void washersDoneTwiceTake320Tmu() {
        IndexString washers = IndexString.parse("A1 B0 G3 (A1 B0 P1) A0 (6)");
        assertEquals(320, 2 * washers.tmu());
        assertEquals(11_520, IndexString.msOf(2 * washers.tmu()));
    }

    @Test
    void givesADurationFromElements() {
        assertEquals(
                new Duration(6_120, Duration.Basis.ELEMENTS, "A6 B6 G1 A1 B0 P3 A0"),
                IndexString.parse("  a6 b6 g1\ta1 b0  p3 a0 ").duration());
    }

    @ParameterizedTest
    @CsvSource({
        "A1B0G3(A1B0P1)A0(6), 16",
        "A 1 B 0 G 3 ( A 1 B 0 P 1 ) A 0 ( 6 ), 16",
        "A1 B0 G3 (A1 B0 P1) (6) A0, 16",
        "A1 B0 G3 (A1 B0 P1) 6 A0, 16",
        "A1 B0 G1 A1 B0 (P3 F10) A1 B0 P1 A0 (3), 44",
        "A1 B0 (G1) (2) A1 B0 (P3) A0 (4), 16",
        "A1 B0 G1 A1 B0 P1, 4",
    })
    void takesBlanksAndBracketsAsTheyCome(String text, long sum) {
        assertEquals(sum, IndexString.parse(text).sum());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A1 B0 G1 A1 B0 P4 A0 | P4 | 16 | \"P4\" at character 16: the card has no such index; nearest is P3, and P takes 0, 1, 3, 6",
                "A1 B18 G1 A1 B0 P1 A0 | B18 | 4 | \"B18\" at character 4: the card has no such index; nearest is B16, and B takes 0, 3, 6, 10, 16",
                "A1 B0 G6 A1 B0 P1 A0 | G6 | 7 | \"G6\" at character 7: the card has no such index; nearest is G3, and G takes 0, 1, 3",
                "A1 B0 G1 A1 B0 P1 L12 A1 B0 P1 A0 | L12 | 19 | \"L12\" at character 19: the card has no such index; nearest is L10, and L takes 0, 1, 3, 6, 10, 16, 24, 32, 42, 54",
                "A1 B0 P1 | P1 | 7 | \"P1\" at character 7: after A B comes G",
                "A1 B0 G1 X6 | X6 | 10 | \"X6\" at character 10: after A B G comes A or M",
                "B0 | B0 | 1 | \"B0\" at character 1: after nothing comes A",
                "A1 B0 G1 A1 B0 P1 A0 A1 | A1 | 22 | \"A1\" at character 22: the sequence is complete before it",
                "A1 B0 wash A1 | WASH | 7 | \"WASH\" at character 7: this is not a letter with an index: expected G",
                "A1.5 B0 | A1.5 | 1 | \"A1.5\" at character 1: this is not a letter with an index: expected A",
                "A1 B0 G1 A1 B0 P1 A0 (6) | ( | 22 | \"(\" at character 22: a number of repeats must follow indices in brackets",
                "A1 B0 G3 (A1 B0 P1) A0 (0) | 0 | 25 | \"0\" at character 25: repeats must be between 1 and 9999",
                "A1 B0 G3 (A1 (B0) P1) A0 (6) | ( | 14 | \"(\" at character 14: brackets do not nest: close the first one before the next",
                "A1 B0 G3 A1 B0 P1) A0 | ) | 18 | \")\" at character 18: this bracket closes no indices",
            })
    void namesTheTokenThatDoesNotFit(String text, String token, int position, String message) {
        IndexStringException e =
                assertThrows(IndexStringException.class, () -> IndexString.parse(text));
        assertEquals(message, e.getMessage());
        assertEquals(token, e.token());
        assertEquals(position, e.position());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A1 B0 G1 A1 B0 | \"A1 B0 G1 A1 B0\": it ends too early: expected P",
                "'' | \"\": it ends too early: expected A",
                "A1 B0 G3 (A1 B0 P1 A0 | \"A1 B0 G3 (A1 B0 P1 A0\": a bracket is not closed",
                "A1 B0 G3 (A1 B0 P1) A0 | \"A1 B0 G3 (A1 B0 P1) A0\": a group in brackets needs the number of its repeats, such as (6), behind it or at the end",
                "A330 B0 G3 (A330 B16 P6) A0 (9999) | \"A330 B0 G3 (A330 B16 P6) A0 (9999)\": it adds up to more than a day",
            })
    void saysWhatIsMissingAtTheEnd(String text, String message) {
        assertEquals(
                message,
                assertThrows(IndexStringException.class, () -> IndexString.parse(text))
                        .getMessage());
    }
}
