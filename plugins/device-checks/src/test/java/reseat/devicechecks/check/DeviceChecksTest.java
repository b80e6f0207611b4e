package reseat.devicechecks.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.Check;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.job.Job;
import reseat.model.Device;
import reseat.model.Severity;

class DeviceChecksTest {

    private static final String MAGNET_HAZARD =
            "{signal: CAUTION, nature: Hot face, consequence: It is hot, avoidance: Wait}";

    @Test
    void haveNothingToSayOfASoundDevice() {
        assertEquals(List.of(), Radio.found(Radio.with()));
    }

    @Test
    void describeThemselves() {
        List<Check> checks = DeviceChecks.all();
        assertEquals(checks.size(), checks.stream().map(c -> c.info().id()).distinct().count());
        for (Check check : checks) {
            assertTrue(
                    check.info().finds().endsWith(".") && check.info().matters().endsWith("."),
                    check.info().id());
        }
    }

    // --- hazards

    @Test
    void findACellWhoseHazardIsGone() {
        assertEquals(
                List.of("cell-without-hazard /parts/cell"),
                Radio.found(kinds("parts: {cell: {title: cell, role: cell, hazards: []}}")));
    }

    @Test
    void findACellWhoseHazardSpeaksOfSomethingElse() {
        Device device =
                Radio.with(
                        "supplies:",
                        "hazards: {lithium-cell: {signal: WARNING, nature: Sharp edge, consequence: It cuts, avoidance: Wear gloves}}\nsupplies:");
        assertEquals(List.of("cell-without-hazard /parts/cell"), Radio.found(device));
        assertEquals(
                List.of("cell-without-hazard /parts/cell"),
                Radio.found(
                        Radio.with(
                                "supplies:",
                                "hazards: {edge: {signal: WARNING, nature: Sharp edge, consequence: It cuts, avoidance: Wear gloves}}\n"
                                        + "kinds: {parts: {cell: {title: cell, role: cell, hazards: [edge]}}}\nsupplies:")));
    }

