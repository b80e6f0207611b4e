package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import reseat.given.SameFacts;
import reseat.given.Samples;
import reseat.model.Device;
import reseat.model.Kind;
import reseat.model.Move;

class ResolvedJsonTest {

    /** The least that a resolved file may hold, as another program writes it. */
    private static final String LEAST =
            """
            {"format": "reseat-device/1", "resolved": true, "id": "box", "base": "P0", "hand": "H", "usualPosture": "A",
             "setup": {"tool": {"H": {"T": 5}, "T": {"H": 7}}, "posture": {"A": {}}},
             "parts": {"P0": {}, "P1": {"move": {"tool": "H", "posture": "A", "ms": 3, "restoreMs": 4}}},
             "joints": {"j_1": {"holds": ["P1", "P0"],
                                "ways": {"w": {"tool": "T", "posture": "A", "ms": 1, "restoreMs": 2}}}}}
            """;

    @TempDir Path folder;

    private Device back(Device device) {
        return TinDevice.device(TinDevice.file(folder, "back.json", ResolvedJson.write(device)));
    }

    @Test
    void isReadAsTheSameDevice() {
        Device tin = TinDevice.device(TinDevice.tin(folder, "id: tin", "id: tin"));

        SameFacts.assertSame(tin, back(tin));
        assertEquals(ResolvedJson.write(tin), ResolvedJson.write(back(tin)));
    }

    @Test
    void keepsBondsSeatsActsAndWords() {
        String bond =
                "bond: {edge: [[0, 0], [9.25, 0], [9, 9]], strips: {top: {path: [[0,"
                        + " 1], [9, 1]], width: 2.5 mm}},"
                        + " keepOuts: {c: {part: board, outline: [[1, 1], [2, 1], [2,"
                        + " 2]]}}, margin: 0.5 mm,"
                        + " thickness: 0.3 mm, givenDepths: [{edge: 0, depth: 4 mm}]}";
        Device tin =
                TinDevice.device(
                        TinDevice.file(
                                folder,
                                "tin.yaml",
                                TinDevice.TIN
                                                .replace(
                                                        "cell-pad: {kind",
                                                        "cell-pad: {"
                                                                + bond
                                                                + ", madeCycles: 3, kind")
                                                .replace(
                                                        "y: 5, torque: 0.18 N·m",
                                                        "y: 5, torque: 8 ozf·in,"
                                                                + " torqueSource: x, pass: 2, behind: {part: cell, gap: 0.1 in}")
                                        + "prepare: {off: {text: Shut down, time: 20"
                                        + " s, hazards: [lithium-cell]}}\n"
                                        + "kinds: {parts: {cover: {time: 2.5 s,"
                                        + " timeBasis: measured}}}\n"));

        SameFacts.assertSame(tin, back(tin));
    }

    /** The new facts, stated, left out or both. */
    private static final String MEANING =
            TinDevice.TIN
                    .replace("{name: Main cell}", "{name: Main cell, of: cell, first: true}")
                    .replace("board: {name", "board: {needs: [], name")
                    .replace("kind: wire-plug,", "kind: grounding-spring,")
                    .replace(
                            "kind: pad-bond,",
                            "kind: pad-bond, ways: {usual: {strainedBy: [lid-screw]}},")
                    .replace("kind: cover}", "kind: door}")
                    .replace(
                            "id: tin",
                            "id: tin\nsetup: {layAside: 5 s, turnOpen: 7 s}\n"
                                    + "prepare: {off: {text: Off, time: 1 s, neededBy: inside}}");

    @Test
    void keepsWhatIsStatedAndWhatIsNot() {
        Device tin = TinDevice.device(TinDevice.file(folder, "tin.yaml", MEANING));

        SameFacts.assertSame(tin, back(tin));
        assertEquals(ResolvedJson.write(tin), ResolvedJson.write(back(tin)));
        assertEquals(tin.setup().layAsideMs(), back(tin).setup().layAsideMs());
        assertEquals(7000, back(tin).setup().turnOpenMs());
        assertEquals(Optional.empty(), back(tin).joint("cell-pad").needs());
        assertEquals(Optional.of(List.of()), back(tin).part("board").needs());
    }

