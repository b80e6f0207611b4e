package reseat.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.internal.files.DeviceReader;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;

/** Reads device files. The format is documented in core/docs/device-file.md. */
public final class DeviceFiles {

    private DeviceFiles() {}

    /**
     * Reads a device file, YAML or JSON. The result is always a {@link Reading}: no user input
     * makes this throw. Memory is bounded: files of more than 16 MiB are rejected without being
     * read.
     *
     * @param file the file; the seat tables that it names are in the same folder
     * @param variant id of the variant to apply; empty for the base device
     * @param families device families that the file may name
     * @return the device or the errors in the file
     */
    public static Reading read(Path file, Optional<String> variant, List<DeviceFamily> families) {
        return read(file, variant, families, Optional.empty());
    }

    /**
     * Reads a device file as {@link #read(Path, Optional, List)} does, with other costs.
     *
     * @param file the file; the seat tables that it names are in the same folder
     * @param variant id of the variant to apply; empty for the base device
     * @param families device families that the file may name
     * @param costs times and set-ups in place of the default ones; what the file states takes
     *     precedence
     * @return the device or the errors in the file
     */
    public static Reading read(
            Path file,
            Optional<String> variant,
            List<DeviceFamily> families,
            Optional<CostTable> costs) {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(variant, "variant");
        return DeviceReader.read(file, variant, List.copyOf(families), costs);
    }
}
