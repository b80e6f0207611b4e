package reseat.stock.desk;

import java.util.List;
import reseat.spi.Command;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes the stock commands to Reseat. */
public final class StockDeskPlugin implements Plugin {

    @Override
    public PluginInfo info() {
        return PluginInfo.of(StockDeskPlugin.class);
    }

    @Override
    public List<Command> commands() {
        return List.of(new StockCommand(), new TodayCommand());
    }
}
