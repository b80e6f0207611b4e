package reseat.console.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import reseat.console.load.OurPlugins;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Problem;
import reseat.spi.CostTable;
import reseat.spi.Plugins;
import reseat.text.ListText;
import reseat.text.Nearest;

/** The device that a command works on: its file and variant. */
final class DeviceArgs {

    /** How many known names a message lists. */
    private static final int LISTED = 40;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            description = "Device file, YAML or JSON; see core/docs/device-file.md.")
    private Path file = Path.of("");

    @Option(
            names = "--variant",
            paramLabel = "ID",
            description = "Variant of the device (default: the base device).")
    private @Nullable String variant;

    Path file() {
        return file;
    }

    Optional<String> variant() {
        return Optional.ofNullable(variant);
    }

    /** Reads the device; warnings go to {@code err}, errors fail the command. */
    Device read(PrintWriter err) {
        return read(variant(), err);
    }

    /** Reads the device in a different variant. */
    Device read(Optional<String> asVariant, PrintWriter err) {
        return read(file, asVariant, err);
    }

    /** Reads the device with other costs. */
    Device read(Optional<CostTable> costs, PrintWriter err, Plugins plugins) {
        return device(DeviceFiles.read(file, variant(), plugins.families(), costs), err);
    }

    /** Reads any device; warnings go to {@code err}, errors fail the command. */
    static Device read(Path file, Optional<String> variant, PrintWriter err) {
        return read(file, variant, Optional.empty(), err);
    }

    static Device read(
            Path file, Optional<String> variant, Optional<CostTable> costs, PrintWriter err) {
        return device(DeviceFiles.read(file, variant, OurPlugins.get(err).families(), costs), err);
    }

    private static Device device(Reading reading, PrintWriter err) {
        if (reading.device().isEmpty()) {
            throw new BadInput(lines(reading.problems()));
        }
        reading.problems().forEach(err::println);
        return reading.device().get();
    }

    Reading reading(Optional<String> asVariant) {
        return DeviceFiles.read(file, asVariant, OurPlugins.quietly().families());
    }

    static String lines(List<Problem> problems) {
        return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    /** Returns a joint with a seat, or fails the command with a list of valid ids. */
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

    /** Returns the failure of a command that names something unknown. */
    static BadInput unknown(String what, String wanted, List<String> known) {
        return new BadInput(
                "reseat: there is no "
                        + what
                        + " \""
                        + wanted
                        + "\"."
                        + Nearest.question(wanted, known)
                        + " Known: "
                        + ListText.first(known, LISTED)
                        + ".");
    }
}