    @Test
    void findACellThatIsNoneByItsKind() {
        assertEquals(
                List.of("cell-not-marked /parts/cell"),
                Radio.found(
                        Radio.with(
                                "{name: Cell, kind: cell,", "{name: Main battery, kind: module,")));
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "{name: Tuner, kind: module", "{name: Load cell, kind: sensor")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CAUTION | Touching it causes death or serious injury | true",
                "NOTICE  | The adhesive can catch fire | true",
                "CAUTION | Severe burns of the hand | true",
                "CAUTION | The solvent ignites | true",
                "CAUTION | You can lose an eye | true",
                "CAUTION | It may explode | true",
                "CAUTION | It can burn | true",
                "NOTICE  | Skin contact causes burns | true",
                "NOTICE  | It springs into an eye | true",
                "WARNING | It can catch fire and kill people | false",
                "CAUTION | Skin contact causes burns | false",
                "CAUTION | It heats without fire | false",
                "NOTICE  | A discharge kills the circuit | false",
                "NOTICE  | A driver that slips burns out the stage | false",
            })
    void judgeSignalWordsByTheConsequence(String signal, String consequence, boolean found) {
        Device device =
                Radio.with(
                        "supplies:",
                        "hazards: {odd: {signal: "
                                + signal
                                + ", nature: Something, consequence: "
                                + consequence
                                + ", avoidance: Take care}}\nsupplies:");
        assertEquals(
                found ? List.of("signal-word-mild /hazards/odd/signal") : List.of(),
                Radio.found(device));
    }

    @Test
    void findACellHazardThatIsWateredDown() {
        Device device =
                Radio.with(
                        "supplies:",
                        "hazards: {lithium-cell: {signal: NOTICE, nature: Lithium cell, consequence: It may get warm, avoidance: Take care}}\nsupplies:");
        assertEquals(List.of("signal-word-mild /hazards/lithium-cell/signal"), Radio.found(device));
    }

    @Test
    void findAMagnetWithoutACaution() {
        assertEquals(
                List.of("magnet-without-caution /parts/horn"),
                Radio.found(
                        kinds("parts: {speaker: {title: speaker, magnetic: true, hazards: []}}")));
        assertEquals(
                List.of("magnet-without-caution /parts/horn"),
                Radio.found(Radio.with("kind: speaker", "kind: bracket")));
        assertEquals(
                List.of("magnet-without-caution /parts/horn"),
                Radio.found(
                        Radio.with(
                                "supplies:",
                                "hazards: {odd: "
                                        + MAGNET_HAZARD
                                        + "}\nkinds: {parts: {horn: {title: horn, magnetic: true, hazards: [odd]}}}\nsupplies:",
                                "kind: speaker",
                                "kind: horn")));
    }

    // --- tools at a cell

    @ParameterizedTest
    @CsvSource({
        "steel-spatula, peel, ERROR",
        "scalpel, peel, ERROR",
        "hot-air-gun, peel, ERROR",
        "t6, peel, ERROR",
        "pick, cut-to-depth, ERROR",
        "heat-mat, heat-and-lift, ERROR",
        "spudger, pry, WARNING",
        "spatula, break-off, WARNING",
        "spudger, peel, ''",
        "hand, stretch-pull, ''",
    })
    void findRoughWaysOnACell(String tool, String kind, String severity) {
        Device device =
                Radio.with(
                        "cell-pad: {kind: pad-bond,",
                        "cell-pad: {kind: pad-bond, ways: {usual: {kind: "
                                + kind
                                + ", tool: "
                                + tool
                                + ", time: 5 s, restoreTime: 5 s}},");
        List<Finding> found = Radio.findings(CheckInput.of(device));
        assertEquals(
                severity.isEmpty() ? List.of() : List.of("rough-on-cell " + severity),
                found.stream().map(f -> f.check() + " " + f.severity()).toList());
    }

    @Test
    void findMetalAtThePlugOfACellButNotALever() {
        assertEquals(
                List.of("rough-on-cell /joints/cell-plug/ways/usual"),
                Radio.found(
                        Radio.with(
                                "cell-plug: {kind: wire-plug,",
                                "cell-plug: {kind: wire-plug, ways: {usual: {kind: pull-straight, tool: pliers}},")));
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "cell-plug: {kind: wire-plug,",
                                "cell-plug: {kind: board-to-board, slack: true,")));
    }

    @Test
    void findWhatTheHandlingOfAWayAsksFor() {
        String way = "cell-pad: {kind: pad-bond, ways: {usual: {kind: peel, handling: [%s]}},";
        assertEquals(
                List.of("rough-on-cell /joints/cell-pad/ways/usual"),
                Radio.found(
                        Radio.with(
                                "cell-pad: {kind: pad-bond,",
                                String.format(way, "Warm it with hot air first"))));
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "cell-pad: {kind: pad-bond,",
                                String.format(way, "Never use metal or heat"))));
    }

    @Test
    void findARoughMoveOfACell() {
        assertEquals(
                List.of("rough-on-cell /parts/cell/move"),
                Radio.found(
                        Radio.with(
                                "kind: cell, under: [lid]",
                                "kind: cell, under: [lid], move: {kind: lift, tool: steel-spatula}")));
    }

    @ParameterizedTest
    @CsvSource({"cell, 1", "tuner, 0"})
    void findHeatAndBladeBesideACell(String part, int findings) {
        Device device =
                Radio.with(
                        "lid-screw: {kind: screw, holds: [lid, case], screw: m2}",
                        "lid-bond: {kind: adhesive-bond, holds: [lid, case], ways: {usual: {kind: cut-to-depth}}, bond: {edge: [[0, 0], [60, 0], [60, 40], [0, 40]],"
                                + " strips: {a: {path: [[1, 1], [59, 1]], width: 2 mm}}, keepOuts: {x: {part: "
                                + part
                                + ", outline: [[10, 10], [20, 10], [20, 20]]}}, margin: 1 mm}}");
        List<Finding> found = Radio.findings(CheckInput.of(device));
        assertEquals(findings, found.size(), found.toString());
        found.forEach(
                f ->
                        assertEquals(
                                "rough-on-cell " + Severity.WARNING,
                                f.check() + " " + f.severity()));
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "12, 0"})
    void findHeatAtAScrewWithACellBehind(double gap, int findings) {
        Device device =
                Radio.with(
                        "horn-screw: {kind: screw,",
                        "horn-screw: {kind: screw, seat: {behind: [{part: cell, gap: "
                                + gap
                                + "}]}, ways: {usual: {kind: unscrew, handling: [Warm the thread lock first]}},");
        assertEquals(findings, Radio.found(device).size(), Radio.found(device).toString());
    }

    // --- power

    @ParameterizedTest
    @ValueSource(
            strings = {
                "board-screw: {kind: screw,",
                "horn-plug: {kind: wire-plug,",
                "tuner-hook: {kind: cable-hook,"
            })
    void findIsolatorsOffThePath(String joint) {
        Device device = Radio.with(joint, joint + " cuts: [main],");
        assertEquals(
                List.of(
                        "isolator-off-path /joints/"
                                + joint.substring(0, joint.indexOf(':'))
                                + "/cuts"),
                Radio.found(device));
    }

    @Test
    void findAnIsolatorOfAnotherCell() {
        Device device =
                Radio.with(
                        "main: {name: Main cell, of: cell}",
                        "main: {name: Main cell, of: cell}\n  spare: {name: Spare pack}",
                        "jack: {name: Jack, kind: module",
                        "jack: {name: Spare pack, kind: cell",
                        "cuts: [main]}",
                        "cuts: [main, spare]}");
        assertEquals(
                List.of("isolator-off-path /joints/cell-plug/cuts"),
                Radio.found(device).stream().filter(f -> f.startsWith("isolator")).toList());
    }

    @Test
    void acceptALinkAndABoardBetweenCellAndBoard() {
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "jack: {name: Jack, kind: module",
                                "jack: {name: Service link, kind: link",
                                "jack-plug: {kind: wire-plug, holds: [jack, board], under: [lid]}",
                                "jack-plug: {kind: wire-plug, holds: [jack, board], under: [lid], cuts: [main]}")));
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "cell-plug: {kind: wire-plug, holds: [cell, board], under: [lid], cuts: [main]}",
                                "cell-plug: {kind: wire-plug, holds: [cell, jack], under: [lid]}",
                                "jack-plug: {kind: wire-plug, holds: [jack, board], under: [lid]}",
                                "jack-plug: {kind: wire-plug, holds: [jack, board], under: [lid], cuts: [main]}")));
    }

    // --- covers

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tuner-plug: {kind: board-to-board, holds: [tuner, board]",
                "horn-plug: {kind: wire-plug, holds: [horn, board]",
                "horn-screw: {kind: screw, holds: [horn, case]",
                "cell-pad: {kind: pad-bond, holds: [cell, case]"
            })
    void findAJointInsideThatLostItsCover(String joint) {
        Device device = Radio.with(joint + ", under: [lid]", joint);
        assertEquals(
                List.of("joint-without-cover /joints/" + joint.substring(0, joint.indexOf(':'))),
                Radio.found(device));
    }

    @Test
    void findAJointInsideThatHasTheWrongCover() {
        assertEquals(
                List.of("joint-without-cover /joints/tuner-plug"),
                Radio.found(
                        Radio.with(
                                "tuner-plug: {kind: board-to-board, holds: [tuner, board], under: [lid]",
                                "tuner-plug: {kind: board-to-board, holds: [tuner, board], under: [knob]")));
    }

    @Test
    void findAJointOfASubassemblyThatLostItsCover() {
        assertEquals(
                List.of("joint-without-cover /joints/face-clip"),
                Radio.found(
                        Radio.with(
                                "face-clip: {kind: clip, holds: [face, shelf], under: [case]}",
                                "face-clip: {kind: clip, holds: [face, shelf]}")));
    }

    // --- wear and tests

    @ParameterizedTest
    @CsvSource({"29, 0", "30, 1"})
    void countTheCyclesOfAConnector(int made, int findings) {
        Device device =
                Radio.with(
                        "horn-plug: {kind: wire-plug,",
                        "horn-plug: {kind: wire-plug, madeCycles: " + made + ",");
        assertEquals(findings, Radio.found(device).size(), Radio.found(device).toString());
    }

    @Test
    void countTheCyclesOfTheUnit() {
        Job job = new Job("J", "SN 1", "radio", Optional.empty(), Map.of("tuner-plug", 30));
        assertEquals(
                List.of("rated-cycles-exceeded"),
                Radio.findings(CheckInput.of(Radio.with()).withJob(job)).stream()
                        .map(Finding::check)
                        .toList());
    }

    @Test
    void findWhatNoTestNames() {
        assertEquals(
                List.of("unplugged-untested /parts/tuner"),
                Radio.found(Radio.with("of: [tuner, horn, jack, face]", "of: [horn, jack, face]")));
        assertEquals(
                List.of(),
                Radio.found(
                        Radio.with(
                                "of: [tuner, horn, jack, face]",
                                "of: [tuner-plug, horn, jack, face]")));
    }

    private static Device kinds(String kinds) {
        return Radio.with("supplies:", "kinds: {" + kinds + "}\nsupplies:");
    }
}
