package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.given.Samples;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Duration;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Point;
import reseat.model.Seat;
import reseat.model.Way;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;

class DeviceFilesTest {

    @TempDir Path folder;

    private Device tin(String found, String put) {
        return TinDevice.device(TinDevice.tin(folder, found, put));
    }

    private Device tin() {
        return tin("id: tin", "id: tin");
    }

    @Test
    void anEntryWithSeatsIsOneJointPerSeat() {
        Device tin = tin();

        assertEquals(
                List.of("lid-screw.a", "lid-screw.b", "cell-plug", "cell-pad", "board-screw"),
                List.copyOf(tin.joints().keySet()));
        Seat b = tin.joint("lid-screw.b").seat().orElseThrow();
        assertEquals(Optional.of(new Point(55, 5)), b.at());
        assertEquals(Seat.Form.INSERT, b.form());
        assertEquals(OptionalDouble.of(1.2), b.clampedMm());
        assertEquals(OptionalDouble.of(0.18), b.torqueNm());
        assertEquals(
                List.of("cell", "cell-plug", "lid-screw.a", "lid-screw.b"),
                tin.tests().get("charge").of());
    }

    @Test
    void bareNumbersOfASeatAreMillimetresAndNewtonMetres() {
        Device tin =
                tin(
                        "y: 5, torque: 0.18 N·m",
                        "y: 5, clamped: 1.4, torque: 0.2, behind: {part: cell, gap: 0.6}");
        Seat b = tin.joint("lid-screw.b").seat().orElseThrow();

        assertEquals(OptionalDouble.of(1.4), b.clampedMm());
        assertEquals(OptionalDouble.of(0.2), b.torqueNm());
        assertEquals("[Behind[part=cell, gapMm=0.6]]", b.behind().toString());
    }

    @Test
    void aWayThatIsLeftOutComesFromTheKindOfJoint() {
        Way way = tin().joint("cell-plug").ways().get("usual");

        assertEquals("pull-straight", way.kind());
        assertEquals("tweezers", way.tool());
        assertEquals("face-up", way.posture());
        assertTrue(way.ms() > 0 && way.restoreMs() > 0);
    }

    @Test
    void theToolOfAScrewTurnsItsDrive() {
        assertEquals("ph0", tin().joint("board-screw").ways().get("usual").tool());
        assertEquals(
                "t5",
                tin("drive: PH0", "drive: T5").joint("board-screw").ways().get("usual").tool());
    }

    @Test
    void whatAKindConsumesIsConsumedByEachWayUnlessTheFileSaysOtherwise() {
        assertEquals(
                "pad-adhesive",
                tin().joint("cell-pad").ways().get("usual").consumes().get(0).consumable());
        Device other =
                tin(
                        "cell-pad: {kind: pad-bond,",
                        "cell-pad: {ways: {usual: {consumes: [{of: tape-5, quantity: 40}]}}, kind: pad-bond,");
        assertEquals(
                "[ConsumableUse[consumable=tape-5, quantity=40, unit=mm]]",
                other.joint("cell-pad").ways().get("usual").consumes().toString());
    }

    @Test
    void anotherManipulationThanTheUsualOneBringsItsOwnTool() {
        Device tin =
                tin(
                        "cell-plug: {kind: wire-plug,",
                        "cell-plug: {ways: {s: pull-strap}, kind: wire-plug,");

        assertEquals("hand", tin.joint("cell-plug").ways().get("s").tool());
        assertEquals("pull-strap", tin.joint("cell-plug").ways().get("s").kind());
    }

    @Test
    void movesMayBeStatedInFullBrieflyOrNotAtAll() {
        String full =
                "kind: cover, move: {kind: tilt-out, tool: spudger, posture: on-edge, ms: 1500, restoreTime: 2.5 s}";
        assertEquals(
                "Move[kind=tilt-out, tool=spudger, posture=on-edge, ms=1500, restoreMs=2500, handling=[], hazards=[]]",
                tin("kind: cover", full).move("lid").toString());
        assertEquals(
                "book-open", tin("kind: cover", "kind: cover, move: book-open").move("lid").kind());
        assertEquals("lift", tin().move("lid").kind());
    }

