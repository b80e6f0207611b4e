package reseat.handheld;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;

/** The shared data, in handheld.yaml. */
final class HandheldFamily implements DeviceFamily {

    @Override
    public String id() {
        return "handheld";
    }

    @Override
    public String title() {
        return "sealed handheld";
    }

    @Override
    public InputStream openDefaults() throws IOException {
        return open("handheld.yaml");
    }

    @Override
    public List<DeviceTemplate> templates() {
        return List.of(HandheldTemplate.make());
    }

    static InputStream open(String name) throws IOException {
        InputStream in = HandheldFamily.class.getResourceAsStream(name);
        if (in == null) {
            throw new FileNotFoundException(name);
        }
        return in;
    }
}
