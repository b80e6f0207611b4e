package reseat.stock.csv;

import java.util.List;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** Adds spreadsheets to the sorts of stock. */
public final class CsvStockPlugin implements Plugin {

    /** Made by the service loader. */
    public CsvStockPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(CsvStockPlugin.class);
    }

    @Override
    public List<StockSource> stockSources() {
        return List.of(new CsvStockSource());
    }
}
