package reseat.internal.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CardTest {

    private final Card card = Card.basic();

    @Test
    void theShortIndicesAreTheBaseSeries() {
        assertEquals(List.of(0, 1, 3, 6, 10, 16, 24, 32, 42, 54), card.allowed('F'));
        assertEquals(List.of(0, 1, 3, 6, 10, 16, 24, 32, 42, 54), card.allowed('A').subList(0, 10));
        assertEquals(List.of(0, 1, 3, 6, 16), card.allowed('I'));
        assertEquals(List.of(), card.allowed('Z'));
    }

    /** Source: joshitm-plasiv/modapts-v2-demo, modapts/engines/most/values.py. */
    @ParameterizedTest
    @CsvSource({
        "finger-spins, 1, 1",
        "finger-spins, 8, 10",
        "finger-spins, 10, 16",
        "finger-spins, 61, 54",
        "process-time, 0.5, 1",
        "process-time, 0.51, 3",
        "process-time, 37, 96",
        "crank, 2, 6",
        "steps, 5, 10",
    })
    void readColumnsTurnAmountsIntoIndices(String column, double amount, int index) {
        Card.Row row = card.column(column).rowFor(amount);
        assertEquals(index, row.index());
        assertEquals(Card.Mark.READ, row.mark());
    }

    /** Nobody read these: the test holds them against memory, and to being marked so. */
    @ParameterizedTest
    @CsvSource({
        "wrist-turns, 3, 6",
        "wrist-turns, 4, 10",
        "wrist-strokes, 5, 16",
        "wrist-cranks, 25, 54",
        "power-tool, 6, 3",
        "power-tool, 25, 6",
        "crank, 1, 3",
    })
    void rememberedColumnsSayThatTheyAreRemembered(String column, double amount, int index) {
        Card.Row row = card.column(column).rowFor(amount);
        assertEquals(index, row.index());
        assertEquals(Card.Mark.MEMORY, row.mark());
        assertTrue(card.column(column).source().contains("from memory"));
    }

    @Test
    void everyColumnNamesItsSource() {
        assertEquals(15, card.columns().size());
        card.columns().forEach(column -> assertTrue(column.source().length() > 20, column.id()));
    }

    @Test
    void amountsBeyondTheCardAreRefused() {
        assertEquals(
                "finger spins: the card ends at 61.0 turns, not 62.0",
                refusal(() -> card.column("finger-spins").rowFor(62)));
        assertEquals(
                "finger spins cannot be NaN",
                refusal(() -> card.column("finger-spins").rowFor(Double.NaN)));
        assertEquals(
                "finger spins cannot be -1.0",
                refusal(() -> card.column("finger-spins").rowFor(-1)));
        assertEquals(
                "the column \"body\" holds descriptions, not limits",
                refusal(() -> card.column("body").rowFor(1)));
        assertTrue(
                refusal(() -> card.column("spins"))
                        .startsWith("the card has no column \"spins\"; it has reach, "));
    }

    private static String refusal(Runnable call) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, call::run).getMessage());
    }
}
