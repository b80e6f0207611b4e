package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import reseat.spi.ToolkitVersion;

class MainTest {

    @Test
    void printsVersionAndJava() {
        Ran ran = Ran.reseat("--version");

        assertEquals(0, ran.code());
        String[] lines = ran.out().split("\\R");
        assertEquals("reseat " + ToolkitVersion.current(), lines[0]);
        assertTrue(lines[1].startsWith("Java " + Runtime.version()), lines[1]);
        assertEquals("", ran.err());
    }

    @Test
    void helpListsCommandsAndExitCodes() {
        Ran ran = Ran.reseat("--help");

        assertEquals(0, ran.code());
        assertTrue(ran.out().startsWith("Usage: reseat [-hV] COMMAND"), ran.out());
        assertTrue(ran.out().contains("completion  Print a completion script"), ran.out());
        assertTrue(ran.out().contains("  2   wrong usage or bad input"), ran.out());
    }

    @Test
    void asksForACommandWhenThereIsNone() {
        Ran ran = Ran.reseat();

        assertEquals(2, ran.code());
        assertEquals("", ran.out());
        assertEquals("reseat: Name a command.\nTry 'reseat --help'.\n", ran.err());
    }

    @Test
    void suggestsTheCommandThatWasMeant() {
        Ran ran = Ran.reseat("completoin");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean: reseat completion"), ran.err());
    }

    @Test
    void tellsAnUnknownCommandEvenWhereHelpIsAskedFor() {
        Ran ran = Ran.reseat("plna", "--help");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean: reseat plan"), ran.err());
    }

    @Test
    void pointsAtTheHelpOfTheCommandInHand() {
        Ran ran = Ran.reseat("completion", "--colour");

        assertEquals(2, ran.code());
        assertEquals(
                "reseat: Unknown option: '--colour'\nTry 'reseat completion --help'.\n", ran.err());
    }

    @Test
    void printsACompletionScript() {
        Ran ran = Ran.reseat("completion");

        assertEquals(0, ran.code());
        assertTrue(ran.out().startsWith("#!/usr/bin/env bash\n"), ran.out());
        assertTrue(ran.out().contains("complete -F _complete_reseat"), ran.out());
    }
}
