package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The method is a plugin, which this process has not: what is tested here is the command alone. */
class AssessCommandTest {

    @Test
    void namesTheMethodsThatThereAre() {
        Ran ran = Ran.reseat("assess", "no-matter.yaml", "--by", "guess");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("there is no method \"guess\""), ran.err());
    }
}
