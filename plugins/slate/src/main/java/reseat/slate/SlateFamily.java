package reseat.slate;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;

/** The shared data, in slate.yaml. */
final class SlateFamily implements DeviceFamily {

    @Override
    public String id() {
        return "slate";
    }

    @Override
    public String title() {
        return "slate";
    }

    @Override
    public InputStream openDefaults() throws IOException {
        return open("slate.yaml");
    }

    @Override
    public List<DeviceTemplate> templates() {
        return List.of(SlateTemplate.make());
    }

    static InputStream open(String name) throws IOException {
        InputStream in = SlateFamily.class.getResourceAsStream(name);
        if (in == null) {
            throw new FileNotFoundException(name);
        }
        return in;
    }
}
