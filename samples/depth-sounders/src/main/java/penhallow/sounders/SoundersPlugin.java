package penhallow.sounders;

import java.util.List;
import reseat.check.Check;
import reseat.spi.Command;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;
import reseat.stock.StockSource;

/** Contributes depth sounders to Reseat. */
public final class SoundersPlugin implements Plugin {

    @Override
    public PluginInfo info() {
        return PluginInfo.of(SoundersPlugin.class);
    }

    @Override
    public List<DeviceFamily> families() {
        return List.of(new SounderFamily());
    }

    @Override
    public List<Check> checks() {
        return List.of(new RingCheck());
    }

    @Override
    public List<StockSource> stockSources() {
        return List.of(new ShelfList());
    }

    @Override
    public List<Command> commands() {
        return List.of(new RingsCommand());
    }
}
