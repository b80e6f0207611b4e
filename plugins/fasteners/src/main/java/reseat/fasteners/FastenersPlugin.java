package reseat.fasteners;

import java.util.List;
import reseat.check.Check;
import reseat.fasteners.check.FastenerChecks;
import reseat.spi.Command;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes the fastener commands to Reseat. */
public final class FastenersPlugin implements Plugin {

    @Override
    public PluginInfo info() {
        return PluginInfo.of(FastenersPlugin.class);
    }

    @Override
    public List<Check> checks() {
        return FastenerChecks.all();
    }

    @Override
    public List<Command> commands() {
        return List.of(new TraysCommand());
    }
}
