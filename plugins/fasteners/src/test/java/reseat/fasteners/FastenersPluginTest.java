package reseat.fasteners;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class FastenersPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new FastenersPlugin());
    }
}
