package reseat.files;

import java.util.List;
import reseat.internal.loader.FamilyReader;
import reseat.spi.DeviceFamily;
import reseat.spi.Plugin;
import reseat.spi.PluginInfo;

/**
 * A plugin whose family of devices is data in its jar, in the folder {@link #FOLDER}. That is all
 * there is to write:
 *
 * <pre>{@code
 * public final class SlatePlugin extends FamilyPlugin {}
 * }</pre>
 *
 * <p>The folder holds {@code family.ini}, {@code defaults.yaml} and the files that the former
 * names; {@code core/docs/first-plugin.md} says what stands in them. A plugin that has checks or a
 * stock besides overrides {@link #checks()} and so on.
 */
public abstract class FamilyPlugin implements Plugin {

    /** Where the data lies in the jar. */
    public static final String FOLDER = "META-INF/reseat-family";

    /** For the plugin. */
    protected FamilyPlugin() {}

    /** Returns what {@link PluginInfo#FILE} in the jar says. */
    @Override
    public PluginInfo info() {
        return PluginInfo.of(getClass());
    }

    /**
     * Reads the family out of the jar.
     *
     * @throws IllegalArgumentException if {@code family.ini} has errors; the message has a line for
     *     each
     */
    @Override
    public List<DeviceFamily> families() {
        return List.of(FamilyReader.inJarOf(getClass()));
    }
}
