package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each error with its place, what was found, what was expected and the nearest right name. */
class FaultyFilesTest {

    private static final String UNITS = "Known units: mm, cm, m, µm, um, in";

    @TempDir Path folder;

    /** The tin with a text replaced has one problem, at the mark {@code »}. */
    private void refuses(String found, String put, String message) {
        assertEquals(
                marked(found, put) + ": error: " + message,
                TinDevice.problems(folder.resolve("tin.yaml")));
    }

    private void warns(String found, String put, String message) {
        assertEquals(
                marked(found, put) + ": warning: " + message,
                TinDevice.problems(folder.resolve("tin.yaml")));
    }

    private void accepts(String found, String put) {
        TinDevice.file(folder, "tin.yaml", TinDevice.TIN.replace(found, put));
        assertEquals("", TinDevice.problems(folder.resolve("tin.yaml")));
    }

    private String marked(String found, String put) {
        String text = TinDevice.TIN.replace(found, put);
        int mark = text.indexOf('»');
        String before = text.substring(0, mark);
        long line = 1 + before.chars().filter(c -> c == '\n').count();
        int column = mark - before.lastIndexOf('\n');
        TinDevice.file(folder, "tin.yaml", text.replace("»", ""));
        return "tin.yaml:" + line + ":" + column;
    }

    @Test
    void unknownKeys() {
        refuses("name: Tin", "»nmae: Tin", "device: unknown key \"nmae\". Did you mean \"name\"?");
        refuses(
                "kind: cell,",
                "kind: cell, »colour: red,",
                "cell: unknown key \"colour\". Known keys: name, kind, under, move,"
                        + " spare, spareIncludes, hazards, inspect, needs.");
        refuses(
                "id: tin",
                "id: tin\n»variant: x",
                "device: unknown key \"variant\". Did you mean \"variants\"?");
    }

    @Test
    void missingKeys() {
        refuses(
                "m2x4: {thread: M2x0.4, length: 4 mm, head: pan,",
                "m2x4: »{thread: M2x0.4, length: 4 mm,",
                "m2x4: the key \"head\" is missing");
        refuses(
                "m2x4: {thread: M2x0.4, length: 4 mm,",
                "m2x4: »{thread: M2x0.4,",
                "m2x4: the key \"length\" (or \"lengthMm\") is missing");
        refuses(
                "clamped: 1.2 mm",
                "»clamped: 1.2 mm, clampedMm: 1.2",
                "seat: give \"clamped\" or \"clampedMm\", not both");
        refuses(
                "board: {name: Board, kind: board, under: [lid]}",
                "board: {name: Board, kind: board, under: [lid]}\n  knob:» ",
                "knob: found nothing, expected a part; write {} for one without facts");
    }

    @Test
    void wrongTypes() {
        refuses("name: Tin", "name: »[Tin]", "name: found a list, expected text");
        refuses(
                "cuts: [cell]",
                "cuts: [cell], slack: »maybe",
                "slack: found \"maybe\", expected true or false");
        refuses(
                "format: reseat-device/1",
                "format: »reseat-device/9",
                "format: found format \"reseat-device/9\", but this Reseat reads reseat-device/1");
        refuses(
                "form: insert",
                "form: »insret",
                "form: found \"insret\", expected tapped, nut, insert or formed. Did"
                        + " you mean \"insert\"?");
        refuses(
                "tests:\n",
                "tests:\n  x: »[1]\n",
                "x: found a list, expected a map with the keys text, of, needs, switchedOn, at and"
                        + " leak");
    }

    @Test
    void decimalCommasAreNamed() {
        refuses(
                "outline: {width: 60 mm, height: 40 mm}",
                "outline:\n  width: »1,2 mm\n  height: 40 mm",
                "width: found \"1,2 mm\": numbers have a decimal point: write 1.2 mm");
        refuses(
                "m2x4: {thread: M2x0.4, length: 4 mm,",
                "m2x4: {thread: M2x0.4, length: »4,5 mm,",
                "length: found 4,5 mm, but numbers have a decimal point: write 4.5 mm");
        refuses(
                "clamped: 1.2 mm",
                "clampedMm: »1,2",
                "clampedMm: found 1,2, but numbers have a decimal point: write 1.2");
    }

