package reseat.fasteners.check;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;
import reseat.check.CheckInput;
import reseat.fasten.FastenerTables;
import reseat.given.TestDevice;
import reseat.model.BadInputException;
import reseat.model.Device;

/** What checks compute of an input alike. */
class ComputedTest {

    private final Device device =
            new TestDevice()
                    .type("m2x4", "M2", 4)
                    .screw("right", TestDevice.seat("m2x4").lengths(0, 4).behind("cell", 3))
                    .build();

    @Test
    void isSharedByAllChecksOfAnInput() {
        CheckInput input = CheckInput.of(device);

        Computed computed = Computed.of(input);

        for (var check : ReachCheck.all()) {
            assertSame(computed, Computed.of(input.forCheck(check.info())));
        }
    }

    @Test
    void isKeptWhileAnotherRunLooksAtTheSameDeviceWithOtherTables() throws BadInputException {
        FastenerTables standard = FastenerTables.standard();
        CheckInput ours = CheckInput.of(device, standard);
        CheckInput theirs =
                CheckInput.of(
                        device,
                        standard.withRows("materials.csv", "material,group,rm,shear,source,tag\n"));

        Computed before = Computed.of(ours);
        Computed other = Computed.of(theirs);

        assertNotSame(before, other);
        assertSame(before, Computed.of(ours));
        assertSame(other, Computed.of(theirs));
        assertSame(
                before.seat(device.joint("right")).orElseThrow(),
                Computed.of(ours).seat(device.joint("right")).orElseThrow());
    }
}
