package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Power;
import reseat.model.Supply;
import reseat.model.Way;

/** What a device file says of power, strain and what lets go by itself, and what it leaves open. */
class MeaningTest {

    @TempDir Path folder;

    private Device tin(String... foundAndPut) {
        return Bench.device(file(foundAndPut));
    }

    private Path file(String... foundAndPut) {
        String text = Bench.TIN;
        for (int i = 0; i < foundAndPut.length; i += 2) {
            assertTrue(text.contains(foundAndPut[i]), foundAndPut[i]);
            text = text.replace(foundAndPut[i], foundAndPut[i + 1]);
        }
        return Bench.file(folder, "tin.yaml", text);
    }

    private String problems(String... foundAndPut) {
        return Bench.problems(file(foundAndPut));
    }

    private static Way usual(Device device, String joint) {
        return device.joint(joint).firstWay();
    }

    @Test
    void needsThatNobodyStatesStayOpen() {
        Device tin = tin();

        assertEquals(Optional.of(List.of("cell")), tin.joint("board-screw").needs());
        assertEquals(Optional.empty(), tin.joint("cell-pad").needs());
        assertEquals(Optional.empty(), tin.part("board").needs());
        assertEquals(List.of("cell"), tin.power().needs(tin.joint("cell-pad")));
        assertEquals(List.of(), tin.power().needs(tin.joint("lid-screw.a")));
    }

    @Test
    void anEmptyListIsAStatement() {
        Device tin =
                tin(
                        "board: {name: Board,", "board: {needs: [], name: Board,",
                        "cell-pad: {kind", "cell-pad: {needs: [], kind");

        assertEquals(Optional.of(List.of()), tin.part("board").needs());
        assertEquals(Optional.of(List.of()), tin.joint("cell-pad").needs());
        assertEquals(List.of("cell"), tin.power().waived(tin.part("board")));
        assertEquals(List.of("cell"), tin.power().waived(tin.joint("cell-pad")));
    }

    @Test
    void theKindStatesWhereTheFileDoesNot() {
        String kinds =
                "\nkinds: {parts: {board: {needs: []}}, joints: {pad-bond: {needs: [cell]}}}";
        Device tin = tin("id: tin", "id: tin" + kinds);

        assertEquals(Optional.of(List.of()), tin.part("board").needs());
        assertEquals(Optional.of(List.of("cell")), tin.joint("cell-pad").needs());
        assertEquals(List.of(), tin.power().waived(tin.part("board")), "a kind waives nothing");
        assertEquals(
                Optional.of(List.of()),
                tin("id: tin", "id: tin" + kinds, "cell-pad: {kind", "cell-pad: {needs: [], kind")
                        .joint("cell-pad")
                        .needs(),
                "the file comes first");
    }

    @Test
    void aDoorIsMadeToBeOpenedByAnyone() {
        Device tin = tin("kind: cover", "kind: door");

        assertEquals(Optional.of(List.of()), tin.part("lid").needs());
        assertEquals(List.of(), tin.power().waived(tin.part("lid")));
    }

    @Test
    void aSupplyMayComeFromAPart() {
        Device tin =
                tin(
                        "cell: {name: Main cell}",
                        "cell: {name: Main cell, of: cell}\n  dock: {name: Dock, first: true}",
                        "holds: [board, tray],",
                        "holds: [board, tray], cuts: [dock],",
                        "needs: [cell], screw: m2x4}",
                        "screw: m2x4}");

        assertEquals(
                List.of(
                        new Supply("cell", "Main cell", Optional.of("cell"), false),
                        new Supply("dock", "Dock", Optional.empty(), true)),
                List.copyOf(tin.supplies().values()));
        assertEquals(List.of("dock"), tin.power().first());
        assertEquals(
                List.of(
                        new Power.Need("cell", Power.Rule.WORK_ON_CELL),
                        new Power.Need("dock", Power.Rule.POWER_FIRST)),
                tin.power().why(tin.joint("cell-pad")));
    }

