package reseat.console.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {

    private static final Map<String, String> UTF8 =
            Map.of("TERM", "xterm", "LANG", "en_GB.UTF-8", "COLUMNS", "90");

    @Test
    void colourIsForTerminalsAlone() {
        assertTrue(Terminal.of(true, UTF8).colour());
        assertFalse(Terminal.of(false, UTF8).colour());
        assertFalse(Terminal.of(true, Map.of("TERM", "xterm", "NO_COLOR", "")).colour());
        assertFalse(Terminal.of(true, Map.of("TERM", "dumb")).colour());
    }

    @Test
    void aFileLooksTheSameWhateverTheEnvironmentSays() {
        assertEquals(Terminal.none(), Terminal.of(false, UTF8));
        assertEquals(Terminal.none(), Terminal.of(false, Map.of("LANG", "C")));
    }

    @Test
    void takesTheWidthOfTheTerminalWithinReason() {
        assertEquals(90, Terminal.of(true, UTF8).width());
        assertEquals(60, Terminal.of(true, Map.of("COLUMNS", "20")).width());
        assertEquals(120, Terminal.of(true, Map.of("COLUMNS", "300")).width());
        assertEquals(100, Terminal.of(true, Map.of("COLUMNS", "wide")).width());
    }

    @Test
    void breaksLongLinesForAPersonAlone() {
        String line = "  one two three four five six seven eight nine ten eleven twelve thirteen";

        assertEquals(line, Terminal.none().wide(60).fitted(line));
        assertEquals(
                List.of(
                        "  one two three four five six seven eight nine ten",
                        "      eleven twelve thirteen"),
                Terminal.of(true, Map.of("COLUMNS", "60")).fitted(line).lines().toList());
    }

    @Test
    void fallsBackToAscii() {
        assertFalse(Terminal.of(true, UTF8).ascii());
        assertTrue(Terminal.of(true, Map.of("LANG", "C")).ascii());
    }

    @Test
    void wrapsWithoutBreakingAQuantity() {
        assertEquals(
                List.of("a time of", "3\u00a0min\u00a05\u00a0s"),
                Paper.wrap("a time of 3\u00a0min\u00a05\u00a0s", 12));
    }
}
