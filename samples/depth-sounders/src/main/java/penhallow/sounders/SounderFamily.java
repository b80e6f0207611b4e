package penhallow.sounders;

import java.io.InputStream;
import reseat.spi.DeviceFamily;

/** The family of depth sounders; its data is in a file. */
final class SounderFamily implements DeviceFamily {

    @Override
    public String id() {
        return "sounder";
    }

    @Override
    public String title() {
        return "depth sounder";
    }

    @Override
    public InputStream openDefaults() {
        return SounderFamily.class.getResourceAsStream("sounder.yaml");
    }
}
