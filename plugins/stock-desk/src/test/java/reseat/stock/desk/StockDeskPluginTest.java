package reseat.stock.desk;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class StockDeskPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new StockDeskPlugin());
    }
}
