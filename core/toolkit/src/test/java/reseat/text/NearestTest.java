package reseat.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which name is offered to somebody who used another. */
class NearestTest {

    private static final List<String> KNOWN =
            List.of("shield", "lid", "wire-plug-long", "wire-plug", "board");

    @ParameterizedTest
    @CsvSource({
        "bord, board",
        "shilde, shield",
        "LID, lid",
        "lit, lid",
        "plug, wire-plug",
        "Plug, wire-plug",
        "lot,",
        "tray,",
        "'',",
    })
    void upToAThirdOfTheLettersMayDifferAndAlwaysOne(String wanted, String offered) {
        assertEquals(Optional.ofNullable(offered), Nearest.of(wanted, KNOWN));
    }

    @Test
    void ofNamesThatAreAsNearTheFirstByTheAlphabetIsOffered() {
        assertEquals(Optional.of("b1"), Nearest.of("b4", List.of("b3", "b1", "b2")));
        assertEquals(
                Optional.of("plug-a"),
                Nearest.of("plug", Set.of("plug-c", "plug-a", "plug-b", "plug-long")));
    }

    @Test
    void aNameWithoutALetterInCommonIsNotOffered() {
        assertEquals(Optional.empty(), Nearest.of("c", List.of("a", "b")));
    }

    @Test
    void aNameThatATerminalShouldNotBeSentIsNotOffered() {
        assertEquals(Optional.empty(), Nearest.of("lid", List.of("lid\u001b")));
        assertEquals(Optional.empty(), Nearest.of("x".repeat(101), List.of("x".repeat(100))));
    }

    @Test
    void theQuestionIsAskedInOneWording() {
        assertEquals(" Did you mean \"board\"?", Nearest.question("bord", KNOWN));
        assertEquals(" (did you mean \"board\"?)", Nearest.aside("bord", KNOWN));
        assertEquals("", Nearest.question("tray", KNOWN));
        assertEquals("", Nearest.aside("tray", KNOWN));
    }

    @ParameterizedTest
    @CsvSource({
        "abc, abc, 0",
        "abc, acb, 1",
        "abc, ab, 1",
        "abc, axc, 1",
        "ca, abc, 3",
        "'', ab, 2"
    })
    void aSwapOfNeighboursIsOneEdit(String one, String other, int edits) {
        assertEquals(edits, Nearest.edits(one, other));
        assertEquals(edits, Nearest.edits(other, one));
    }
}
