package reseat.stock.sql;

import java.util.List;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** Contributes databases as a stock source. */
public final class SqlStockPlugin implements Plugin {

    /** Called by the service loader. */
    public SqlStockPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(SqlStockPlugin.class);
    }

    @Override
    public List<StockSource> stockSources() {
        return List.of(new SqlStockSource());
    }
}
