package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;

class BuiltInTest {

    @TempDir Path folder;

    @Test
    void isSoundByTheFormatOfADeviceFile() {
        Problems problems = new Problems("built-in");
        new ShapeCheck(new KnownIds(BuiltIn.tree(), false), false, problems)
                .check("defaults", BuiltIn.tree(), Format.DEFAULTS);
        assertEquals(List.of(), problems.sorted());
    }

    /** A part of each kind, held by a joint of each kind, needs no word more in its file. */
    @Test
    void everyKindDoesWithoutFurtherFacts() throws Exception {
        Node.Fields kinds = BuiltIn.tree().fields("kinds");
        StringBuilder text =
                new StringBuilder(
                        "format: reseat-device/1\nid: all\nbase: b\n"
                                + "screwTypes: {s: {thread: M2x0.4, length: 4 mm, head: pan, drive: T5}}\nparts:\n  b: {}\n");
        StringBuilder joints = new StringBuilder("joints:\n");
        for (String kind : kinds.fields("parts").entries().keySet()) {
            text.append("  p-").append(kind).append(": {kind: ").append(kind).append("}\n");
            joints.append("  h-")
                    .append(kind)
                    .append(": {kind: clip, holds: [p-")
                    .append(kind)
                    .append(", b]}\n");
        }
        for (String kind : kinds.fields("joints").entries().keySet()) {
            boolean screw = "screw".equals(kinds.fields("joints").fields(kind).text("role"));
            joints.append("  j-")
                    .append(kind)
                    .append(": {kind: ")
                    .append(kind)
                    .append(", holds: [p-part, b]");
            joints.append(screw ? ", screw: s}\n" : "}\n");
        }
        for (String kind : kinds.fields("manipulations").entries().keySet()) {
            joints.append("  m-")
                    .append(kind)
                    .append(": {kind: clip, holds: [p-part, b], ways: {w: ");
            joints.append(kind).append("}}\n");
        }
        Path file = Files.writeString(folder.resolve("all.yaml"), text.append(joints).toString());
        assertEquals(List.of(), DeviceFiles.read(file, Optional.empty(), List.of()).problems());
    }

    /** Nobody can use a word that stands nowhere. */
    @Test
    void everyIdStandsInTheReference() throws Exception {
        String page = Files.readString(Path.of("../docs/device-file.md"));
        String builtIn = page.substring(page.indexOf("## Built in"));
        Node.Fields tree = BuiltIn.tree();
        List<String> missing = new ArrayList<>();
        for (Node.Fields some :
                List.of(
                        tree.fields("tools"),
                        tree.fields("hazards"),
                        tree.fields("consumables"),
                        tree.fields("kinds").fields("parts"),
                        tree.fields("kinds").fields("joints"),
                        tree.fields("kinds").fields("manipulations"))) {
            some.entries().keySet().stream()
                    .filter(id -> !builtIn.contains("`" + id + "`"))
                    .forEach(missing::add);
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void knowsTheHandAndTheUsualPosture() {
        KnownIds known = new KnownIds(BuiltIn.tree(), false);
        assertTrue(known.allows(Shape.Scope.TOOL, "hand"));
        assertTrue(known.allows(Shape.Scope.POSTURE, "face-up"));
    }
}
