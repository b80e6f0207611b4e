package reseat.handheld;

import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Sealed handhelds: devices for one hand, tight against dust and water. */
public final class HandheldPlugin implements Plugin {

    /** Made by the loader. */
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
