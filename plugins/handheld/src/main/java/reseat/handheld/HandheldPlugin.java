package reseat.handheld;

import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Sealed handhelds: devices for one hand, sealed against dust and water. */
public final class HandheldPlugin implements Plugin {

    /** Called by the plugin loader. */
    public HandheldPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(HandheldPlugin.class);
    }

    @Override
    public List<DeviceFamily> families() {
        return List.of(new HandheldFamily());
    }
}