    @Test
    void timesHaveAUnit() {
        refuses(
                "tests:\n",
                "prepare: {off: {text: Shut down, time: »20}}\ntests:\n",
                "time: found \"20\" without a unit: write 20 s or 20 ms");
        accepts("tests:\n", "prepare: {off: {text: Shut down, ms: 20}}\ntests:\n");
        accepts("tests:\n", "prepare: {off: {text: Shut down, time: 0}}\ntests:\n");
    }

    @Test
    void unitsAndNumbers() {
        refuses(
                "width: 60 mm",
                "width: »60",
                "width: found \"60\": a length is a number and a unit (1.6 mm); the"
                        + " unit is missing. "
                        + UNITS);
        refuses(
                "width: 60 mm",
                "width: »60 N·m",
                "width: found \"60 N·m\": a length is a number and a unit (1.6 mm);"
                        + " \"N·m\" is a unit of torque. "
                        + UNITS);
        refuses(
                "width: 60 mm",
                "width: »60 furlong",
                "width: found \"60 furlong\": a length is a number and a unit (1.6"
                        + " mm); there is no unit \"furlong\". "
                        + UNITS);
        refuses(
                "clamped: 1.2 mm",
                "clamped: »-1.2 mm",
                "clamped: found \"-1.2 mm\", expected a value from 0 to 10000 mm");
        refuses(
                "{x: 5, y: 5}",
                "{x: 5, y: ».nan}",
                "y: found \".nan\", expected a number of millimetres");
        refuses(
                "{x: 5, y: 5}",
                "{x: 5, y: ».inf}",
                "y: found \".inf\", expected a number of millimetres");
        refuses(
                "{x: 5, y: 5}",
                "{x: 5, y: »1e999999999}",
                "y: found \"1e999999999\", which is out of range");
        refuses(
                "torque: 0.18 N·m",
                "torqueNm: »-1",
                "torqueNm: found \"-1\", expected a value from 0 to 1000 N·m");
        refuses(
                "kind: cover",
                "kind: cover, move: {time: »26 h}",
                "time: found \"26 h\", expected a value from 0 to 86400000 ms");
    }

    @Test
    void indexStrings() {
        String given = "kind: cover, move: {time: »A1 B0 G2 A1 B0 P1 A0}";
        String place = marked("kind: cover", given);
        assertEquals(
                place + ": error: time: found \"A1 B0 G2 A1 B0 P1 A0\": ",
                TinDevice.problems(folder.resolve("tin.yaml")).replaceFirst("(?<=A0\": ).*", ""));
    }

    @Test
    void ids() {
        refuses(
                "  charge: {text",
                "  »char/ge: {text",
                "tests: found \"char/ge\" where an id belongs: 1 to 64 letters,"
                        + " digits, \".\", \"_\" or \"-\", beginning"
                        + " with a letter or digit");
        refuses(
                "  charge: {text",
                "  »\"\\e[31m\": {text",
                "tests: found \"\\u001b[31m\" where an id belongs: 1 to 64 letters,"
                        + " digits, \".\", \"_\" or \"-\","
                        + " beginning with a letter or digit");
    }

    @Test
    void references() {
        refuses(
                "needs: [cell]",
                "needs: [»sell]",
                "needs: there is no supply \"sell\". Did you mean \"cell\"?");
        refuses(
                "screw: m2x4}",
                "screw: »m3x4}",
                "screw: there is no screw type \"m3x4\". Did you mean \"m2x4\"?");
        refuses(
                "kind: cover",
                "kind: »covre",
                "kind: there is no kind of part \"covre\". Did you mean \"cover\"?");
        refuses(
                "kind: cover",
                "kind: cover, hazards: »lithium-sell",
                "hazards: there is no hazard \"lithium-sell\". Did you mean \"lithium-cell\"?");
        refuses(
                "kind: cover",
                "kind: cover, spareIncludes: [»bord]",
                "spareIncludes: there is no part \"bord\". Did you mean \"board\"?");
        refuses(
                "kind: cover",
                "kind: cover, move: {tool: »spatla}",
                "tool: there is no tool \"spatla\". Did you mean \"spatula\"?");
        refuses(
                "kind: cover",
                "kind: cover, move: {posture: »face-upp}",
                "posture: there is no posture \"face-upp\". Did you mean \"face-up\"?");
        refuses(
                "of: [cell,",
                "of: [»lid-scrw, cell,",
                "of: there is no part or joint \"lid-scrw\". Did you mean \"lid-screw\"?");
        refuses(
                "holds: [lid, tray]\n",
                "holds: [lid, »lid, tray]\n",
                "holds: \"lid\" occurs twice in this list");
        refuses(
                "holds: [lid, tray]\n",
                "holds: »lid\n",
                "holds: found 1 entry, expected at least 2");
    }

