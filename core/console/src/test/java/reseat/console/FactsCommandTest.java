package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reseat facts}: what must be cut before what, what strains what, and why. */
class FactsCommandTest {

    private static final String DEVICE = PlanCommandTest.DEVICE;

    @TempDir private Path folder;

    private String changed(String found, String put) {
        try {
            String text = Files.readString(Path.of(DEVICE));
            assertTrue(text.contains(found), found);
            return Files.writeString(folder.resolve("d.yaml"), text.replace(found, put)).toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void saysWhatIsCutFirstAndWhatIsOnTheWay() {
        String out = Ran.reseat("facts", DEVICE).out();

        assertTrue(
                out.contains(
                        """
                        Power, with what is on the way to the joints that cut it.
                          cell: cut before any work inside, by cell-plug
                            on the way to it: display, display-bond, cell-plug
                          outside, so that nothing need be cut: display-bond
                        """),
                out);
    }

    @Test
    void saysOfEachPartAndJointWhatMustBeCutAndWhy() {
        String out = Ran.reseat("facts", DEVICE).out();

        assertTrue(out.contains("; needs cell cut: it is inside the device\n"), out);
        assertTrue(
                out.lines()
                        .anyMatch(
                                l ->
                                        l.startsWith("  display-flex: ")
                                                && l.endsWith("; needs cell cut: stated, line 23")),
                out);
        assertTrue(
                out.lines().anyMatch(l -> l.startsWith("  cell-plug: ") && !l.contains("needs")),
                out);
        String of = changed("{name: Cell}}", "{name: Cell, of: cell}}");
        assertTrue(
                Ran.reseat("facts", of)
                        .out()
                        .contains("; needs cell cut: it is work on cell itself\n"));
    }

    @Test
    void saysWhatStrainsAWay() {
        String file =
                changed(
                        "  board-bolt:",
                        "  board-clip: {kind: tab-row, holds: [board, frame], under: [display]}\n  board-bolt:");

        assertTrue(
                Ran.reseat("facts", file)
                        .out()
                        .contains(
                                ", strained by board-screw.a board-screw.b board-screw.c board-screw.d board-bolt;"
                                        + " needs cell cut"));
        assertTrue(
                Ran.reseat("facts", file, "board-clip")
                        .out()
                        .contains(
                                "    strained by: board-screw (4), board-bolt: pry-along takes force, and"
                                        + " what holds the same parts must be loose\n"));
    }

    @Test
    void saysAllAboutOneJointWithItsLines() {
        assertEquals(
                """
                joint latch-fit: Latch fit, latch (line 26)
                  holds: latch + frame (line 26)
                  under: display (line 26)
                  way usual: press-and-hold, hand, face-up, 1.8 s + 1.8 s (line 26)
                  needs cell cut: it is inside the device
                    inside: it lies under display, which is not outside
                    and cell is cut before any work inside, by cell-plug (line 7)
                """,
                Ran.reseat("facts", DEVICE, "latch-fit").out());
    }

    @Test
    void saysAllAboutOnePart() {
        assertEquals(
                """
                part display: Display, display (line 15)
                  moved: book-open, hand, face-up, 2.52 s + 4.68 s (line 15)
                  held by: display-bond, display-flex
                  in the way of: label, cell, latch, speaker, board, display-flex, cell-plug, cell-tape, latch-fit, label-glue, speaker-pad, speaker-plug, board-screw (4), board-bolt
                  on the way to cell-plug, which cuts cell
                  needs nothing cut: it is on the way to what cuts cell
                """,
                Ran.reseat("facts", DEVICE, "display").out());
    }

    @Test
    void anIdMayNameAPartAndASupply() {
        String out = Ran.reseat("facts", DEVICE, "cell").out();

        assertTrue(out.startsWith("supply cell (line 7)\n"), out);
        assertTrue(out.contains("\npart cell: Cell, cell (line 17)\n"), out);
    }

    @Test
    void saysWhatIsWaivedAndWhere() {
        String file = changed("speaker: {name", "speaker: {needs: [], name");
        String all = Ran.reseat("facts", file).out();
        String one = Ran.reseat("facts", file, "speaker").out();

        assertTrue(
                all.lines()
                        .anyMatch(
                                l ->
                                        l.startsWith("  speaker: ")
                                                && l.endsWith("; waived: cell may be on, line 19")),
                all);
        assertTrue(one.contains("  needs nothing cut: stated, line 19\n"), one);
        assertTrue(one.contains("  waived: cell may be on, line 19\n"), one);
    }

    @Test
    void anUnknownIdGetsTheNearestRightOne() {
        Ran ran = Ran.reseat("facts", DEVICE, "cell-plg");

        assertEquals(2, ran.code());
        assertTrue(
                ran.err()
                        .startsWith(
                                "reseat: there is no part, joint or supply \"cell-plg\". Did you mean"
                                        + " \"cell-plug\"? Known: frame, "),
                ran.err());
    }
}
