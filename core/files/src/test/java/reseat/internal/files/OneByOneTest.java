package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import reseat.model.Device;
import reseat.oracle.SmallDevices;

/** What {@link OneByOne} takes apart, {@link Reachability} finds nothing wrong with. */
final class OneByOneTest {

    @Test
    void saysNothingThatReachabilityWouldNotSay() {
        int apart = 0;
        int devices = 2000;
        for (long seed = 1; seed <= devices; seed++) {
            Device device = SmallDevices.of(seed);
            Numbered all =
                    new Numbered(device);
            if (OneByOne.works(all)) {
                Reachability reach = new Reachability(all);
                assertTrue(reach.everythingComesApart(), "seed " + seed);
                apart++;
            }
        }
        assertTrue(
                apart > devices / 10 && apart < devices,
                apart + " of " + devices + " devices came apart one by one");
    }
}