    @Test
    void aWrongKindIsOneProblemAlone() {
        refuses(
                "kind: pad-bond",
                "kind: »adhesiv-bond",
                "kind: there is no kind of joint \"adhesiv-bond\". Did you mean"
                        + " \"adhesive-bond\"?");
        refuses(
                "kind: pad-bond",
                "kind: »adhesive",
                "kind: there is no kind of joint \"adhesive\". Did you mean \"adhesive-bond\"?");
        refuses(
                "{kind: pad-bond, holds: [cell, tray], under: [lid]}",
                "»{holds: [cell, tray], under: [lid]}",
                "cell-pad: the key \"kind\" is missing");
        refuses(
                "{kind: pad-bond, holds: [cell, tray], under: [lid]}",
                "{kind: pad-bond, holds: [cell, tray], under: [lid], ways: {w: »peal}}",
                "w: there is no kind of manipulation \"peal\". Did you mean \"peel\"?");
    }

    @Test
    void partsAndCovers() {
        refuses(
                "kind: frame",
                "kind: frame, move: »lift",
                "part tray is the base: it stays on the bench and has no move");
        refuses(
                "parts:\n",
                "parts:\n  »knob: {}\n",
                "part knob is not held in place: no joint holds it and it lies under no part");
        refuses("kind: cover", "kind: cover, »under: lid", "part lid lies under itself");
        refuses(
                "kind: cover",
                "kind: cover, »under: tray",
                "part lid lies under the base tray, which is never moved out of its way");
        refuses(
                "holds: [cell, tray], under: [lid]",
                "holds: [cell, tray], »under: [lid, tray]",
                "joint cell-pad is hidden by its own site tray, which never leaves it");
    }

    @Test
    void supplies() {
        refuses(
                ", cuts: [cell]}\n  cell-pad: {kind: pad-bond, holds: [cell, tray], under: [lid]}\n"
                        + "  board-screw: {kind: screw, holds: [board, tray], under: [lid], needs",
                "}\n  cell-pad: {kind: pad-bond, holds: [cell, tray], under: [lid]}\n"
                        + "  board-screw: {kind: screw, holds: [board, tray], under: [lid], »needs",
                "joint board-screw needs cell cut, but no joint cuts it");
        refuses(
                "cuts: [cell]",
                "cuts: [cell], »needs: cell",
                "joint cell-plug needs cell cut before it is released, and its release cuts it");
    }

    @Test
    void seatsAndBonds() {
        refuses(
                "x: 55, y: 5",
                "»x: 65, y: 5",
                "joint lid-screw.b: its seat lies outside the outline of 60.0 mm by 40.0 mm");
        warns(
                "x: 55, y: 5",
                "»x: 5, y: 5",
                "joint lid-screw.b has its seat at the same point of tray as lid-screw.a");
        refuses(
                "b: {x: 55, y: 5",
                "b: {x: »55",
                "joint lid-screw.b: a seat must have both x and y, or neither");
        refuses(
                "cell-pad: {kind",
                "cell-pad: {bond: {edge: »[[0, 0], [9, 0]]}, kind",
                "edge: found 2 entries, expected at least 3");
        refuses(
                "cell-pad: {kind",
                "cell-pad: {bond: {edge: [[0, 0], [9, 0], [9, 9]], »givenDepths:"
                        + " {edge: 3, depth: 1 mm}}, kind",
                "joint cell-pad: there is no edge 3; edges are counted from 0 to 2");
        refuses(
                "holds: [cell, board]",
                "holds: [cell, board], seat: »{x: 1, y: 1}",
                "joint cell-plug has a seat, but no key \"screw\" says what is in it");
        warns(
                "screw: m2x4}",
                "screw: m2x4, ways: {w: {kind: unscrew, »tool: t5}}}",
                "joint board-screw: t5 turns T5, but m2x4 has the drive PH0");
    }

