package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FastenerCommandsTest {

    static final String DEVICE =
            """
            format: reseat-device/1
            id: tile
            base: frame
            outline: {width: 100 mm, height: 60 mm}
            parts:
              frame: {}
              lid: {}
              cell: {kind: cell}
            screwTypes:
              m2x4: {thread: M2, length: 4 mm, head: pan, headDiameter: 3.5 mm, drive: T5, class: 8.8, finish: black}
              m2x5: {thread: M2, length: 4.8 mm, head: pan, headDiameter: 3.5 mm, drive: T5, class: 8.8, finish: black}
            joints:
              a: {kind: screw, holds: [lid, frame], screw: m2x4, seat: {form: tapped, material: magnesium, clamped: 0.5 mm, threaded: 3.5 mm, behind: [{part: cell, gap: 0.5 mm}], torque: 0.12 N·m}}
              b: {kind: screw, holds: [lid, frame], screw: m2x5, seat: {form: tapped, material: magnesium, clamped: 0.8 mm, threaded: 4 mm}}
              tape: {kind: tape, holds: [cell, frame]}
              glue:
                kind: tape
                holds: [lid, frame]
                bond: {edge: [[0,0],[100,0],[100,60],[0,60]], strips: {s: {path: [[10,1.5],[90,1.5]], width: 3 mm}}, keepOuts: {coax: {part: cell, outline: [[40,2],[50,2],[50,4],[40,4]]}}, margin: 0.5 mm, givenDepths: [{edge: 0, depth: 3 mm}]}
            """;

    @TempDir private Path folder;
    private String device = "";

    @BeforeEach
    void write() throws Exception {
        Path file = folder.resolve("tile.yaml");
        Files.writeString(file, DEVICE);
        device = file.toString();
    }

    @Test
    void estimatesATorqueOfBareWords() {
        Ran ran = Ran.reseat("torque", "M1.6 8.8 into magnesium, 3 mm");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out().startsWith("0.103 N·m  ESTIMATE (the screw yields)\nwindow "), ran.out());
        assertTrue(ran.out().contains("! This torque is an estimate"), ran.out());
        assertTrue(
                ran.out().contains("? Friction was not given; assumed from 0.08 to 0.3."),
                ran.out());
    }

    @Test
    void tellsTheTorqueOfTheMakerInTheUnitOfTheShop() {
        Ran ran = Ran.reseat("torque", "--device", device, "--unit", "N·cm", "a");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out()
                        .startsWith(
                                "12 N·cm  stated in the device file (no source is stated)\n"
                                        + "! The device file states this torque without a source:"),
                ran.out());
    }

    @Test
    void aTorqueIsTheMakersOnlyIfItsSourceIsStated() throws Exception {
        Files.writeString(
                Path.of(device),
                DEVICE.replace("torque: 0.12 N·m", "torque: 0.12 N·m, torqueSource: sheet 7"));

        String out = Ran.reseat("torque", "--device", device, "a").out();

        assertTrue(out.startsWith("0.12 N·m  given by the maker (sheet 7)\n"), out);
    }

    @Test
    void whatAGivenTorqueExceedsIsACaution() throws Exception {
        Files.writeString(
                Path.of(device),
                DEVICE.replace("torque: 0.12 N·m", "torque: 1.2 N·m, torqueSource: sheet 7"));

        String out = Ran.reseat("torque", "--device", device, "a").out();

        assertTrue(out.contains("\n! By estimate the "), out);
        assertTrue(out.contains("N·m, below the torque given.\n"), out);
    }

    @Test
    void evidenceIsShownOnRequest() {
        String words = "M1.6 8.8 into magnesium, 3 mm";

        String brief = Ran.reseat("torque", words).out();
        String full = Ran.reseat("torque", words, "--evidence").out();

        assertTrue(brief.endsWith("Limits, inputs and formulas: --evidence.\n"), brief);
        assertTrue(full.contains("\n      by VDI 2230: M = F (0.16 P"), full);
        assertTrue(full.contains("\nInputs:\n  thread: M1.6"), full);
    }

    @Test
    void anInsertIsLimitedByThePlasticAroundIt() {
        String out =
                Ran.reseat("torque", "M2 A2-70 pan T6 into brass insert in abs, 3 mm", "--evidence")
                        .out();

        assertTrue(out.contains("ESTIMATE (the insert is pulled out)"), out);
        // π · 3 mm · 3 mm · 30 N/mm² · 0.5 = 424 N
        assertTrue(out.contains("424 N that shears abs, 30 N/mm²"), out);
    }

    @Test
    void thePartUnderTheHeadLimitsTheTorque() {
        String out =
                Ran.reseat("torque", "M2 8.8 pan T5 on abs into magnesium, 3 mm", "--evidence")
                        .out();

        assertTrue(out.contains("ESTIMATE (the part under the head gives way)"), out);
        // π/4 (3.68² - 2.4²) mm² = 6.11 mm², at 45 N/mm² 275 N
        assertTrue(out.contains("275 N at which 6.11 mm² of abs"), out);
    }

    @Test
    void driversAreUnderstoodAsPeopleNameThem() {
        for (String name : new String[] {"torx6", "Torx 6", "TX6", "T6"}) {
            assertTrue(Ran.reseat("driver", name).out().startsWith("T6 in T6: fits"), name);
        }
        assertTrue(Ran.reseat("driver", "phillips0").out().startsWith("PH0 in PH0: fits"));
        assertTrue(Ran.reseat("driver", "allen1.5").out().startsWith("H1.5 in H1.5: fits"));
        assertTrue(Ran.reseat("driver", "--thread", "M3", "--head", "grub").out().contains("H1.5"));
    }

    @Test
    void aTipOnTheGroundOfTheHoleIsTold() throws Exception {
        Files.writeString(
                Path.of(device),
                DEVICE.replace("threaded: 3.5 mm,", "threaded: 3.2 mm, depth: 3.5 mm,"));

        String out = Ran.reseat("swap", device, "a", "--screw", "m2x5").out();

        assertTrue(out.contains("before the head clamps: its tip touches the ground"), out);
    }

    @Test
    void convertsForTheEyeToSevenDigits() {
        String out = Ran.reseat("torque", "--convert", "6 N·cm").out();

        assertTrue(out.contains("\n0.6118297 kgf·cm\n"), out);
        assertTrue(out.contains("\n600000 dyn·cm\n"), out);
    }

    @Test
    void convertsExactly() {
        Ran ran = Ran.reseat("torque", "--convert", "0.6 kgf-cm");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("\n58.8399 mN·m\n"), ran.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M1.5 8.8 into steel, 2 mm",
                "M2 8.8 into steel, 2",
                "M2 8.8 into cheese, 2 mm",
                "M2 8.8 into steel, 0 mm"
            })
    void endsWithTwoOnBadInput(String words) {
        Ran ran = Ran.reseat("torque", words);

        assertEquals(2, ran.code());
        assertTrue(ran.err().startsWith("reseat: "), ran.err());
        assertEquals("", ran.out());
    }

    /** What a person mistypes: exit 2, one line that names what is known, no trace. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "M1.5 8.8 into steel, 2 mm | Nearest: M1.4 and M1.6. Known: M1, M1.1",
                "M2x0.7 8.8 into steel, 2 mm | 0.7 mm does not belong to M2. Known pitches: 0.4",
                "M2 8.8 into steel, -3 mm | must be above 0 mm; found \"-3mm\"",
                "M2 8.8 into steel, 0 mm | must be above 0 mm",
                "M2 8.8 into unobtainium, 3 mm | There is no material \"unobtainium\". Known: steel",
                "M2 8.8 into steel, 3 | a length needs a unit: mm, cm or in",
                "M2 8.8 into steel, 3 furlongs | is not a property class, and a length needs a unit",
                "M2 8.8 into steel, NaN mm | \"NaN\" is not a number",
                "M2 8.8 into steel, 99999999999999999999 mm | too long for any screw; the maximum is 1000 mm",
                "M2 8.8 into steel, 3 mm, oild | Did you mean \"oiled\"?",
                "M2 M3 8.8 into steel, 3 mm | A second thread \"M3\" beside \"M2\"",
                "M2 8.8 10.9 into steel, 3 mm | A second property class \"10.9\" beside \"8.8\"",
                "M2 8.8 head 1 mm into steel, 3 mm | is no wider than the thread M2",
                "'' | Missing: the thread (such as M1.6 or ST1.8); the property class (4.6"
            })
    void namesWhatIsKnown(String words, String known) {
        Ran ran = Ran.reseat("torque", words);

        assertEquals(2, ran.code());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("reseat: "), ran.err());
        assertTrue(ran.err().contains(known), ran.err());
        assertEquals(ran.err().length() - 1, ran.err().indexOf('\n'), ran.err());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "torque;--convert;-5 N·m | is not above 0",
                "torque;--convert;5 | has no unit. Known: N·m",
                "torque;--convert;NaN N·m | is not a torque",
                "torque;--unit;furlong;M2 8.8 into steel, 3 mm | no unit of torque \"furlong\". Known",
                "torque;--friction;slime;M2 8.8 into steel, 3 mm | no surface \"slime\". Known: zinc-dry",
                "driver;NaN | There is no drive \"NaN\". Known: T3",
                "driver;T10;--thread;M3 | not both",
                "driver;--head;pan;T10 | --head needs a --thread",
                "driver;--thread;M1.5 | Nearest: M1.4 and M1.6"
            })
    void namesWhatIsKnownOfOptions(String call, String known) {
        Ran ran = Ran.reseat(call.split(";", -1));

        assertEquals(2, ran.code());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains(known), ran.err());
    }

    /** "in" is a word before a material and a unit before anything else. */
    @Test
    void tellsInFromInch() {
        String into = Ran.reseat("torque", "M1.6 8.8 into magnesium, 3 mm").out();

        assertEquals(into, Ran.reseat("torque", "M1.6 8.8 in magnesium, 3 mm").out());
        assertTrue(
                Ran.reseat("torque", "M1.6 8.8 in magnesium, 0.12 in", "--evidence")
                        .out()
                        .contains("engagement: 3.05 mm"));
    }

    @Test
    void takesNoHoleThatTheHeadFallsThrough() {
        Ran ran = Ran.reseat("torque", "M2 8.8 head 2.2 mm into steel, 3 mm");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().contains("taken as wide as the thread, 2 mm."), ran.out());
    }

    @Test
    void warnsOfTheDriverThatLooksRight() {
        Ran ran = Ran.reseat("driver", "PH0", "JIS-S0");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("PH0 in JIS-S0: cams out, looks alike"), ran.out());
        assertTrue(
                Ran.reseat("driver", "--thread", "M3", "--head", "pan")
                        .out()
                        .contains("PH2  JIS B 1111"));
    }

    @Test
    void saysWhatAnotherScrewDoes() {
        Ran ran = Ran.reseat("swap", device, "a");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out()
                        .contains(
                                "right screw: fits  m2x4 in a engages 3.5 mm; 4 mm is"
                                        + " good practice"),
                ran.out());
        assertTrue(
                ran.out().contains("instead:     pierces  m2x5 in a goes 0.3 mm into cell."),
                ran.out());
    }

    @Test
    void laysScrewsApart() {
        Ran ran = Ran.reseat("trays", device);

        assertEquals(0, ran.code(), ran.err());
        assertTrue(
                ran.out().startsWith("compartment 1\n  1 x m2x4  from a\ncompartment 2\n"),
                ran.out());
        assertTrue(
                ran.out().contains("Fewer compartments are impossible: none of m2x4, m2x5"),
                ran.out());
    }

    @Test
    void saysHowDeepToCut() {
        Ran ran = Ran.reseat("cut", device, "lid");

        assertEquals(0, ran.code(), ran.err());
        assertTrue(ran.out().startsWith("glue: settings 3 mm\n! edge 0 from "), ran.out());
        assertTrue(ran.out().contains("keep-out coax allows 1.5 mm"), ran.out());
    }

    @Test
    void namesJointsThatThereAre() {
        Ran ran = Ran.reseat("swap", device, "c");

        assertEquals(2, ran.code());
        assertEquals("reseat: there is no screw in a seat \"c\". Known: a, b.\n", ran.err());
        assertEquals(2, Ran.reseat("cut", device, "cell").code());
    }

    @Test
    void printsJsonWithItsFormat() {
        String[][] calls = {
            {"torque", "--json", "M2 8.8 into steel, 2 mm"},
            {"torque", "--json", "--convert", "1 N·m"},
            {"driver", "--json", "T5"},
            {"driver", "--json", "--thread", "M2"},
            {"swap", "--json", device, "a"},
            {"trays", "--json", device},
            {"cut", "--json", device, "glue"}
        };
        for (String[] call : calls) {
            Ran ran = Ran.reseat(call);
            assertEquals(0, ran.code(), ran.err());
            assertTrue(ran.out().startsWith("{\n  \"format\": \"reseat-"), ran.out());
            assertTrue(ran.out().endsWith("\n}\n"), ran.out());
        }
    }

    @Test
    void addsTheRowsOfAShop() throws Exception {
        Path rows = folder.resolve("materials.csv");
        Files.writeString(rows, "material,group,shear,source,tag\nbamboo,wood,12,bench,shop\n");

        assertEquals(
                0,
                Ran.reseat("torque", "--rows", rows.toString(), "M2 8.8 into bamboo, 4 mm").code());
        Files.writeString(rows, "material,group,shear,source,tag\nbamboo,wood,soft,bench,shop\n");
        Ran ran = Ran.reseat("torque", "--rows", rows.toString(), "M2 8.8 into bamboo, 4 mm");
        assertEquals(2, ran.code());
        assertTrue(
                ran.err().contains("materials.csv:2:13: error: Found \"soft\" for shear"),
                ran.err());
    }
}
