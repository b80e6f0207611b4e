package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.given.SameFacts;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Part;
import reseat.model.Way;

/**
 * A random device file, resolved and read back, is the same device: the same facts, stated and left
 * open alike, and the same answers to what must be cut and what strains what.
 */
class RoundTripTest {

    private static final int DEVICES = 300;

    @TempDir Path folder;

    @Test
    void theResolvedDeviceIsTheSameDevice() {
        int read = 0;
        int computed = 0;
        int waived = 0;
        int strained = 0;
        int given = 0;
        for (long seed = 1; seed <= DEVICES; seed++) {
            String yaml = yaml(new Random(seed));
            Reading reading = Bench.read(Bench.file(folder, "d.yaml", yaml));
            if (reading.device().isEmpty()) {
                continue; // the dice made one that never comes apart
            }
            Device device = reading.device().get();
            String written = ResolvedJson.write(device);
            Reading again = Bench.read(Bench.file(folder, "d.json", written));
            Device back = again.device().orElseThrow(() -> new AssertionError(again.problems()));

            SameFacts.assertSame(device, back);
            assertEquals(written, ResolvedJson.write(back), "seed " + seed);
            assertEquals(device.power().dropped(), back.power().dropped(), "seed " + seed);
            for (Joint joint : device.joints().values()) {
                assertEquals(device.power().why(joint), back.power().why(joint), "seed " + seed);
                assertEquals(device.power().waived(joint), back.power().waived(joint));
                for (Way way : joint.ways().values()) {
                    assertEquals(device.strainedBy(joint, way), back.strainedBy(joint, way));
                    strained += device.strainedBy(joint, way).isEmpty() ? 0 : 1;
                }
                computed += joint.needs().isEmpty() && !device.power().needs(joint).isEmpty() ? 1 : 0;
                waived += device.power().waived(joint).isEmpty() ? 0 : 1;
                given += joint.gives() ? 1 : 0;
            }
            for (Part part : device.parts().values()) {
                List<String> one = List.of(part.id());
                assertEquals(device.power().why(one), back.power().why(one), "seed " + seed);
            }
            read++;
        }
        assertTrue(read > DEVICES / 2, read + " of " + DEVICES + " devices could be read");
        assertTrue(
                computed > 50 && waived > 10 && strained > 50 && given > 50,
                computed + " computed, " + waived + " waived, " + strained + " strained, " + given);
    }

    /** A stack of parts in a tray, each held by two joints, with facts thrown by dice. */
    private static String yaml(Random dice) {
        int parts = 2 + dice.nextInt(5);
        List<String> lines = new ArrayList<>();
        lines.add("format: reseat-device/1\nid: d\nbase: tray");
        lines.add("supplies: {s: " + supply(dice, parts) + ", t: " + supply(dice, parts) + "}");
        lines.add("screwTypes: {m: {thread: M2x0.4, length: 4 mm, head: pan, drive: PH0}}");
        lines.add(
                "prepare: {off: {text: Off, time: 1 s"
                        + some(dice, ", neededBy: inside").orElse("")
                        + "}}");
        lines.add(some(dice, "setup: {layAside: 4 s}").orElse("setup: {turnOpen: 1 s}"));
        lines.add("parts:\n  tray: {kind: frame}");
        for (int p = 0; p < parts; p++) {
            lines.add(
                    "  p"
                            + p
                            + ": {kind: "
                            + any(dice, "cover", "door", "cell", "board", "part")
                            + (p > 0 ? ", under: [p" + dice.nextInt(p) + "]" : "")
                            + some(dice, ", move: {posture: face-down}").orElse("")
                            + needs(dice)
                            + "}");
        }
        lines.add("joints:");
        for (int p = 0; p < parts; p++) {
            String holds = "holds: [p" + p + ", tray]" + (p > 0 ? ", under: [p0]" : "");
            lines.add("  screw" + p + ": {kind: screw, screw: m, " + holds + needs(dice) + "}");
            String cuts = p == 0 ? ", cuts: [s]" : p == 1 ? ", cuts: [t]" : "";
            String kind = any(dice, "tab-row", "contact-block", "wire-plug", "pad-bond");
            lines.add(
                    "  other"
                            + p
                            + ": {kind: "
                            + kind
                            + ", "
                            + holds
                            + cuts
                            + (cuts.isEmpty() ? needs(dice) : "")
                            + strains(dice, p)
                            + "}");
        }
        return String.join("\n", lines) + "\n";
    }

    private static String supply(Random dice, int parts) {
        return "{"
                + some(dice, "of: p" + dice.nextInt(parts))
                        .map(of -> of + some(dice, ", first: true").orElse(""))
                        .orElse("")
                + "}";
    }

    private static String needs(Random dice) {
        return dice.nextInt(3) > 0 ? "" : ", needs: " + any(dice, "[]", "[s]", "[t]");
    }

    private static String strains(Random dice, int p) {
        return dice.nextInt(3) > 0
                ? ""
                : ", ways: {usual: {strainedBy: " + any(dice, "[]", "[screw" + p + "]") + "}}";
    }

    private static Optional<String> some(Random dice, String text) {
        return dice.nextBoolean() ? Optional.of(text) : Optional.empty();
    }

    private static String any(Random dice, String... words) {
        return words[dice.nextInt(words.length)];
    }
}