    @Test
    void timesHaveUnitsOrAreIndexStrings() {
        String way =
                "cell-plug: {ways: {w: {kind: pull-straight, time: %s, restoreTime: 0}}, kind: wire-plug,";
        for (String time : List.of("4.2 s", "4200 ms", "0.07 min")) {
            Device tin = tin("cell-plug: {kind: wire-plug,", String.format(way, time));
            assertEquals(4200, tin.joint("cell-plug").ways().get("w").ms(), time);
        }
        Device tin =
                tin(
                        "cell-plug: {kind: wire-plug,",
                        String.format(way, "A1 B0 G1 A1 B0 P3 F10 A1 B0 P1 A0"));
        assertEquals(6480, tin.joint("cell-plug").ways().get("w").ms());
    }

    @Test
    void slackIsThatOfTheKindUnlessTheFileSaysOtherwise() {
        assertTrue(tin().joint("cell-plug").slack());
        assertEquals(
                false,
                tin("cell-plug: {kind", "cell-plug: {slack: false, kind")
                        .joint("cell-plug")
                        .slack());
    }

    @Test
    void aVariantIsAMergePatch() {
        Path file = TinDevice.tin(folder, "id: tin", "id: tin");
        Reading reading = DeviceFiles.read(file, Optional.of("glued"), List.of());

        assertEquals(List.of("glued"), reading.variants());
        Device glued = reading.device().orElseThrow(() -> new AssertionError(reading.problems()));
        assertEquals(Optional.of("glued"), glued.variant());
        assertEquals(
                List.of("cell-plug", "cell-pad", "board-screw", "lid-bond"),
                List.copyOf(glued.joints().keySet()));
        assertEquals(33, glued.origin("/joints/lid-bond/kind").line());
        assertEquals(
                "tin.yaml: error: there is no variant \"glue\". Did you mean \"glued\"?",
                TinDevice.problems(DeviceFiles.read(file, Optional.of("glue"), List.of()), file));
    }

    @Test
    void aDeviceCarriesOnlyTheToolsSetUpsAndKindsThatItUses() {
        Device tin = tin();

        assertEquals(
                List.of("hand", "ph0", "tweezers", "spudger"), List.copyOf(tin.tools().keySet()));
        assertEquals(List.copyOf(tin.tools().keySet()), tin.setup().tools());
        assertEquals(List.of("face-up"), tin.setup().postures());
        assertEquals(
                Set.of("frame", "cover", "cell", "board"), tin.kinds(Kind.Scope.PART).keySet());
        assertTrue(tin.hazards().containsKey("lithium-cell"));
    }

    @Test
    void factsKnowWhereTheyStand() {
        Device tin = tin();
        String file = folder.resolve("tin.yaml").toString();

        assertEquals(file + ":13:3", tin.origin("/parts/cell").toString());
        assertEquals(file + ":13:34", tin.origin("/parts/cell/under").toString());
        assertEquals(file + ":23:7", tin.origin("/joints/lid-screw.b").toString());
        assertEquals(file + ":23:7", tin.origin("/joints/lid-screw.b/ways/usual/tool").toString());
    }

    @Test
    void theFamilyRanksBetweenBuiltInDataAndDevice() {
        Path file = TinDevice.tin(folder, "id: tin", "id: tin\nfamily: rugged");
        DeviceFamily rugged =
                family("rugged", "kinds: {parts: {cover: {title: hatch, time: 7 s}}, joints: {}}");

        Device tin =
                DeviceFiles.read(file, Optional.empty(), List.of(rugged)).device().orElseThrow();

        assertEquals("hatch", tin.kindOf(tin.part("lid")).title());
        assertEquals(Kind.Role.COVER, tin.kindOf(tin.part("lid")).role().orElseThrow());
        assertEquals(7000, tin.move("lid").ms());
        assertEquals(
                Duration.Basis.FAMILY, tin.kindOf(tin.part("lid")).time().orElseThrow().basis());
        assertEquals(
                "tin.yaml:3:9: error: family: there is no device family \"rugged\". Did you mean \"ruged\"?",
                TinDevice.problems(
                        DeviceFiles.read(
                                file, Optional.empty(), List.of(family("ruged", "tools: {}"))),
                        file));
    }

    @Test
    void errorsOfAFamilyAreNamedAfterIt() {
        Path file = TinDevice.tin(folder, "id: tin", "id: tin\nfamily: rugged");
        DeviceFamily rugged = family("rugged", "kinds: {parts: {cover: {tiem: 7 s}}}\nparts: {}");

        assertEquals(
                """
                family rugged:1:25: error: cover: unknown key "tiem". Did you mean "time"?
                family rugged:2:1: error: defaults: unknown key "parts". Known keys: tools, setup, kinds, hazards, \
                consumables, supplies, prepare.""",
                TinDevice.problems(
                        DeviceFiles.read(file, Optional.empty(), List.of(rugged)), file));
    }

