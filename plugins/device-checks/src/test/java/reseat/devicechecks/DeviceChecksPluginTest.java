package reseat.devicechecks;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class DeviceChecksPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new DeviceChecksPlugin());
    }
}
