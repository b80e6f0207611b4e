package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.check.CheckInput;
import reseat.fasten.FastenerTables;
import reseat.model.Device;

class DeviceSourceTest {

    @TempDir private Path folder;

    @Test
    void readsTheBaseDeviceAndAllVariants() {
        CheckSource.Content content = source("id: tin", "id: tin").read();

        assertEquals(List.of("tin", "tin (glued)"), devices(content));
        assertEquals(
                List.of("tin", "tin (glued)"),
                content.inputs().get(1).variants().stream().map(Device::toString).toList());
        assertEquals(List.of(), content.problems());
    }

    @Test
    void readsOneVariantAndKnowsTheOthers() {
        CheckSource.Content glued = source("id: tin", "id: tin").only(Optional.of("glued")).read();
        assertEquals(List.of("tin (glued)"), devices(glued));
        assertEquals(2, glued.inputs().get(0).variants().size());
        assertEquals(
                List.of("tin"),
                devices(source("id: tin", "id: tin").only(Optional.empty()).read()));
    }

    @Test
    void aVariantThatIsNotThereIsAnErrorUnlessItMayBeMissing() {
        DeviceSource tin = source("id: tin", "id: tin");
        CheckSource.Content missing = tin.only(Optional.of("lte")).read();

        assertEquals(List.of(), missing.inputs());
        assertTrue(missing.problems().get(0).message().contains("there is no variant \"lte\""));
        assertEquals(new CheckSource.Content(List.of(), List.of()), tin.onlyIfThere("lte").read());
        assertEquals(List.of("tin (glued)"), devices(tin.onlyIfThere("glued").read()));
    }

    @Test
    void anErrorInOneVariantLeavesTheOthers() {
        CheckSource.Content content =
                source("tests: {charge: {of: [cell]}}", "tests: {charge: {of: [sell]}}").read();

        assertEquals(List.of("tin"), devices(content));
        assertEquals(1, content.problems().size());
        assertTrue(content.problems().get(0).isError());
    }

    @Test
    void errorsOfTheBaseAreToldOnce() {
        CheckSource.Content content = source("id: tin", "id: tin\nbass: tray").read();

        assertEquals(List.of(), content.inputs());
        assertEquals(1, content.problems().size(), content.problems().toString());
    }

    @Test
    void errorsOfABrokenFileAreToldWhereAVariantMayBeMissing() {
        assertTrue(
                source("format: reseat-device/1", "format: [")
                        .onlyIfThere("lte")
                        .read()
                        .problems()
                        .get(0)
                        .isError());
    }

    @Test
    void inputsGetWhatIsAdded() {
        FastenerTables tables = FastenerTables.standard();
        CheckSource.Content content =
                source("id: tin", "id: tin")
                        .withTables(device -> tables)
                        .with((CheckInput input) -> input.withDrives(List.of("T5")))
                        .with((CheckInput input) -> input.set("a", "b", "c"))
                        .read();

        CheckInput input = content.inputs().get(0);
        assertEquals(Optional.of(List.of("T5")), input.drives());
        assertEquals("c", input.settings().get("a.b"));
        assertEquals(tables, input.tables());
    }

    private DeviceSource source(String found, String put) {
        return DeviceSource.of(Bench.tin(folder, found, put), List.of());
    }

    private static List<String> devices(CheckSource.Content content) {
        return content.inputs().stream().map(input -> input.device().toString()).toList();
    }
}
