package reseat.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths and torques that no portable device has are told when the file is read. */
class PlausibleTest {

    @TempDir Path folder;

    private String problems(String found, String put) {
        return TinDevice.problems(TinDevice.tin(folder, found, put));
    }

    @Test
    void aScrewOfEightMetresIsRefused() {
        assertEquals(
                "tin.yaml:9:26: error: screw type m2x4: a length of 8 m cannot be in a portable device; check the unit",
                problems("length: 4 mm", "length: 8 m"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length: 4 mm | length: 65 mm | a length of 65 mm is odd in a portable device; check the unit",
                "length: 4 mm | length: 4 µm | a length of 0.004 mm is hardly a screw; check the unit",
                "head: pan | head: pan, headDiameter: 30 mm | a head of 30 mm is odd in a portable device; check the unit",
                "head: pan | head: pan, headDiameter: 4 m | a head of 4 m cannot be in a portable device; check the unit",
                "length: 4 mm | length: 4 mm, threadLength: 5 mm | its thread of 5 mm is longer than the screw, 4 mm",
                "clamped: 1.2 mm | clamped: 1.2 m | a clamped thickness of 1.2 m cannot be in a portable device; check the unit",
                "torque: 0.18 N·m | torque: 40 N·m | a torque of 40 N·m cannot be in a portable device; check the unit",
                "torque: 0.18 N·m | torque: 18 N·m | a torque of 18 N·m is odd in a portable device; check the unit",
                "torque: 0.18 N·m | torque: 0 N·m | a torque of 0 N·m tightens nothing; check the unit"
            })
    void whatIsImplausibleIsTold(String found, String put, String message) {
        String problems = problems(found, put);
        assertEquals(1, problems.lines().count(), problems);
        assertEquals(message, problems.replaceFirst("^.*?(?:m2x4|lid-screw\\.\\w): ", ""));
    }

    @Test
    void aScrewLongerThanTheDeviceIsRefused() {
        assertEquals(
                "tin.yaml:9:26: error: screw type m2x4: a length of 80 mm is more than the device measures",
                problems("length: 4 mm", "length: 80 mm").lines().reduce((a, b) -> a).orElse(""));
    }

    @Test
    void whatIsPlausibleIsNotTold() {
        assertEquals("", problems("length: 4 mm", "length: 20 mm, headDiameter: 8 mm"));
        assertEquals("", problems("torque: 0.18 N·m", "torque: 3 N·m"));
    }
}
