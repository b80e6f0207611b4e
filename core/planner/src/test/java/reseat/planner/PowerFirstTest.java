package reseat.planner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;

/** Power comes off before work inside; outside it does not, and what is hanging is not turned. */
class PowerFirstTest {

    private static final Path FILE = Path.of("src/test/resources/reseat/planner/powered.yaml");

    @TempDir private Path folder;

    private static Plan free(Path file, String... parts) throws Exception {
        Device device = DeviceFiles.read(file, Optional.empty(), List.of()).orThrow();
        Plan plan = Given.plan(device, new Goal.Free(List.of(parts)));
        assertTrue(plan.proved());
        return plan;
    }

    private static List<String> acts(Plan plan) {
        return plan.acts().stream().map(act -> act.act().id().replace("/usual", "")).toList();
    }

    @Test
    void insideThePowerIsCutFirstThoughNothingStatesIt() throws Exception {
        List<String> acts = acts(free(FILE, "fan"));
        assertTrue(acts.indexOf("move:shell") < acts.indexOf("release:cell-plug"), acts::toString);
        assertTrue(acts.contains("release:cell-plug"), acts::toString);
        assertTrue(
                acts.indexOf("release:cell-plug") < acts.indexOf("release:fan-screw.a"),
                acts::toString);
    }

    /** What only work inside needs is left out, and so is the cut. */
    @Test
    void outsideNothingIsCutAndNothingDischarged() throws Exception {
        assertEquals(List.of("release:grip-screw.a", "move:grip"), acts(free(FILE, "grip")));
    }

    /** The search outside knows of the grip alone, so both together begin with the discharge. */
    @Test
    void oneActInsideIsEnoughToNeedWhatWorkInsideNeeds() throws Exception {
        List<String> acts = acts(free(FILE, "grip", "fan"));
        assertEquals("prepare:discharge", acts.get(0));
        assertTrue(acts.contains("move:grip"));
    }

    /** Turning with the shell on its flex costs 60 s more, so the flex is unplugged before. */
    @Test
    void whereTurningWhilePartsHangIsDearTheyAreUnpluggedBefore() throws Exception {
        List<String> dear = acts(free(FILE, "fan"));
        assertTrue(
                dear.contains("release:shell-flex")
                        && dear.indexOf("release:shell-flex") < dear.indexOf("release:fan-screw.a"),
                dear::toString);

        Path cheap = folder.resolve("cheap.yaml");
        Files.writeString(cheap, Files.readString(FILE).replace("turnOpen: 60 s", "turnOpen: 0 s"));
        List<String> left = acts(free(cheap, "fan"));
        assertTrue(left.contains("move:shell"));
        assertTrue(!left.contains("release:shell-flex"), left::toString);
    }
}
