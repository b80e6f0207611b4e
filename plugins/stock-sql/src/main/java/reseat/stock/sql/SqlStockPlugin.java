package reseat.stock.sql;

import java.util.List;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** Adds databases to the sorts of stock. */
public final class SqlStockPlugin implements Plugin {

    /** Made by the service loader. */
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
