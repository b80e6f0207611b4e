package reseat.stock.sql;

import org.junit.jupiter.api.Test;
import reseat.testkit.PluginContract;

class SqlStockPluginTest {

    @Test
    void keepsTheContract() {
        PluginContract.verify(new SqlStockPlugin());
    }
}