    @Test
    void contactsGive() {
        Device tin = tin("kind: wire-plug,", "kind: contact-block,");

        assertTrue(tin.joint("cell-plug").gives());
        assertFalse(tin.joint("cell-pad").gives());
        assertFalse(
                tin("kind: wire-plug,", "kind: contact-block, gives: false,")
                        .joint("cell-plug")
                        .gives());
        assertTrue(tin("kind: pad-bond,", "kind: pad-bond, gives: true,").joint("cell-pad").gives());
    }

    @Test
    void whatGivesHasOneWayAndRuinsNothing() {
        String twice = "kind: pad-bond, gives: true, ways: {a: peel, b: break-off},";
        String ruin = "kind: pad-bond, gives: true, ways: {a: {kind: peel, ruins: [cell]}},";

        assertEquals(
                "tin.yaml:25:62: error: joint cell-pad lets go by itself (gives), so there is only"
                        + " one way to release it; found 2",
                problems("cell-pad: {kind: pad-bond,", "cell-pad: {" + " ".repeat(13) + twice));
        assertEquals(
                "tin.yaml:25:73: error: joint cell-pad lets go by itself (gives), so its release"
                        + " must not ruin a part",
                problems("kind: pad-bond,", ruin));
    }

    @Test
    void aForcefulWayIsStrainedByScrewsUnlessItSaysByWhat() {
        String clip = "clip: {kind: tab-row, holds: [lid, tray]%s}\n  cell-plug: {";
        Device silent = tin("cell-plug: {", String.format(clip, ""));
        assertEquals(Optional.empty(), usual(silent, "clip").strainedBy());
        assertEquals(
                List.of("lid-screw.a", "lid-screw.b"),
                silent.strainedBy(silent.joint("clip"), usual(silent, "clip")));

        Device none =
                tin("cell-plug: {", String.format(clip, ", ways: {usual: {strainedBy: []}}"));
        assertEquals(Optional.of(List.of()), usual(none, "clip").strainedBy());

        Device stated =
                tin(
                        "cell-plug: {",
                        String.format(clip, ", ways: {usual: {strainedBy: [lid-screw]}}"));
        assertEquals(
                Optional.of(List.of("lid-screw.a", "lid-screw.b")),
                usual(stated, "clip").strainedBy(),
                "an entry with seats stands for its joints");
    }

    @Test
    void whatStrainsMustExistAndBeAnother() {
        String pad = "cell-pad: {kind: pad-bond, ways: {usual: {strainedBy: %s}},";

        assertEquals(
                "tin.yaml:25:57: error: strainedBy: there is no joint \"lid-scre\". Did you mean"
                        + " \"lid-screw\"?",
                problems("cell-pad: {kind: pad-bond,", String.format(pad, "lid-scre")));
        assertEquals(
                "tin.yaml:25:57: error: joint cell-pad, way usual is strained by itself",
                problems("cell-pad: {kind: pad-bond,", String.format(pad, "cell-pad")));
        assertEquals(
                "tin.yaml:25:57: error: strainedBy: there is no joint \"board\". Did you mean"
                        + " \"board-screw\"?",
                problems("cell-pad: {kind: pad-bond,", String.format(pad, "board")));
    }

