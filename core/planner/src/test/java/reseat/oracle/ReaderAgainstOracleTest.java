package reseat.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.files.ResolvedJson;
import reseat.given.SameFacts;
import reseat.model.Device;
import reseat.model.Goal;
import reseat.model.Rules;
import reseat.model.State;

/** A device that can be torn down fully is never refused, and is read back from JSON as it was. */
class ReaderAgainstOracleTest {

    private static final int DEVICES = 1_500;

    @TempDir Path folder;

    private int sound;
    private int refused;

    @Test
    void neverRefusesWhatCanBeTornDown() {
        for (long seed = Seeds.first(); seed < Seeds.first() + Seeds.devices(DEVICES); seed++) {
            Seeds.check(getClass(), seed, this::compare);
        }
        assertTrue(
                sound > refused,
                () ->
                        "of use only if devices are read: "
                                + sound
                                + " read, "
                                + refused
                                + " refused");
    }

    private void compare(long seed) {
        Device device = RandomDevices.of(seed).device();
        Case teardown = new Case(seed, device, State.closed(), new Goal.Teardown(), Rules.none());
        Reading reading = readBack(device);
        if (Oracle.solve(teardown).isPresent()) {
            Device again =
                    reading.device().orElseThrow(() -> new AssertionError(reading.problems()));
            SameFacts.assertSameActs(device, again);
            assertEquals(
                    ResolvedJson.write(again),
                    ResolvedJson.write(readBack(again).device().orElseThrow()));
            sound++;
        } else if (reading.device().isEmpty()) {
            refused++;
        }
    }

    private Reading readBack(Device device) {
        try {
            Path file =
                    Files.writeString(folder.resolve("device.json"), ResolvedJson.write(device));
            return DeviceFiles.read(file, Optional.empty(), List.of());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
