package reseat.slate;

import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Slates: flat devices with a display on the whole front. */
public final class SlatePlugin implements Plugin {

    /** Called by the plugin loader. */
    public SlatePlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(SlatePlugin.class);
    }

    @Override
    public List<DeviceFamily> families() {
        return List.of(new SlateFamily());
    }
}
