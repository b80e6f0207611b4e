package reseat.devicechecks;

import java.util.List;
import reseat.check.Check;
import reseat.devicechecks.check.DeviceChecks;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes the checks of devices to Reseat. */
public final class DeviceChecksPlugin implements Plugin {

    @Override
    public PluginInfo info() {
        return PluginInfo.of(DeviceChecksPlugin.class);
    }

    @Override
    public List<Check> checks() {
        return DeviceChecks.all();
    }
}