    @Test
    void aCostTableLiesBelowWhatTheFileStates() throws Exception {
        Path file = Samples.folder().resolve("tansy").resolve("tansy.yaml");
        Device usual = DeviceFiles.read(file, Optional.empty(), List.of()).orThrow();

        Device slow =
                DeviceFiles.read(
                                file,
                                Optional.empty(),
                                List.of(),
                                Optional.of(
                                        costs(
                                                "setup: {postureChange: 99 s}\nkinds: {joints: {screw: {time: 77 s}}}")))
                        .orThrow();

        assertEquals(77_000, slow.joint("cover-screw.a").ways().get("usual").ms());
        assertEquals(
                usual.joint("cell-plug").ways().get("wires").ms(),
                slow.joint("cell-plug").ways().get("wires").ms());
        assertEquals(
                "cost table bench:1:1: error: cost table: unknown key \"parts\". Known keys: setup,"
                        + " tools, kinds.",
                TinDevice.problems(
                        DeviceFiles.read(
                                file, Optional.empty(), List.of(), Optional.of(costs("parts: {}"))),
                        file));
    }

    private static CostTable costs(String data) {
        return new CostTable() {
            @Override
            public String id() {
                return "bench";
            }

            @Override
            public String title() {
                return "times of the bench";
            }

            @Override
            public String source() {
                return "measured";
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(data.getBytes(StandardCharsets.UTF_8));
            }
        };
    }

    private static DeviceFamily family(String id, String data) {
        return new DeviceFamily() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public String title() {
                return id;
            }

            @Override
            public InputStream openDefaults() {
                return new ByteArrayInputStream(data.getBytes(StandardCharsets.UTF_8));
            }
        };
    }

    @Test
    void jsonIsReadLikeYaml() {
        Path yaml = TinDevice.tin(folder, "id: tin", "id: tin");
        Path json = TinDevice.file(folder, "tin.json", ResolvedJson.write(TinDevice.device(yaml)));

        assertEquals(TinDevice.device(yaml).joints(), TinDevice.device(json).joints());
    }

    @Test
    void orThrowTellsEveryProblem() {
        Reading reading = TinDevice.read(TinDevice.tin(folder, "base: tray", "bass: tray"));
        BadInputException thrown = assertThrows(BadInputException.class, reading::orThrow);
        assertEquals(reading.problems(), thrown.problems());
    }

    @Test
    void seatTablesLieBesideTheFile() {
        TinDevice.file(
                folder,
                "seats.csv",
                "\uFEFFjoint;seat;x;y;clamped;torque;behind\r\n"
                        + "lid-screw;c;5,5;35;1,6;0,2;\"cell 0,6; board 2 mm\"\r\n"
                        + "lid-screw;d;55;35;0.1 in;20 N·cm;\r\n");
        Device tin = tin("id: tin", "id: tin\nseatTable: seats.csv");

        Joint c = tin.joint("lid-screw.c");
        assertEquals(Optional.of(new Point(5.5, 35)), c.seat().orElseThrow().at());
        assertEquals(OptionalDouble.of(1.6), c.seat().orElseThrow().clampedMm());
        assertEquals(OptionalDouble.of(0.2), c.seat().orElseThrow().torqueNm());
        assertEquals(
                "[Behind[part=cell, gapMm=0.6], Behind[part=board, gapMm=2.0]]",
                c.seat().orElseThrow().behind().toString());
        assertEquals(
                OptionalDouble.of(2.54), tin.joint("lid-screw.d").seat().orElseThrow().clampedMm());
        assertEquals(
                folder.resolve("seats.csv") + ":3:19",
                tin.origin("/joints/lid-screw.d/seat/clamped").toString());
    }

    /** Found by changed inputs: it was written as -0.0 and came back as 0.0. */
    @Test
    void whatIsTooSmallToBeAnythingIsZeroWithoutASign() {
        TinDevice.file(
                folder, "seats.csv", "joint,seat,x,y\nlid-screw,c,-1e-400,35\nlid-screw,d,55,35\n");
        Device tin = tin("id: tin", "id: tin\nseatTable: seats.csv");

        assertEquals(
                Optional.of(new Point(0.0, 35)),
                tin.joint("lid-screw.c").seat().orElseThrow().at());
    }
}