    @Test
    void showsWhatIsComputedBesides() {
        Device tin = TinDevice.device(TinDevice.file(folder, "tin.yaml", MEANING));
        String written = squeezed(ResolvedJson.write(tin));

        for (String part :
                List.of(
                        "\"cell-pad\": [ { \"supply\": \"cell\", \"rule\": \"work-on-cell\", \"reason\":"
                                + " \"it is work on cell itself\", \"from\": \"/supplies/cell/of\" } ]",
                        "\"board-screw\": [ { \"supply\": \"cell\", \"rule\": \"stated\", \"reason\":"
                                + " \"stated\", \"from\": \"/joints/board-screw/needs\" } ]",
                        "\"onTheWay\": { \"cell\": { \"parts\": [ \"lid\" ], \"joints\": ["
                                + " \"lid-screw.a\", \"lid-screw.b\", \"cell-plug\" ] } }",
                        "\"outside\": { \"parts\": [ ], \"joints\": [ \"lid-screw.a\","
                                + " \"lid-screw.b\" ] }",
                        "\"first\": [ \"cell\" ]",
                        "\"strainedBy\": { \"cell-pad\": { \"usual\": [ \"lid-screw.a\","
                                + " \"lid-screw.b\" ] } }")) {
            assertTrue(written.contains(part), part + " in " + written);
        }
    }

    private static String squeezed(String json) {
        return json.replaceAll("\\s+", " ");
    }

    @Test
    void whatIsComputedIsIgnoredWhenRead() {
        Device tin = TinDevice.device(TinDevice.file(folder, "tin.yaml", MEANING));
        String written = ResolvedJson.write(tin);
        String other =
                written.substring(0, written.indexOf("\"computed\""))
                        + "\"computed\": [\"x\"]\n}\n";

        Device read = TinDevice.device(TinDevice.file(folder, "other.json", other));

        assertEquals(written, ResolvedJson.write(read));
        assertTrue(
                TinDevice.problems(
                                TinDevice.file(
                                        folder,
                                        "tin.yaml",
                                        TinDevice.TIN.replace("id: tin", "computed: {}\nid: tin")))
                        .startsWith("tin.yaml:2:1: error: device: unknown key \"computed\"."),
                "nobody writes it by hand");
    }

    static List<Path> samples() {
        return Samples.devices();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void everySampleIsReadBackInEveryVariant(Path sample) {
        Device device = TinDevice.device(sample);
        SameFacts.assertSame(device, back(device));
        for (String variant : TinDevice.read(sample).variants()) {
            Reading patched = DeviceFiles.read(sample, Optional.of(variant), Samples.families());
            Device other =
                    patched.device().orElseThrow(() -> new AssertionError(patched.problems()));
            SameFacts.assertSame(other, back(other));
        }
    }

    @Test
    void theLeastResolvedFileNeedsNoKinds() {
        Device box = TinDevice.device(TinDevice.file(folder, "box.json", LEAST));

        assertEquals(new Move("act", "H", "A", 3, 4, List.of(), List.of()), box.move("P1"));
        assertEquals("joint", box.joint("j_1").kind());
        assertEquals("part", box.part("P0").kind());
        assertEquals(List.of("H", "T"), box.setup().tools());
        assertEquals(7, box.setup().toolChangeMs("T", "H"));
        assertTrue(box.kinds(Kind.Scope.MANIPULATION).containsKey("act"));
        SameFacts.assertSame(box, back(box));
    }

    @Test
    void noDefaultApplies() {
        String less =
                LEAST.replace("\"tool\": \"T\", ", "")
                        .replace(", \"hand\": \"H\"", "")
                        .replace("\"P1\": {\"move\"", "\"P2\": {}, \"P1\": {\"move\"");
        assertEquals(
                """
                box.json:1:1: error: device: the key "hand" is missing
                box.json:3:22: error: part P2 is not held in place: no joint holds it and it lies under no part
                box.json:3:28: error: part P2: the key "move" is missing; no default applies in a resolved file
                box.json:5:35: error: w: the key "tool" is missing""",
                TinDevice.problems(TinDevice.file(folder, "box.json", less)));
    }

    @Test
    void theTableMustBeWhole() {
        assertEquals(
                "box.json:2:41: error: setup: the change of tool from T to H has no time",
                TinDevice.problems(
                        TinDevice.file(folder, "box.json", LEAST.replace("\"H\": 7", ""))));
    }
}
