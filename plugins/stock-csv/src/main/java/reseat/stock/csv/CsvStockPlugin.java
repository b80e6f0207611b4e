package reseat.stock.csv;

import java.util.List;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** Contributes spreadsheets as a stock source. */
public final class CsvStockPlugin implements Plugin {

    /** Called by the service loader. */
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
