package reseat.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import reseat.check.CheckInput;
import reseat.fasten.FastenerTables;
import reseat.model.Device;
import reseat.model.Problem;
import reseat.spi.DeviceFamily;

/** A device file to check, in all its variants or one of them. Immutable. */
public final class DeviceSource implements CheckSource {

    private final Path file;
    private final List<DeviceFamily> families;
    private final Optional<String> variant;
    private final Which which;
    private final UnaryOperator<CheckInput> more;
    private final Function<Device, FastenerTables> tables;

    private enum Which {
        ALL,
        ONE,
        ONE_IF_THERE
    }

    private DeviceSource(
            Path file,
            List<DeviceFamily> families,
            Optional<String> variant,
            Which which,
            Function<Device, FastenerTables> tables,
            UnaryOperator<CheckInput> more) {
        this.file = file;
        this.families = families;
        this.variant = variant;
        this.which = which;
        this.tables = tables;
        this.more = more;
    }

    /**
     * Returns a device file with the base device and all its variants, and the standard tables.
     *
     * @param file the file; findings use this name
     * @param families device families that the file may name
     */
    public static DeviceSource of(Path file, List<DeviceFamily> families) {
        return new DeviceSource(
                file,
                List.copyOf(families),
                Optional.empty(),
                Which.ALL,
                device -> FastenerTables.standard(),
                UnaryOperator.identity());
    }

    /**
     * Returns this file in one variant alone.
     *
     * @param id id of the variant; empty for the base device
     */
    public DeviceSource only(Optional<String> id) {
        return new DeviceSource(file, families, id, Which.ONE, tables, more);
    }

    /** Returns this file in one variant alone, or nothing if it has no such variant. */
    public DeviceSource onlyIfThere(String id) {
        return new DeviceSource(file, families, Optional.of(id), Which.ONE_IF_THERE, tables, more);
    }

    /**
     * Returns this file with other fastener tables.
     *
     * @param other gives the tables for a device; called from any thread
     */
    public DeviceSource withTables(Function<Device, FastenerTables> other) {
        return new DeviceSource(file, families, variant, which, other, more);
    }

    /**
     * Returns this file with a change applied to each input.
     *
     * @param change adds what checks may need, such as a plan, to an input; called from any thread
     */
    public DeviceSource with(UnaryOperator<CheckInput> change) {
        return new DeviceSource(
                file, families, variant, which, tables, input -> change.apply(more.apply(input)));
    }

    @Override
    public String name() {
        return file.toString();
    }

    @Override
    public Content read() {
        Reading base = DeviceFiles.read(file, Optional.empty(), families);
        if (variant.isPresent() && !base.variants().contains(variant.get())) {
            if (which == Which.ONE_IF_THERE && base.device().isPresent()) {
                return new Content(List.of(), List.of());
            }
            // the reader reports this
            return new Content(List.of(), DeviceFiles.read(file, variant, families).problems());
        }
        Map<Optional<String>, Reading> readings = new LinkedHashMap<>();
        readings.put(Optional.empty(), base);
        for (String id : base.variants()) {
            readings.put(Optional.of(id), DeviceFiles.read(file, Optional.of(id), families));
        }
        List<Device> devices =
                readings.values().stream().flatMap(each -> each.device().stream()).toList();
        List<CheckInput> inputs = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        readings.forEach(
                (id, reading) -> {
                    if (which == Which.ALL || id.equals(variant)) {
                        problems.addAll(reading.problems());
                        reading.device()
                                .map(d -> CheckInput.of(d, tables.apply(d)).withVariants(devices))
                                .ifPresent(input -> inputs.add(more.apply(input)));
                    }
                });
        return new Content(inputs, problems);
    }
}