    @Test
    void setUps() {
        refuses(
                "id: tin",
                "id: tin\nsetup: {tool: {hand: {ph0: »9 s}}}",
                "setup: the change of tool from hand to ph0 costs 9000 ms, but over"
                        + " tweezers only 2880 ms; set-ups must obey"
                        + " the triangle inequality");
    }

    @Test
    void consumables() {
        refuses(
                "cell-pad: {kind",
                "cell-pad: {ways: {w: {consumes: {of: tape-5, quantity: 1, unit: »ml}}}, kind",
                "unit: tape-5 is counted in \"mm\", not in \"ml\"");
        refuses(
                "cell-pad: {kind",
                "cell-pad: {ways: {w: {consumes: {of: tape-5, quantity: »0}}}, kind",
                "quantity: found \"0\", expected a number greater than zero");
    }

    @Test
    void allProblemsAtOnce() {
        String problems =
                TinDevice.problems(
                        TinDevice.file(
                                folder,
                                "tin.yaml",
                                TinDevice.TIN
                                        .replace("name: Tin\n", "nmae: Tin\n")
                                        .replace("screw: m2x4}", "screw: m3x4}")
                                        .replace("x: 55", "x: 65")
                                        .replace("parts:\n", "parts:\n  knob: {}\n")));
        assertEquals(
                """
                tin.yaml:3:1: error: device: unknown key "nmae". Did you mean "name"?
                tin.yaml:11:3: error: part knob is not held in place: no joint holds it and it lies under no part
                tin.yaml:24:11: error: joint lid-screw.b: its seat lies outside the outline of 60.0 mm by 40.0 mm
                tin.yaml:27:88: error: screw: there is no screw type "m3x4". Did you mean "m2x4"?""",
                problems);
    }

    @Test
    void veryManyProblemsAreCounted() {
        StringBuilder many = new StringBuilder("parts:\n");
        for (int i = 0; i < 1000; i++) {
            many.append("  p").append(i).append(": {}\n");
        }
        Reading reading = TinDevice.read(TinDevice.tin(folder, "parts:\n", many.toString()));
        assertEquals(201, reading.problems().size());
        assertEquals("and 800 more", reading.problems().get(200).message());
    }

    @Test
    void rowsOfSeatTables() {
        TinDevice.file(
                folder,
                "s.csv",
                "joint,seat,x,y,torqe\nlid-screw,a,1,1,\nlid-scrw,z,1,1,\nlid-screw,e,1\nlid-screw,f,x,70,\n");
        assertEquals(
                """
                s.csv:1:16: error: unknown column "torqe". Did you mean "torque"?
                s.csv:2:11: error: seat "a" of lid-screw is already defined at tin.yaml:23:7
                s.csv:3:1: error: joint: there is no joint entry "lid-scrw". Did you mean "lid-screw"?
                s.csv:4:1: error: this row has 3 cells, but the header has 5
                s.csv:5:13: error: x: found "x", expected a number of millimetres""",
                TinDevice.problems(TinDevice.tin(folder, "id: tin", "id: tin\nseatTable: s.csv")));
    }

    @Test
    void filesOfSeatTables() {
        refuses(
                "id: tin",
                "id: tin\nseatTable: »../s.csv",
                "found \"../s.csv\", expected the name of a file beside this one");
        refuses(
                "id: tin",
                "id: tin\nseatTable: »t.csv",
                "there is no file \"t.csv\" beside this one");
        TinDevice.file(folder, "s.csv", "seat,x\na,1\n");
        assertEquals(
                "s.csv:1:1: error: the column \"joint\" is missing",
                TinDevice.problems(TinDevice.tin(folder, "id: tin", "id: tin\nseatTable: s.csv")));
    }

    @Test
    void filesThatCannotBeRead() throws IOException {
        assertEquals(
                "none.yaml: error: there is no such file",
                TinDevice.problems(folder.resolve("none.yaml")));
        assertEquals(
                "d: error: this is a directory, not a file",
                TinDevice.problems(Files.createDirectory(folder.resolve("d"))));
        Path large = folder.resolve("large.yaml");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(200L * 1024 * 1024);
        }
        assertEquals(
                "large.yaml: error: the file is larger than 16 MiB", TinDevice.problems(large));
        assertEquals(
                "l.yaml:1:1: error: found a list, expected the keys of a device file,"
                        + " such as format",
                TinDevice.problems(TinDevice.file(folder, "l.yaml", "- a\n")));
    }
}
