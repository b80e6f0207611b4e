package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import reseat.console.sheet.Terminal;

class PointingTest {

    private static final Terminal SCREEN = new Terminal(true, 80, false, false);

    @Test
    void pointsBelowWhatWasTyped() {
        assertEquals(
                "           ^^^\n       no such name",
                new Pointing(SCREEN, 7).below("q = xyz", Trouble.at(4, 7, "no such name")));
    }

    @Test
    void repeatsALineThatIsNotTheLast() {
        assertEquals(
                "       a b\n         ^\n       wrong",
                new Pointing(SCREEN, 7).below("a b\nc", Trouble.at(2, 3, "wrong")));
    }

    @Test
    void tellsLineAndColumnWhereNobodySits() {
        assertEquals(
                "input:2:3: wrong\n  c d\n    ^",
                new Pointing(Terminal.none(), 0)
                        .told("input", "a b\nc d", Trouble.at(6, 7, "wrong")));
    }

    @Test
    void staysInsideTheText() {
        assertEquals(
                "       ab\n".substring(10) + "         ^\n       ends too soon",
                new Pointing(SCREEN, 7).below("ab", Trouble.at(2, 2, "ends too soon")));
    }
}
