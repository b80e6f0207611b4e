package reseat.stock.csv;

import java.util.List;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.spi.ToolkitVersion;
import reseat.stock.StockSource;

/** Adds spreadsheets to the sorts of stock. */
public final class CsvStockPlugin implements Plugin {

    /** Made by the service loader. */
    public CsvStockPlugin() {}

    @Override
    public PluginInfo info() {
        return new PluginInfo("stock-csv", ToolkitVersion.current(), "Stock in a spreadsheet");
    }

    @Override
    public List<StockSource> stockSources() {
        return List.of(new CsvStockSource());
    }
}