    @Test
    void aWayIsDoneInThePostureInWhichTheFirstOfItsPartsIsMoved() {
        String turned = "board: {move: {posture: on-edge}, name: Board,";
        Device tin = tin("board: {name: Board,", turned);

        assertEquals("on-edge", usual(tin, "board-screw").posture());
        assertEquals("face-up", usual(tin, "cell-plug").posture(), "the cell is named first");
        assertEquals(
                "on-edge",
                usual(
                                tin(
                                        "board: {name: Board,",
                                        turned,
                                        "holds: [board, tray]",
                                        "holds: [tray, board]"),
                                "board-screw")
                        .posture(),
                "the base is never moved");
        assertEquals(
                "face-down",
                usual(
                                tin(
                                        "board: {name: Board,",
                                        turned,
                                        "board-screw: {kind",
                                        "board-screw: {ways: {u: {posture: face-down}}, kind"),
                                "board-screw")
                        .posture(),
                "the file comes first");
        assertEquals(
                "lid-90",
                usual(
                                tin(
                                        "board: {name: Board,",
                                        turned,
                                        "id: tin",
                                        "id: tin\nkinds: {joints: {screw: {posture: lid-90}}}"),
                                "board-screw")
                        .posture(),
                "and the kind before the part");
    }

    @Test
    void anActBeforeWorkMayBeNeededOnlyInside() {
        String prepare =
                "id: tin\nprepare: {a: {text: A, time: 1 s, neededBy: inside}, b: {text: B, time: 1 s}}";
        Device tin = tin("id: tin", prepare);

        assertTrue(tin.prepares().get("a").onlyInside());
        assertFalse(tin.prepares().get("b").onlyInside());
        assertEquals(
                "tin.yaml:3:45: error: neededBy: found \"outside\", expected inside.",
                problems("id: tin", prepare.replace("inside", "outside")));
    }

    @Test
    void layingAsideAndTurningOpenHaveTimes() {
        assertEquals(2160, tin().setup().layAsideMs());
        assertEquals(3600, tin().setup().turnOpenMs());

        Device tin = tin("id: tin", "id: tin\nsetup: {layAside: 5 s, turnOpen: 0}");
        assertEquals(5000, tin.setup().layAsideMs());
        assertEquals(0, tin.setup().turnOpenMs());
    }

    @Test
    void kindsSayWhatTheyDo() {
        Device tin =
                tin(
                        "id: tin",
                        "id: tin\nkinds: {parts: {cover: {storesCharge: true}}, manipulations: {peel:"
                                + " {flammable: true, heat: {source: Lamp, celsius: 60, time: 30 s}}}}");
        Kind peel = tin.manipulation("peel");

        assertTrue(peel.forceful());
        assertTrue(peel.flammable());
        assertEquals(Optional.of(new Kind.Heat("Lamp", 60, 30_000)), peel.heat());
        assertTrue(tin.kindOf(tin.joint("cell-pad")).laid());
        assertTrue(tin.kindOf(tin.part("lid")).storesCharge());
    }

    @Test
    void aSupplyThatNobodyCanCutFirstIsNamed() {
        assertEquals(
                "tin.yaml:8:3: warning: supply dock is never cut first, also where work inside"
                        + " should not be done with it on: no joint cuts it",
                problems("cell: {name: Main cell}", "cell: {name: Main cell}\n  dock: {}"));
    }

    @Test
    void aSupplyComesFromAPartThatIsMoved() {
        assertEquals(
                "tin.yaml:7:27: error: supply cell comes from the base tray, which is never moved;"
                        + " name the part that holds its cells, or leave \"of\" out",
                problems("cell: {name: Main cell}", "cell: {name: Main cell, of: tray}"));
        assertEquals(
                "tin.yaml:7:31: error: of: there is no part \"sell\". Did you mean \"cell\"?",
                problems("cell: {name: Main cell}", "cell: {name: Main cell, of: sell}"));
    }

    @Test
    void whatAPartNeedsCutSomeJointCuts() {
        assertEquals(
                "tin.yaml:15:11: error: part board needs dock cut, but no joint cuts it",
                problems(
                        "cell: {name: Main cell}",
                        "cell: {name: Main cell}\n  dock: {}",
                        "board: {name: Board,",
                        "board: {needs: dock, name: Board,"));
        assertEquals(
                "tin.yaml:11:10: error: part tray is the base: it is never moved, so it needs"
                        + " nothing cut",
                problems("tray: {name", "tray: {needs: cell, name"));
    }
}
