package reseat.fasteners;

import java.util.List;
import reseat.spi.Command;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes the fastener commands to Reseat. */
public final class FastenersPlugin implements Plugin {

    /** Called by the plugin loader. */
    public FastenersPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(FastenersPlugin.class);
    }

    @Override
    public List<Command> commands() {
        return List.of(new TraysCommand());
    }
}
