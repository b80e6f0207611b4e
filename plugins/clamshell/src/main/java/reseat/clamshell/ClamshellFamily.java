package reseat.clamshell;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import reseat.spi.DeviceFamily;
import reseat.spi.DeviceTemplate;

/** The shared data, in clamshell.yaml. */
final class ClamshellFamily implements DeviceFamily {

    @Override
    public String id() {
        return "clamshell";
    }

    @Override
    public String title() {
        return "clamshell";
    }

    @Override
    public InputStream openDefaults() throws IOException {
        return open("clamshell.yaml");
    }

    @Override
    public List<DeviceTemplate> templates() {
        return List.of(ClamshellTemplate.make());
    }

    static InputStream open(String name) throws IOException {
        InputStream in = ClamshellFamily.class.getResourceAsStream(name);
        if (in == null) {
            throw new FileNotFoundException(name);
        }
        return in;
    }
}
