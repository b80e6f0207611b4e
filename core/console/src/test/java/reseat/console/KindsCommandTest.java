package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What the ids mean that device files may use. */
class KindsCommandTest {

    @Test
    void aKindIsToldWithItsTimesAndHowTheyAreKnown() {
        Ran ran = Ran.reseat("kinds", "unlatch");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out().startsWith("unlatch (kind of manipulation, built-in): opening a ZIF"),
                ran.out());
        assertTrue(ran.out().contains("\n  tool: spudger (Nylon lever)\n"), ran.out());
        assertTrue(
                ran.out()
                        .contains(
                                "\n  time: 2.52 s, added up from published elemental times: A1 B0 G3"
                                        + " M3 X0 I0 A0\n"),
                ran.out());
        assertTrue(ran.out().contains("\n  source: MOST-derived estimate\n"), ran.out());
    }

    @Test
    void anIdOfSeveralScopesIsToldForEach() {
        String out = Ran.reseat("kinds", "cell").out();

        assertTrue(out.contains("cell (kind of part, built-in)"), out);
        assertTrue(out.contains("cell (supply, family clamshell): Main cell"), out);
        assertTrue(out.contains("hazards: lithium-cell (Lithium cell with stored energy)"), out);
    }

    @Test
    void fastenersAreNamedAsPeopleWriteThem() {
        assertTrue(Ran.reseat("kinds", "M2x0.4").out().startsWith("M2 (thread, "));
        assertTrue(Ran.reseat("kinds", "TX6").out().contains("T6 (drive, "));
        assertTrue(Ran.reseat("kinds", "pan").out().startsWith("pan (head, "));
        assertTrue(Ran.reseat("kinds", "8.8").out().startsWith("8.8 (property class, "));
    }

    @Test
    void allAreListedInGroups() {
        String out = Ran.reseat("kinds").out();

        assertTrue(out.startsWith("kind of part:\n  part\n"), out);
        for (String group :
                new String[] {"kind of joint", "tool", "hazard", "consumable", "thread", "head"}) {
            assertTrue(out.contains("\n" + group + ":\n  "), group);
        }
    }

    @Test
    void anUnknownIdIsRefusedWithTheNearest() {
        Ran ran = Ran.reseat("kinds", "latched-conector");

        assertEquals(2, ran.code());
        assertTrue(ran.err().contains("Did you mean \"latched-connector\"?"), ran.err());
    }

    @Test
    void machinesGetTheSame() {
        String out = Ran.reseat("kinds", "unlatch", "--json").out();

        assertTrue(out.startsWith("{\n  \"format\": \"reseat-kinds/1\""), out);
        assertTrue(out.contains("\"timeMs\": 2520"), out);
        assertTrue(out.contains("\"timeBasis\": \"elements\""), out);
    }
}
