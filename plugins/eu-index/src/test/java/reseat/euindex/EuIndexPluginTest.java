package reseat.euindex;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class EuIndexPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new EuIndexPlugin());
    }
}
