package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Origin;
import reseat.spi.DeviceFamily;

/** Defaults are made once and looked at anew only where a device touched them. */
final class LayersTest {

    @TempDir Path folder;

    private final List<String> data = Collections.synchronizedList(new ArrayList<>());

    private final DeviceFamily family =
            new DeviceFamily() {
                @Override
                public String id() {
                    return "layers-test";
                }

                @Override
                public String title() {
                    return "test";
                }

                @Override
                public InputStream openDefaults() {
                    return new ByteArrayInputStream(
                            data.get(data.size() - 1).getBytes(StandardCharsets.UTF_8));
                }
            };

    private Defaults defaults(Problems problems) {
        Node.Fields stated =
                new Node.Fields(
                        Origin.MEMORY,
                        Map.of(
                                "family",
                                new Node.Entry(
                                        Origin.MEMORY,
                                        Node.Scalar.text(Origin.MEMORY, "layers-test"))));
        return new Layers(List.of(family), Origin.MEMORY, problems).defaults(stated);
    }

    @Test
    void aFamilyIsReadAgainWhenItsDataChanged() {
        data.add("kinds: {joints: {latch: {time: 2 s}}}");
        Defaults first = defaults(new Problems("x"));
        assertSame(first, defaults(new Problems("x")));
        data.add("kinds: {joints: {latch: {time: 3 s}}}");
        Defaults second = defaults(new Problems("x"));
        assertNotSame(first, second);
        assertTrue(second.sound(second.tree().fields("kinds").fields("joints").fields("latch")));
    }

    @Test
    void aFaultyFamilyIsReportedEachTime() {
        data.add("kinds: {}\nkindz: {}");
        for (int time = 0; time < 2; time++) {
            Problems problems = new Problems("x");
            assertFalse(defaults(problems).sound(BuiltIn.tree()));
            assertEquals(1, problems.count());
        }
        data.add("kinds: {joints: {latch: {time: two seconds}}}");
        for (int time = 0; time < 2; time++) {
            assertEquals(
                    Defaults.unchecked(defaults(new Problems("x")).tree()).checked(),
                    defaults(new Problems("x")).checked());
        }
    }

    /** The built-in kinds name tools; where a device takes such a tool away, they are wrong. */
    @Test
    void whatADeviceTakesAwayIsMissedWhereItIsNamed() throws Exception {
        Path file =
                Files.writeString(
                        folder.resolve("d.yaml"),
                        "format: reseat-device/1\nid: d\nbase: b\ntools: {spudger: null}\nparts: {b: {}}\n");
        Reading reading = DeviceFiles.read(file, Optional.empty(), List.of());
        assertTrue(
                reading.problems().stream()
                        .anyMatch(
                                p ->
                                        p.at().file().equals("built-in")
                                                && p.message().contains("spudger")),
                reading.problems().toString());
    }

    /** Reading keeps nothing that two threads could disturb each other at. */
    @Test
    void manyThreadsReadTheSame() throws Exception {
        data.add("kinds: {joints: {latch: {time: 2 s}}}");
        List<Path> files = new ArrayList<>();
        for (String sample : List.of("quill", "sorrel", "bramble", "tansy")) {
            files.add(Path.of("../../samples", sample, sample + ".yaml"));
        }
        files.add(
                Files.writeString(
                        folder.resolve("f.yaml"),
                        "format: reseat-device/1\nid: f\nfamily: layers-test\nbase: b\nparts: {b: {}, p: {}}\n"
                                + "joints: {j: {kind: latch, holds: [p, b]}, k: {kind: clip, holds: [p, c]}}\n"));
        List<String> alone = new ArrayList<>();
        for (Path file : files) {
            alone.add(told(file));
        }
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<String>> tasks = new ArrayList<>();
            for (int i = 0; i < 10 * files.size(); i++) {
                Path file = files.get(i % files.size());
                tasks.add(() -> told(file));
            }
            int i = 0;
            for (Future<String> told : threads.invokeAll(tasks)) {
                assertEquals(alone.get(i++ % files.size()), told.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private String told(Path file) {
        Reading reading = DeviceFiles.read(file, Optional.empty(), List.of(family));
        return reading.problems()
                + reading.device()
                        .map(device -> reseat.files.ResolvedJson.write(device) + device.origins())
                        .orElse("");
    }
}
