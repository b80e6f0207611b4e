package reseat.files;

import java.util.Objects;
import reseat.internal.files.ResolvedWriter;
import reseat.model.Device;

/**
 * A device with variant, defaults and seat tables applied, as JSON for other programs. See
 * core/docs/resolved.md.
 */
public final class ResolvedJson {

    private ResolvedJson() {}

    /**
     * Writes a device as a resolved device file, which {@link DeviceFiles} reads back as the same
     * device, except for origins.
     *
     * @return JSON with line feeds, ending with one; the same device always gives the same text
     */
    public static String write(Device device) {
        return ResolvedWriter.write(Objects.requireNonNull(device, "device"));
    }
}
