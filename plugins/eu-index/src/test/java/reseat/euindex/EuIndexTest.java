package reseat.euindex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.planner.Planner;
import reseat.spi.Assessment;

/** An invented slate of four parts, counted by hand. */
class EuIndexTest {

    private static final String SLATE =
            """
            format: reseat-device/1
            id: slate
            name: Slate
            maker: Nobody
            base: tray
            parts:
              tray: {name: Tray, kind: frame}
              display: {name: Display, kind: display}
              clamp: {name: Clamp, kind: bracket, under: [display]}
              cell: {name: Cell, kind: module, under: [display, clamp]}
            screwTypes:
              short: {thread: M1.4x0.3, length: 2.5 mm, head: pan, drive: PH00}
            joints:
              rim: {kind: adhesive-bond, holds: [display, tray], ways: {cut: {kind: cut-to-depth, time: 60 s, restoreTime: 60 s, consumes: [{of: edge-adhesive, quantity: 100, unit: mm}]}}}
              clamp-screw: {kind: screw-short, holds: [clamp, tray], under: [display], screw: short, seats: {a: {x: 1, y: 1}, b: {x: 9, y: 1}}, seat: {form: nut, material: steel, clamped: 0.3, threaded: 1.4, torque: 0.03 N·m, torqueSource: none}}
              cell-strip: {kind: stretch-tape, holds: [cell, tray], under: [display, clamp]}
            """;

    private final Map<String, String> stated = new LinkedHashMap<>();
    private Device device;

    @TempDir Path folder;

    private void read(String slate) throws IOException {
        Path file = Files.writeString(folder.resolve("slate.yaml"), slate);
        Reading reading = DeviceFiles.read(file, Optional.empty(), List.of());
        device = reading.device().orElseThrow(() -> new AssertionError(reading.problems()));
    }

    @BeforeEach
    void state() throws IOException {
        read(SLATE);
        for (PriorityPart part : PriorityPart.values()) {
            stated.put("part." + part.id(), "none");
        }
        stated.put("part.battery", "cell");
        stated.put("part.display", "display");
        stated.put("warmed", "rim");
        stated.put("end-users-can-buy", "display, battery");
        stated.put("updates-years", "7");
        stated.put("information", "public");
    }

    private Map<String, String> values() {
        Map<String, String> values = new LinkedHashMap<>();
        Assessment.Result result = new EuIndex().assess(device, stated, new Planner());
        result.criteria().forEach(each -> values.put(each.id(), each.value()));
        return values;
    }

    private List<String> remarks() {
        return new EuIndex().assess(device, stated, new Planner()).remarks();
    }

    private String refusal() {
        return assertThrows(IllegalArgumentException.class, this::values).getMessage();
    }

    @Test
    void countsEachWayFromTheClosedDevice() {
        Map<String, String> values = values();

        // warm; cut and lift the display
        assertEquals("2 steps, 5 points", values.get("display-depth"));
        // the same; two screws and the clamp; the strip by tweezers or hand, and the cell
        assertEquals("4 steps, 4 points", values.get("battery-depth"));
    }

    @Test
    void judgesFastenersAndToolsSinceThePriorityPartBefore() {
        Map<String, String> values = values();

        assertEquals(
                "1 point", values.get("display-fasteners"), "the adhesive does not come along");
        assertEquals("1 point", values.get("display-tools"), "a heat mat is no basic tool");
        assertEquals("4 points", values.get("battery-tools"), "the heat mat was for the display");
    }

    @Test
    void believesWhatIsStated() {
        stated.put("supplied.display", "yes");
        stated.put("serial.display", "2");
        stated.put("tool.heat-mat", "with-product");

        Map<String, String> values = values();

        assertEquals("12 steps, 2 points", values.get("display-depth"));
        assertEquals("3 points", values.get("display-fasteners"));
        assertEquals("2 points", values.get("display-tools"));
    }

    @Test
    void countsTheWorstOfSeveral() {
        stated.put("part.speaker", "display, cell");

        // 5 x 0.30 (display) + 4 x 0.30 (battery) + min(5, 4) x 0.05 + 5 x 0.35 for the absent
        assertEquals("4.65 of 5", values().get("depth"));
    }

    @Test
    void takesTheBaseForTheBackCoverWhenAllThatIsJoinedToItIsOff() {
        stated.put("part.back-cover", "tray");

        // warm; display; screws and clamp; strip and cell: nothing is left on the tray
        assertEquals("4 steps, 4 points", values().get("back-cover-depth"));
    }

    @Test
    void warmsWhereTheWayHeats() throws IOException {
        read(
                SLATE.replace("kind: cut-to-depth", "kind: warm-cut")
                        + "kinds: {manipulations: {warm-cut: {title: cutting warm, verb: Cut, restoreVerb: Press,"
                        + " heat: {source: heat-mat, celsius: 80, time: 2 min}}}}\n");
        stated.remove("warmed");

        assertEquals("2 steps, 5 points", values().get("display-depth"));
        assertEquals("1 point", values().get("display-tools"));
        assertTrue(
                remarks()
                        .contains(
                                "Warming is a step for rim, because the way puts heat to the device."));
    }

    @Test
    void countsPasteAndGreaseForNoFastener() throws IOException {
        read(
                SLATE.replace(
                        "cell-strip: {kind: stretch-tape,", "cell-strip: {kind: thermal-paste,"));

        assertEquals("5 points", values().get("battery-fasteners"), "the screws of the clamp");
    }

    @Test
    void believesWhichInstancesBringTheirFasteners() {
        stated.put("part.speaker", "display, cell");
        stated.put("supplied.speaker", "display");

        assertEquals("1 point", values().get("speaker-fasteners"), "that of the cell");
        stated.put("supplied.speaker", "clamp");
        assertEquals(
                "supplied.speaker: found \"clamp\", expected yes, no, or some of the ids in"
                        + " part.speaker",
                refusal());
    }

    @Test
    void saysWhatIsAbsentAndWhatItAssumes() {
        assertTrue(values().get("absent").startsWith("back-cover, front-camera"));
        assertTrue(
                remarks().contains("Assumed: Nothing new to fasten comes with: battery, display."));
        stated.put("supplied.battery", "yes");
        stated.put("supplied.display", "no");
        assertTrue(remarks().stream().noneMatch(each -> each.contains("Nothing new")));
    }

    @Test
    void saysEveryMissingStatementAtOnce() {
        stated.remove("updates-years");
        stated.remove("part.display");

        String told = refusal();

        assertTrue(told.contains("updates-years is missing"), told);
        assertTrue(told.contains("part.display is missing"), told);
    }

    @Test
    void refusesWhatTheMethodHasNoPointsFor() {
        stated.put("updates-years", "4");
        assertTrue(refusal().startsWith("updates-years: below 5 years"));

        stated.put("updates-years", "6");
        stated.put("end-users-can-buy", "battery");
        assertTrue(refusal().startsWith("end-users-can-buy: where end users cannot buy"));

        stated.put("end-users-can-buy", "all");
        stated.put("tool.heat-mat", "proprietary");
        assertTrue(refusal().startsWith("tool.heat-mat: a proprietary tool"));
    }

    @Test
    void namesWhatIsNoPart() {
        stated.put("part.battery", "cel");

        assertEquals("part.battery: found \"cel\", expected the id of a part, or none", refusal());
    }
}
