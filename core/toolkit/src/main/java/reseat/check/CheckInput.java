package reseat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.model.Device;
import reseat.model.Joint;

/**
 * What checks are run on.
 *
 * @param device the device
 * @param joints the joints that a plan releases, in order; empty where there is no plan and all
 *     joints count
 * @param drives the drives that the shop has drivers for, such as T5; empty where nobody told
 * @param settings values of parameters, by {@code check-id.parameter}
 */
public record CheckInput(
        Device device,
        Optional<List<String>> joints,
        Optional<List<String>> drives,
        Map<String, String> settings) {

    public CheckInput {
        joints = joints.map(List::copyOf);
        drives = drives.map(List::copyOf);
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        joints.ifPresent(ids -> ids.forEach(device::joint));
    }

    /** Returns the input of a device alone. */
    public static CheckInput of(Device device) {
        return new CheckInput(device, Optional.empty(), Optional.empty(), Map.of());
    }

    /** Returns this input for the joints of a plan. */
    public CheckInput withJoints(List<String> ids) {
        return new CheckInput(device, Optional.of(ids), drives, settings);
    }

    /** Returns this input for a shop that has drivers for these drives. */
    public CheckInput withDrives(List<String> ids) {
        return new CheckInput(device, joints, Optional.of(ids), settings);
    }

    /** Returns this input with a parameter set. */
    public CheckInput with(String check, String parameter, String value) {
        Map<String, String> more = new LinkedHashMap<>(settings);
        more.put(check + "." + parameter, value);
        return new CheckInput(device, joints, drives, more);
    }

    /** Returns the joints that count, in order. */
    public List<Joint> jointsInView() {
        return joints.map(ids -> ids.stream().distinct().map(device::joint).toList())
                .orElseGet(() -> List.copyOf(device.joints().values()));
    }

    /**
     * Returns the value of a parameter of a check.
     *
     * @throws IllegalArgumentException if the check has no such parameter
     */
    public String value(CheckInfo check, String parameter) {
        CheckInfo.Parameter known =
                check.parameters().stream()
                        .filter(p -> p.name().equals(parameter))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                check.id() + " has no parameter " + parameter));
        return settings.getOrDefault(check.id() + "." + parameter, known.usual());
    }
}
