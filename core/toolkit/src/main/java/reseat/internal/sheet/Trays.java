package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import reseat.fasten.FastenerInputException;
import reseat.fasten.FastenerTables;
import reseat.fasten.LookAlikes;
import reseat.fasten.TrayPlan;
import reseat.model.Device;
import reseat.model.Signal;
import reseat.plan.Plan;
import reseat.sheet.Names;

/**
 * In which tray compartment each type of screw lies, and which types are easily confused.
 *
 * @param numbers compartment of each type of screw that comes out, counted from 1
 * @param pairs types that look alike and do harm where the other belongs
 */
record Trays(Map<String, Integer> numbers, List<LookAlikes.Pair> pairs) {

    /** From this weight on, the wrong screw pierces something; see {@link LookAlikes#weight}. */
    private static final int PIERCES_CELL = 5;

    static Trays of(Plan plan) {
        Device device = plan.request().device();
        List<String> joints = new ArrayList<>();
        for (String joint : plan.releasedJoints()) {
            if (device.joint(joint).seat().isPresent()
                    && !device.kindOf(device.joint(joint)).captive()) {
                joints.add(joint);
            }
        }
        LookAlikes alike = alike(device, joints);
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (TrayPlan.Compartment each : TrayPlan.of(device, joints, alike).compartments()) {
            each.content().forEach(lot -> numbers.put(lot.screw(), each.number()));
        }
        return new Trays(
                numbers, alike.pairs().stream().filter(LookAlikes.Pair::dangerous).toList());
    }

    /** Screws of unknown threads cannot be compared; a check reports them. */
    private static LookAlikes alike(Device device, List<String> joints) {
        FastenerTables tables = FastenerTables.standard();
        try {
            return LookAlikes.of(tables, device, joints, LookAlikes.Eye.of(tables));
        } catch (FastenerInputException e) {
            return new LookAlikes(List.of(), List.of());
        }
    }

    /** Returns the tray of a type; empty where one tray holds everything. */
    OptionalInt number(String type) {
        Integer number = numbers.get(type);
        boolean one = numbers.values().stream().distinct().count() < 2;
        return number == null || one ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** Returns the pairs of which a step turns one. */
    List<LookAlikes.Pair> of(Set<String> types) {
        return pairs.stream()
                .filter(pair -> types.contains(pair.one()) || types.contains(pair.other()))
                .toList();
    }

    static Signal signal(LookAlikes.Pair pair) {
        return pair.weight() > PIERCES_CELL ? Signal.WARNING : Signal.NOTICE;
    }

    String text(LookAlikes.Pair pair, Names names) {
        return pair.one()
                + " (tray "
                + numbers.get(pair.one())
                + ") and "
                + pair.other()
                + " (tray "
                + numbers.get(pair.other())
                + ") look alike. "
                + pair.worst()
                        .map(
                                worst ->
                                        "In "
                                                + names.joint(worst.joint())
                                                + " "
                                                + worst.screw()
                                                + " does harm: "
                                                + Source.sentence(worst.told()))
                        .orElse("");
    }
}
