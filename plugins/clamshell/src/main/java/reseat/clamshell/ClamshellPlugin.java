package reseat.clamshell;

import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Clamshells: devices with a lid on hinges, display inside. */
public final class ClamshellPlugin implements Plugin {

    /** Called by the plugin loader. */
    public ClamshellPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(ClamshellPlugin.class);
    }

    @Override
    public List<DeviceFamily> families() {
        return List.of(new ClamshellFamily());
    }
}
