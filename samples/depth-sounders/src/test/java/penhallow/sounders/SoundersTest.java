package penhallow.sounders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.files.DeviceFiles;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.plan.Plan;
import reseat.plan.PlanRequest;
import reseat.plan.PlanResult;
import reseat.planner.Planner;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.testkit.CommandTrial;
import reseat.testkit.PluginContract;

class SoundersTest {

    private static final Path DEVICES = Path.of("src/test/devices");
    private static final Path CURLEW = DEVICES.resolve("curlew.yaml");

    @TempDir Path folder;

    @Test
    void keepsTheContract() {
        PluginContract.verify(new SoundersPlugin(), List.of(CURLEW));
    }

    @Test
    void theRingComesOffWithTheStrap() throws Exception {
        PlanResult result =
                new Planner()
                        .plan(PlanRequest.of(read(CURLEW), new Goal.Free(List.of("cell"))));

        Plan plan = ((PlanResult.Found) result).plan();
        assertEquals(List.of("head-ring", "cell-plug"), plan.releasedJoints());
    }

    @Test
    void anOldRingIsFound() throws Exception {
        Path careless =
                Files.writeString(
                        folder.resolve("careless.yaml"),
                        Files.readString(CURLEW)
                                .replace("holds: [head, tube]", "holds: [head, tube], ways: {u: {consumes: []}}"));

        List<Finding> found = new RingCheck().on(CheckInput.of(read(careless)));

        assertEquals(1, found.size());
        assertEquals("/joints/head-ring", found.get(0).subject());
        assertEquals(List.of(), new RingCheck().on(CheckInput.of(read(CURLEW))));
    }

    @Test
    void theCommandNamesTheRings() {
        CommandTrial.Ran ran =
                CommandTrial.of(new SoundersPlugin())
                        .run("rings", CURLEW.toString(), "--free", "cell");

        assertEquals("o-ring-40  for head-ring\n", ran.out(), ran.err());
        assertEquals(0, ran.code());
    }

    @Test
    void theShelfTellsAndReservesNothing() throws Exception {
        try (Stock stock = new ShelfList().open(Map.of("file", "shelf.txt"), DEVICES)) {
            assertEquals("O-ring 40 x 2 mm", stock.items().get(0).name());
            assertEquals("12", stock.items().get(0).available().toString());
            assertThrows(StockException.class, () -> stock.release("any"));
        }
    }

    private static Device read(Path file) throws Exception {
        return DeviceFiles.read(file, Optional.empty(), new SoundersPlugin().families()).orThrow();
    }
}
