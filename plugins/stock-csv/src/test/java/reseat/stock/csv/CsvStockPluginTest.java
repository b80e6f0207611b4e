package reseat.stock.csv;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class CsvStockPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new CsvStockPlugin());
    }
}
