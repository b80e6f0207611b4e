package reseat.euindex;

import java.util.List;
import reseat.spi.Assessment;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes the index to Reseat. */
public final class EuIndexPlugin implements Plugin {

    @Override
    public PluginInfo info() {
        return PluginInfo.of(EuIndexPlugin.class);
    }

    @Override
    public List<Assessment> assessments() {
        return List.of(new EuIndex());
    }
}
