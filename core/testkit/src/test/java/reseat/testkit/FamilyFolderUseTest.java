package reseat.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.PluginFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.PlanRequest;
import reseat.planner.Planner;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugins;
import reseat.testkit.PluginContract.Breaches;

/** The family of the sample plugin, dropped in as a bare folder. */
class FamilyFolderUseTest {

    private static final Path SAMPLE = Path.of("../../samples/depth-sounders");
    private static final Path CURLEW = SAMPLE.resolve("src/test/devices/curlew.yaml");

    @TempDir Path plugins;
    private Path sounder;

    @BeforeEach
    void dropIn() throws IOException {
        sounder = Files.createDirectory(plugins.resolve("sounder"));
        Path data = SAMPLE.resolve("src/main/resources/META-INF/reseat-family");
        try (Stream<Path> files = Files.list(data)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, sounder.resolve(file.getFileName()));
            }
        }
    }

    private List<DeviceFamily> families() {
        Plugins loaded = PluginFiles.load(List.of(plugins));
        assertEquals(List.of(), loaded.refused());
        return loaded.families();
    }

    @Test
    void aDeviceFileUsesIt() throws Exception {
        Device curlew = DeviceFiles.read(CURLEW, Optional.empty(), families()).orThrow();

        assertEquals(
                List.of("head-ring", "cell-plug"),
                new Planner()
                        .plan(PlanRequest.of(curlew, new Goal.Free(List.of("cell"))))
                        .best()
                        .orElseThrow()
                        .releasedJoints());
    }

    @Test
    void keepsTheContractOfFamilies() {
        List<DeviceFamily> families = families();
        DeviceFamily family = families.get(families.size() - 1);
        Breaches breaches = new Breaches();

        List<Device> made = new FamilyContract(family, families, breaches).verify();

        breaches.end("the folder");
        assertEquals("sounder", family.id());
        assertEquals(1, made.size());
    }

    @Test
    void aFaultInItsDataHasAPlace() throws IOException {
        Files.writeString(sounder.resolve("defaults.yaml"), "tools:\n  strap: {nam: Strap}\n");

        Reading reading = DeviceFiles.read(CURLEW, Optional.empty(), families());

        assertTrue(
                reading.problems().stream()
                        .anyMatch(each -> each.toString().startsWith("family sounder:2:11: error")),
                reading.problems().toString());
    }
}
