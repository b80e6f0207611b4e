package reseat.sheets;

import java.util.List;
import reseat.spi.Output;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/** Contributes outputs that write a plan. */
public final class SheetsPlugin implements Plugin {

    /** Called by the plugin loader. */
    public SheetsPlugin() {}

    @Override
    public PluginInfo info() {
        return PluginInfo.of(SheetsPlugin.class);
    }

    @Override
    public List<Output> outputs() {
        return List.of(new HtmlSheet(), new NeedsTable(), new SheetJsonOutput());
    }
}
