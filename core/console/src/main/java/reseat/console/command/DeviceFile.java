package reseat.console.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reseat.device.DeviceFiles;
import reseat.device.Reading;
import reseat.model.BadInputException;
import reseat.model.Device;
import reseat.model.Joint;

/** The device file that a command works on. */
final class DeviceFile {

    @Parameters(index = "0", paramLabel = "DEVICE", description = "Device file.")
    private Path file;

    @Option(names = "--variant", paramLabel = "ID", description = "Variant of the device.")
    private @Nullable String variant;

    /** Returns the device, or ends the command with all that is wrong with its file. */
    Device device() {
        return read(file, Optional.ofNullable(variant));
    }

    /** Reads a device, or ends the command with all that is wrong with its file. */
    static Device read(Path file, Optional<String> variant) {
        Reading reading = DeviceFiles.read(file, variant, List.of());
        try {
            return reading.orThrow();
        } catch (BadInputException e) {
            throw new BadInput(String.valueOf(e.getMessage()));
        }
    }

    /** Returns a joint with a seat, or ends the command with those that there are. */
    static Joint seat(Device device, String id) {
        Joint joint = device.joints().get(id);
        if (joint == null || joint.seat().isEmpty()) {
            throw unknown(
                    "screw in a seat",
                    id,
                    device.joints().values().stream()
                            .filter(j -> j.seat().isPresent())
                            .map(Joint::id)
                            .toList());
        }
        return joint;
    }

    /** Returns what ends a command that names something that is not there. */
    static BadInput unknown(String what, String wanted, List<String> known) {
        return new BadInput(
                "reseat: there is no "
                        + what
                        + " \""
                        + wanted
                        + "\". Known: "
                        + (known.isEmpty() ? "none" : String.join(", ", known))
                        + ".");
    }
}
